#include <algorithm>

#include "core/findings/each_rule.hpp"
#include "core/hydraulics/overflow.hpp"

namespace sumpwright::findings
{
namespace
{

units::Length boreOf(const Situation& situation, const plan::Port& lip)
{
    if (lip.bore)
        return *lip.bore;
    for (const Meeting& meeting : situation.meetingsAt(lip.id))
        if (const auto* run = assessment::find(situation.results().flow->runs, meeting.run->id))
            return run->bore;
    return {};
}

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const auto& vessel : situation.plan().vessels) {
        const plan::Port* lip = plan::mainLip(*vessel);
        const units::Length bore = lip ? boreOf(situation, *lip) : units::Length();
        const auto outflow = situation.largestOutflow(vessel->id);
        if (vessel->kind == plan::VesselKind::sump || bore <= units::Length() || !outflow || *outflow <= units::Flow())
            continue;
        const auto level = hydraulics::overflowLevel({bore, lip->openFraction.value_or(1.0)}, *outflow);
        const units::Length room = plan::rimLevel(*vessel) - lip->level;
        if (!level)
            continue;
        const units::Length needed =
            std::max(level->design, level->predicted); // deep over a lip the prediction is more
        if (needed <= room)
            continue;
        findings.push_back(findingOf(rule, Severity::warning, {vessel->id, lip->id}));
        findings.back().value = needed;
        findings.back().limit = room;
    }
}

} // namespace

// The design level of EN 12056-3, or the predicted one where that is higher, over the lowest lip, at the most flow,
// against the rim.
const Rule overflowTooSmall{"overflow.too-small", "larger-overflow", "en-12056-3", tell};

} // namespace sumpwright::findings

#include "core/findings/each_rule.hpp"
#include "core/hydraulics/overflow.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const auto& vessel : situation.plan().vessels) {
        const plan::Port* lip = plan::mainLip(*vessel);
        const auto outflow = situation.largestOutflow(vessel->id);
        if (vessel->kind == plan::VesselKind::sump || !lip || !outflow || *outflow <= units::Flow())
            continue;
        units::Length bore = lip->bore.value_or(units::Length());
        for (const Meeting& meeting : situation.meetingsAt(lip->id))
            if (const auto* run = assessment::find(situation.results().flow->runs, meeting.run->id))
                bore = lip->bore.value_or(run->bore);
        if (bore >= hydraulics::smallestOverflowBore && bore <= hydraulics::largestOverflowBore)
            continue;
        findings.push_back(findingOf(rule, Severity::warning, {vessel->id, lip->id}));
        if (bore > units::Length())
            findings.back().value = bore;
    }
}

} // namespace

// The head over the lip cannot be computed and counts as 0.
const Rule overflowBoreUnknown{"overflow.bore-unknown", "enter-bore", "overflow-blend", tell};

} // namespace sumpwright::findings

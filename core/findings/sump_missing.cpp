#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const auto& pump : situation.plan().pumps) {
        const plan::Vessel* vessel = situation.plan().vessels.find(pump->vessel);
        if (!vessel || vessel->kind == plan::VesselKind::sump)
            continue;
        findings.push_back(findingOf(rule, Severity::warning, {pump->id, vessel->id}));
    }
}

} // namespace

// Only a sump takes up what comes down and gives what the beds ask for.
const Rule sumpMissing{"sump.missing", "place-sump", "common-practice", tell};

} // namespace sumpwright::findings

#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const auto& vessel : situation.plan().vessels) {
        if (vessel->kind != plan::VesselKind::sump)
            continue;
        const plan::Port* overflow = plan::mainLip(*vessel);
        const units::Elevation highest = overflow ? overflow->level : plan::rimLevel(*vessel);
        const bool outside = vessel->runningLevel &&
                             (*vessel->runningLevel < plan::insideBottom(*vessel) || *vessel->runningLevel > highest);
        if (vessel->runningLevel && !outside)
            continue;
        findings.push_back(findingOf(rule, Severity::error, {vessel->id}));
        if (outside) {
            findings.back().value = *vessel->runningLevel;
            findings.back().limit = highest;
        }
    }
}

} // namespace

// The one entry that fixes the water is missing, or lies outside the sump or above its own overflow.
const Rule sumpLevel{"sump.level-missing", "enter-sump-level", "common-practice", tell};

} // namespace sumpwright::findings

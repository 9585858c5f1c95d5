#include <algorithm>

#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    const plan::Floor& floor = *situation.plan().floor;
    if (floor.outline.size() < 3)
        return;
    for (const Outline& vessel : situation.outlines())
        if (!std::all_of(vessel.corners.begin(), vessel.corners.end(),
                         [&floor](plan::Point corner) { return plan::inside(floor, corner); }))
            findings.push_back(findingOf(rule, Severity::warning, {vessel.id}));
}

} // namespace

const Rule vesselOutsideFloor{"layout.outside-floor", "move-onto-floor", "common-practice", tell};

} // namespace sumpwright::findings

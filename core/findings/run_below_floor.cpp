#include <algorithm>

#include "core/findings/each_rule.hpp"
#include "core/space/passages.hpp"

namespace sumpwright::findings
{
namespace
{

// One finding for all of them: it is one channel that is wanted.
void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    std::vector<base::Id> runs;
    units::Length deepest;
    for (const space::PipeBody& body : situation.bodies())
        if (const auto beyond = space::belowFloor(body, *situation.plan().floor, situation.outlines())) {
            runs.push_back(body.run);
            deepest = std::max(deepest, beyond->by);
        }
    if (runs.empty())
        return;
    findings.push_back(findingOf(rule, Severity::note, std::move(runs)));
    findings.back().value = deepest;
}

} // namespace

// The bottom of a pipe under the floor's level at its place, with the floor's fall, away from sunk vessels.
const Rule runBelowFloor{"run.below-floor", "plan-channel", "common-practice", tell};

} // namespace sumpwright::findings

#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const assessment::VesselResult& vessel : situation.results().water->vessels)
        for (const auto state : {assessment::WaterState::runningMost, assessment::WaterState::runningLeast}) {
            const auto& water = vessel.water[state];
            if (!water || water->heldBy != assessment::HeldBy::rim)
                continue;
            findings.push_back(findingOf(rule, Severity::error, {vessel.id}));
            if (const auto outflow = situation.largestOutflow(vessel.id))
                findings.back().value = *outflow;
            break;
        }
}

} // namespace

// Its overflows cannot carry what comes in: it spills while running.
const Rule vesselOverRim{"vessel.over-rim", "larger-overflow", "overflow-blend", tell};

} // namespace sumpwright::findings

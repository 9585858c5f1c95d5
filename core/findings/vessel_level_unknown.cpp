#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const assessment::VesselResult& vessel : situation.results().water->vessels) {
        const auto& water = vessel.water[assessment::WaterState::runningMost];
        if (!water && water.reason().id == "level-unknown")
            findings.push_back(findingOf(rule, Severity::note, {vessel.id}));
    }
}

} // namespace

// Nothing holds its level: it is not counted with the water.
const Rule vesselLevelUnknown{"vessel.level-unknown", "add-lip", "common-practice", tell};

} // namespace sumpwright::findings

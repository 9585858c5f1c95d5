#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const assessment::VesselResult& vessel : situation.results().water->vessels) {
        const auto& water = vessel.water[assessment::WaterState::runningMost];
        if (!water && water.reason().id == "no-way-out" && water.reason().element == vessel.id)
            findings.push_back(findingOf(rule, Severity::error, {vessel.id}));
    }
}

} // namespace

// Water comes in and nothing leads it out.
const Rule vesselWithoutOutlet{"vessel.no-outlet", "add-lip", "common-practice", tell};

} // namespace sumpwright::findings

#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const assessment::VesselResult& vessel : situation.results().water->vessels) {
        const auto& water = vessel.water[assessment::WaterState::runningLeast];
        if (!water && water.reason().id == "sump-runs-dry" && water.reason().element == vessel.id)
            findings.push_back(findingOf(rule, Severity::error, {vessel.id}));
    }
}

} // namespace

// All beds flooded together take more water than the sump holds.
const Rule sumpRunsDry{"sump.runs-dry", "larger-sump", "common-practice", tell};

} // namespace sumpwright::findings

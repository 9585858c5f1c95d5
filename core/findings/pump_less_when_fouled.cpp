#include "core/findings/each_rule.hpp"
#include "core/findings/season_fall.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const assessment::PumpSeason& season : situation.results().season->pumps) {
        const auto* pump = assessment::find(situation.results().pumps->pumps, season.id);
        const auto& then = season.duty[assessment::YearEnd::fouledCold];
        if (!pump || !then || !pump->duty[RunningState::least])
            continue;
        const units::Flow today = pump->duty[RunningState::least]->flow;
        if (!fallsTooFar(today, then->flow))
            continue;
        findings.push_back(findingOf(rule, Severity::warning, {season.id}));
        findings.back().value = then->flow;
        findings.back().limit = today;
    }
}

} // namespace

// Slime and cold water narrow the pump's flow by more than a plan should leave to the season.
const Rule pumpLessWhenFouled{"pump.less-when-fouled", "room-for-fouling", "roughness-in-service", tell};

} // namespace sumpwright::findings

#include "core/findings/each_rule.hpp"
#include "core/findings/season_fall.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const assessment::RunSeason& season : situation.results().season->runs) {
        const plan::Run* run = situation.plan().runs.find(season.id);
        const auto* at = run ? std::get_if<plan::PortEnd>(&run->to) : nullptr;
        const auto* result = assessment::find(situation.results().flow->runs, season.id);
        const auto& then = season.flow[assessment::YearEnd::fouledCold];
        if (!at || !result || !then || !result->flow[RunningState::least])
            continue;
        const units::Flow today = result->flow[RunningState::least]->flow;
        if (!fallsTooFar(today, *then))
            continue;
        findings.push_back(findingOf(rule, Severity::warning, {at->vessel, season.id}));
        findings.back().value = *then;
        findings.back().limit = today;
    }
}

} // namespace

// Where a branch fouls more than its neighbours its outlet starves though the pump does not.
const Rule outletLessWhenFouled{"outlet.less-when-fouled", "room-for-fouling", "roughness-in-service", tell};

} // namespace sumpwright::findings

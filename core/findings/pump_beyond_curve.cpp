#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const assessment::PumpResult& pump : situation.results().pumps->pumps)
        for (const RunningState state : {RunningState::most, RunningState::least}) {
            const auto& duty = pump.duty[state];
            if (!duty || !duty->beyondCurve)
                continue;
            findings.push_back(findingOf(rule, Severity::warning, {pump.id}));
            findings.back().value = duty->flow;
            findings.back().limit = pump.boxFigure;
            break;
        }
}

} // namespace

const Rule pumpBeyondCurve{"pump.beyond-curve", "throttle-or-larger-pump", "common-practice", tell};

} // namespace sumpwright::findings

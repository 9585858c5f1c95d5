#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

constexpr double leastShare = 0.30; // of the flow at no head; below it small pumps waste most of their power

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const assessment::PumpResult& pump : situation.results().pumps->pumps) {
        const auto& duty = pump.duty[RunningState::least];
        if (!duty || duty->flow <= units::Flow() || duty->shareOfBoxFigure >= leastShare)
            continue;
        findings.push_back(findingOf(rule, Severity::warning, {pump.id}));
        findings.back().value = duty->shareOfBoxFigure;
        findings.back().limit = leastShare;
    }
}

} // namespace

const Rule pumpLowShare{"pump.low-share", "less-head-loss", "common-practice", tell};

} // namespace sumpwright::findings

#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const assessment::PumpResult& pump : situation.results().pumps->pumps) {
        const auto& duty = pump.duty[RunningState::least];
        if (!duty || duty->flow > units::Flow() || situation.meetingsAt(pump.id).empty())
            continue;
        findings.push_back(findingOf(rule, Severity::error, {pump.id}));
        findings.back().value = pump.shutOff;
    }
}

} // namespace

// No outlet lies within the head at no flow.
const Rule pumpCannotLift{"pump.cannot-lift", "stronger-pump", "common-practice", tell};

} // namespace sumpwright::findings

#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const assessment::PumpResult& pump : situation.results().pumps->pumps) {
        const auto& duty = pump.duty[RunningState::least];
        if (duty && !duty->power && duty->power.reason().id == "pump-power-missing")
            findings.push_back(findingOf(rule, Severity::note, {pump.id}));
    }
}

} // namespace

const Rule pumpPowerMissing{"pump.power-missing", "enter-pump-power", "common-practice", tell};

} // namespace sumpwright::findings

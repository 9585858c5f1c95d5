#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const assessment::PumpResult& pump : situation.results().pumps->pumps) {
        const auto& duty = pump.duty[RunningState::least];
        if (duty || duty.reason().id.rfind("pump-", 0) != 0 || duty.reason().id == "pump-off" ||
            duty.reason().id == "pump-unfed")
            continue;
        findings.push_back(findingOf(rule, Severity::error, {pump.id}));
        findings.back().subject = duty.reason().text;
    }
}

} // namespace

// No model, a model that is not in the catalogue, a curve that cannot be used, or no vessel to stand in.
const Rule pumpFault{"pump.fault", "choose-pump", "common-practice", tell};

} // namespace sumpwright::findings

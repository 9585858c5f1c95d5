#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    const plan::Plan& plan = situation.plan();
    if (!plan.pumps.empty() || plan.vessels.empty())
        return;
    findings.push_back(findingOf(rule, plan.runs.empty() ? Severity::note : Severity::warning, {}));
}

} // namespace

const Rule planWithoutPump{"plan.no-pump", "place-pump", "common-practice", tell};

} // namespace sumpwright::findings

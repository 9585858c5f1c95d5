#include "core/assessment/rows.hpp"
#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    const std::string& use = situation.plan().site->floorUse;
    if (use.empty() || assessment::rowOf(situation.catalogue().liveLoads(), use))
        return;
    findings.push_back(findingOf(rule, Severity::warning, {}));
    findings.back().subject = use;
}

} // namespace

const Rule floorUseUnknown{"floor.use-unknown", "choose-use", "common-practice", tell};

} // namespace sumpwright::findings

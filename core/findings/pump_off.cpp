#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const auto& pump : situation.plan().pumps)
        if (!pump->running)
            findings.push_back(findingOf(rule, Severity::note, {pump->id}));
}

} // namespace

const Rule pumpOff{"pump.off", "switch-pump-on", "common-practice", tell};

} // namespace sumpwright::findings

#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const auto& pump : situation.plan().pumps)
        if (situation.meetingsAt(pump->id).empty())
            findings.push_back(findingOf(rule, Severity::error, {pump->id}));
}

} // namespace

const Rule pumpWithoutRun{"pump.no-run", "connect-pump", "common-practice", tell};

} // namespace sumpwright::findings

#include "core/assessment/rows.hpp"
#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const auto& run : situation.plan().runs)
        if (!assessment::rowOf(situation.catalogue().pipes(), run->pipeId)) {
            findings.push_back(findingOf(rule, Severity::error, {run->id}));
            findings.back().subject = run->pipeId;
        }
}

} // namespace

const Rule runUnknownPipe{"run.unknown-pipe", "choose-pipe", "common-practice", tell};

} // namespace sumpwright::findings

#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const assessment::RunResult& run : situation.results().flow->runs)
        for (const assessment::FittingLoss& loss : run.fittings)
            if (loss.shut)
                findings.push_back(findingOf(rule, Severity::note, {run.id, loss.element}));
}

} // namespace

const Rule valveClosed{"valve.closed", "open-valve", "common-practice", tell};

} // namespace sumpwright::findings

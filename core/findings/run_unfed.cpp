#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const assessment::RunResult& run : situation.results().flow->runs) {
        const auto& flow = run.flow[RunningState::least];
        if (!flow && flow.reason().id == "run-unfed")
            findings.push_back(findingOf(rule, Severity::warning, {run.id}));
    }
}

} // namespace

// An island of the network: no water level reaches it.
const Rule runUnfed{"run.unfed", "connect-run", "common-practice", tell};

} // namespace sumpwright::findings

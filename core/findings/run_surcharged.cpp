#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const assessment::RunResult& run : situation.results().flow->runs)
        for (const RunningState state : {RunningState::most, RunningState::least}) {
            const auto& flow = run.flow[state];
            if (!flow || !flow->open || !flow->open->surcharged)
                continue;
            findings.push_back(findingOf(rule, Severity::warning, {run.id}));
            findings.back().value = flow->flow < units::Flow() ? -flow->flow : flow->flow;
            if (flow->open->flattest)
                findings.back().limit = flow->open->flattest->fullFlow;
            break;
        }
}

} // namespace

// A gravity run that fills and stands under pressure: water backs up behind it.
const Rule runSurcharged{"run.surcharged", "larger-drain", "open-channel", tell};

} // namespace sumpwright::findings

#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    std::vector<base::Id> runs;
    double factor = 0.0;
    for (const assessment::RunResult& run : situation.results().flow->runs)
        if (run.corrugatedFactor > 0.0 && run.service == plan::Service::pressure) {
            runs.push_back(run.id);
            factor = run.corrugatedFactor;
        }
    if (runs.empty())
        return;
    findings.push_back(findingOf(rule, Severity::note, std::move(runs)));
    findings.back().value = factor;
}

} // namespace

// The friction factor of corrugated hose depends on its shape: an estimate.
const Rule runCorrugated{"run.corrugated", "smooth-pipe", "corrugated-hose", tell};

} // namespace sumpwright::findings

#include "core/findings/each_rule.hpp"
#include "core/hydraulics/sloping_drain.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const assessment::RunResult& run : situation.results().flow->runs) {
        double fullest = 0.0;
        for (const auto& flow : run.flow.values)
            if (flow && flow->open && !flow->open->surcharged && !flow->open->backedUp && flow->open->flattest)
                fullest = std::max(fullest, flow->open->flattest->depth
                                                ? static_cast<double>(*flow->open->flattest->depth / run.bore)
                                                : 1.0);
        if (fullest <= hydraulics::highFill)
            continue;
        findings.push_back(findingOf(rule, Severity::note, {run.id}));
        findings.back().value = fullest;
        findings.back().limit = hydraulics::highFill;
    }
}

} // namespace

// In uniform flow along its flattest stretch the run is fuller than is good for the air over the water.
const Rule runFillHigh{"run.fill-high", "larger-drain", "en-12056-2", tell};

} // namespace sumpwright::findings

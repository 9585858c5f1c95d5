#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    std::vector<base::Id> runs;
    for (const assessment::RunResult& run : situation.results().flow->runs)
        for (const auto& flow : run.flow.values)
            if (flow && flow->losses && flow->losses->regime == assessment::FlowRegime::transition) {
                runs.push_back(run.id);
                break;
            }
    if (!runs.empty())
        findings.push_back(findingOf(rule, Severity::note, std::move(runs)));
}

} // namespace

// Between laminar and turbulent the friction factor is uncertain.
const Rule runTransition{"run.transition", "", "transition-cubic", tell};

} // namespace sumpwright::findings

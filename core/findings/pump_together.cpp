#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const auto& pump : situation.plan().pumps)
        if (pump->arrangement == plan::PumpArrangement::twoParallel)
            findings.push_back(findingOf(rule, Severity::note, {pump->id}));
}

} // namespace

// Two side by side need a non-return valve each: without one the water of a unit that stops runs back through it.
const Rule pumpTogether{"pump.together", "add-non-return", "pumps-together", tell};

} // namespace sumpwright::findings

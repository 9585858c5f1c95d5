#include "core/assessment/rows.hpp"
#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const auto& pump : situation.plan().pumps) {
        const auto* row = assessment::rowOf(situation.catalogue().pumps(), pump->modelId);
        if (row ? row->twoNumbers : pump->modelId.empty() && pump->twoNumbers)
            findings.push_back(findingOf(rule, Severity::note, {pump->id}));
    }
}

} // namespace

// The curve between the two numbers of a box is an estimate.
const Rule pumpTwoNumbers{"pump.two-numbers", "enter-own-curve", "pump-two-numbers", tell};

} // namespace sumpwright::findings

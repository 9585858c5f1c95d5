#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    if (situation.plan().vessels.empty())
        return;
    findings.push_back(findingOf(rule, Severity::note, {}));
    const auto& total = situation.results().floor->in(assessment::LoadCase::toRim);
    if (total)
        findings.back().value = total->weight;
}

} // namespace

// Always there as soon as something stands on the floor.
const Rule floorCaution{"floor.caution", "ask-engineer", "common-practice", tell};

} // namespace sumpwright::findings

#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    if (!situation.plan().pumps.empty())
        findings.push_back(findingOf(rule, Severity::note, {}));
}

} // namespace

// Always there as soon as there is a pump.
const Rule electricCaution{"electric.caution", "licensed-electrician", "common-practice", tell};

} // namespace sumpwright::findings

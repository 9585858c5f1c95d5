#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const assessment::SumpResult& sump : situation.results().sumps->sumps)
        if (!sump.cover && sump.cover.reason().id == "several-sumps")
            findings.push_back(findingOf(rule, Severity::warning, {sump.id}));
}

} // namespace

// How the water divides between sumps of one circuit is not modelled.
const Rule sumpSeveral{"sump.several", "one-sump", "common-practice", tell};

} // namespace sumpwright::findings

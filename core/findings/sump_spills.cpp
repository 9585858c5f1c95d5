#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const assessment::SumpResult& sump : situation.results().sumps->sumps) {
        if (!sump.pumpStop || sump.pumpStop->spilled <= units::Volume())
            continue;
        findings.push_back(findingOf(rule, Severity::error, {sump.id}));
        findings.back().value = sump.pumpStop->spilled;
    }
}

} // namespace

const Rule sumpSpills{"sump.spills", "larger-sump", "common-practice", tell};

} // namespace sumpwright::findings

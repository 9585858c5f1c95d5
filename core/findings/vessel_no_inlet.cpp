#include <algorithm>

#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    if (situation.plan().pumps.empty())
        return;
    for (const auto& vessel : situation.plan().vessels) {
        const bool fed = std::any_of(vessel->ports.begin(), vessel->ports.end(), [&](const plan::Port& port) {
            return port.kind == plan::PortKind::inlet && !situation.meetingsAt(port.id).empty();
        });
        if (!fed)
            findings.push_back(findingOf(rule, Severity::warning, {vessel->id}));
    }
}

} // namespace

const Rule vesselWithoutInlet{"vessel.no-inlet", "connect-inlet", "common-practice", tell};

} // namespace sumpwright::findings

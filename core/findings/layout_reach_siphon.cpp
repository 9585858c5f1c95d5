#include "core/findings/each_rule.hpp"
#include "core/findings/reach.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const auto& vessel : situation.plan().vessels)
        for (const plan::Port& port : vessel->ports)
            if (port.kind == plan::PortKind::lip && port.drainLevel)
                tellIfFar(situation, rule, plan::placeOf(*vessel, port), {vessel->id, port.id}, findings);
}

} // namespace

const Rule reachSiphon{"layout.reach-siphon", "move-into-reach", "common-practice", tell};

} // namespace sumpwright::findings

#include "core/findings/each_rule.hpp"
#include "core/findings/reach.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const auto& vessel : situation.plan().vessels)
        if (vessel->kind == plan::VesselKind::mediaBed || vessel->kind == plan::VesselKind::raftBed)
            tellIfFar(situation, rule, vessel->centre, {vessel->id}, findings);
}

} // namespace

const Rule reachBed{"layout.reach-bed", "narrower-bed", "common-practice", tell};

} // namespace sumpwright::findings

#include "core/findings/each_rule.hpp"
#include "core/findings/reach.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const auto& run : situation.plan().runs)
        for (const plan::Valve& valve : run->valves)
            if (!run->vertices.empty())
                tellIfFar(situation, rule, plan::placeAlong(*run, valve.station).at, {run->id, valve.id}, findings);
}

} // namespace

const Rule reachValve{"layout.reach-valve", "move-into-reach", "common-practice", tell};

} // namespace sumpwright::findings

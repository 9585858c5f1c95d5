#include <map>

#include "core/assessment/rows.hpp"
#include "core/findings/each_rule.hpp"
#include "core/space/supports.hpp"

namespace sumpwright::findings
{
namespace
{

struct Group {
    std::vector<base::Id> runs;
    space::SupportDistance distance;
    units::Length longestFree;
    int count = 0;
};

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    const plan::Plan& plan = situation.plan();
    std::map<const catalogue::Pipe*, Group> groups; // by row, in the order of the table
    for (const space::PipeBody& body : situation.bodies()) {
        const auto* pipe = assessment::rowOf(situation.catalogue().pipes(), plan.runs.find(body.run)->pipeId);
        Group& group = groups[pipe];
        if (group.distance.source.empty())
            group.distance = space::supportDistanceOf(*pipe, plan.site->designWater, situation.catalogue());
        const space::SupportNeed need = space::supportNeedOf(body, *plan.floor, group.distance.most);
        if (need.count == 0)
            continue;
        group.runs.push_back(body.run);
        group.longestFree = std::max(group.longestFree, need.longestFree);
        group.count += need.count;
    }
    for (auto& [pipe, group] : groups) {
        if (group.count == 0)
            continue;
        findings.push_back(findingOf(rule, Severity::note, std::move(group.runs)));
        findings.back().value = group.longestFree;
        findings.back().limit = group.distance.most;
        findings.back().subject = std::to_string(group.count);
        findings.back().source = group.distance.source;
    }
}

} // namespace

// Level pipe that hangs free for longer than its supports may stand apart; one finding for each size of pipe.
const Rule runSupports{"run.supports", "add-supports", "common-practice", tell};

} // namespace sumpwright::findings

#include <algorithm>

#include "core/findings/each_rule.hpp"
#include "core/space/passages.hpp"

namespace sumpwright::findings
{
namespace
{

bool inDoorway(const Situation& situation, const space::Spot& place)
{
    return std::any_of(situation.plan().fixtures.begin(), situation.plan().fixtures.end(), [&](const auto& fixture) {
        if (fixture->kind != plan::FixtureKind::door)
            return false;
        const Outline door = footprintOf(*fixture);
        return place.level < door.top && space::gapTo(door, place.at) < space::touching;
    });
}

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const auto& fixture : situation.plan().fixtures) {
        if (fixture->kind != plan::FixtureKind::wall && fixture->kind != plan::FixtureKind::post)
            continue;
        const Outline outline = footprintOf(*fixture);
        for (const space::PipeBody& body : situation.bodies()) {
            const auto passage =
                space::passageThrough(body, outline, std::max(body.radius - space::touching, units::Length()));
            if (!passage || inDoorway(situation, passage->at))
                continue;
            findings.push_back(findingOf(rule, Severity::warning, {body.run, fixture->id}));
            findings.back().value = passage->length;
            findings.back().beside = body.radius * 2.0;
        }
    }
}

} // namespace

// Through a wall, outside its doors, or through a post.
const Rule runThroughWall{"run.through-wall", "lead-round-wall", "common-practice", tell};

} // namespace sumpwright::findings

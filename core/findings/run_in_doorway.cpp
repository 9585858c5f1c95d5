#include <algorithm>

#include "core/findings/each_rule.hpp"
#include "core/space/passages.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const auto& fixture : situation.plan().fixtures) {
        if (fixture->kind != plan::FixtureKind::door)
            continue;
        const Outline door = footprintOf(*fixture);
        for (const space::PipeBody& body : situation.bodies()) {
            const units::Length around = std::max(body.radius - space::touching, units::Length());
            const auto passage = space::passageThrough(body, door, around);
            if (!passage)
                continue;
            findings.push_back(findingOf(rule, Severity::warning, {body.run, fixture->id}));
            findings.back().value = passage->at.level;
            findings.back().limit = door.top;
        }
    }
}

} // namespace

// Between a door's sill and its clear height.
const Rule runInDoorway{"run.in-doorway", "lead-round-door", "common-practice", tell};

} // namespace sumpwright::findings

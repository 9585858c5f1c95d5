#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

constexpr units::Length arm = units::metres(0.6);    // nearer than this at any height
constexpr units::Length splash = units::metres(2.0); // nearer than this and below the rim, where spilt water goes

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const auto& fixture : situation.plan().fixtures) {
        if (fixture->kind != plan::FixtureKind::powerPoint)
            continue;
        for (const Outline& vessel : situation.outlines()) {
            const units::Length gap = gapTo(vessel, fixture->from);
            const bool low = gap < splash && fixture->level < vessel.top;
            if (gap >= arm && !low)
                continue;
            findings.push_back(findingOf(rule, Severity::warning, {fixture->id, vessel.id}));
            findings.back().value = gap;
            findings.back().limit = low ? splash : arm;
            break;
        }
    }
}

} // namespace

const Rule powerPointWet{"electric.power-point", "move-power-point", "common-practice", tell};

} // namespace sumpwright::findings

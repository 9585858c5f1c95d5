#include <algorithm>

#include "core/findings/clearly_less.hpp"
#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    const units::Length margin = situation.plan().site->clearances.doorMargin;
    units::Length widest;
    for (const auto& fixture : situation.plan().fixtures)
        if (fixture->kind == plan::FixtureKind::door)
            widest = std::max(widest, plan::distanceBetween(fixture->from, fixture->to));
    if (widest <= units::Length())
        return;
    for (const auto& vessel : situation.plan().vessels) {
        const plan::RectangleShape frame = plan::frameOf(vessel->shape);
        const units::Length smallest = std::min({frame.length, frame.width, vessel->wallHeight});
        if (!clearlyLess(widest, smallest + margin))
            continue;
        findings.push_back(findingOf(rule, Severity::warning, {vessel->id}));
        findings.back().value = smallest;
        findings.back().limit = widest - margin;
    }
}

} // namespace

// The smallest way through of a vessel is its smallest outside size; the widest door counts.
const Rule doorNarrow{"layout.door", "other-door-or-vessel", "common-practice", tell};

} // namespace sumpwright::findings

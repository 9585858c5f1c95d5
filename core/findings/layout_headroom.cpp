#include <optional>

#include "core/findings/clearly_less.hpp"
#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    const plan::Plan& plan = situation.plan();
    const units::Length wanted = plan.site->clearances.headroom;
    for (const auto& vessel : plan.vessels) {
        std::optional<units::Length> least;
        if (plan.floor->clearHeight)
            least = plan::levelAt(*plan.floor, vessel->centre) + *plan.floor->clearHeight - plan::rimLevel(*vessel);
        base::Id above;
        const Outline own = footprintOf(*vessel);
        for (const Outline& other : situation.outlines())
            if (other.base >= own.top && other.base - own.top < wanted && overlap(own, other) &&
                (!least || other.base - own.top < *least)) {
                least = other.base - own.top;
                above = other.id;
            }
        if (!least || !clearlyLess(*least, wanted))
            continue;
        findings.push_back(findingOf(rule, Severity::warning, {vessel->id}));
        if (above.valid())
            findings.back().elements.push_back(above);
        findings.back().value = *least;
        findings.back().limit = wanted;
    }
}

} // namespace

// Over the rim, to the ceiling or to what stands above.
const Rule headroom{"layout.headroom", "more-headroom", "common-practice", tell};

} // namespace sumpwright::findings

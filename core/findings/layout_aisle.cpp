#include "core/findings/clearly_less.hpp"
#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

constexpr units::Length noAisle = units::metres(0.25); // narrower: nobody is meant to walk there

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    const units::Length wanted = situation.plan().site->clearances.aisle;
    const std::vector<Outline>& vessels = situation.outlines();
    std::vector<Outline> others = vessels;
    for (const auto& fixture : situation.plan().fixtures)
        if (fixture->kind == plan::FixtureKind::wall || fixture->kind == plan::FixtureKind::post)
            others.push_back(footprintOf(*fixture));
    for (std::size_t i = 0; i < vessels.size(); ++i)
        for (std::size_t j = i + 1; j < others.size(); ++j) {
            const auto gap = gapBetween(vessels[i], others[j], wanted);
            if (!gap || *gap <= noAisle || !clearlyLess(*gap, wanted))
                continue;
            findings.push_back(findingOf(rule, Severity::warning, {vessels[i].id, others[j].id}));
            findings.back().value = *gap;
            findings.back().limit = wanted;
        }
}

} // namespace

// Between vessels, and between vessels and walls or posts.
const Rule aisleNarrow{"layout.aisle", "widen-aisle", "common-practice", tell};

} // namespace sumpwright::findings

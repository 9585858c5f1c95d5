#include <optional>

#include "core/findings/clearly_less.hpp"
#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

constexpr units::Length wanted = units::millimetres(50.0);

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const assessment::VesselResult& vessel : situation.results().water->vessels) {
        std::optional<units::Length> least;
        for (const auto state : {assessment::WaterState::runningMost, assessment::WaterState::runningLeast}) {
            const auto& water = vessel.water[state];
            if (water && water->heldBy != assessment::HeldBy::rim && (!least || water->freeBoard < *least))
                least = water->freeBoard;
        }
        if (!least || !clearlyLess(*least, wanted))
            continue;
        findings.push_back(findingOf(rule, Severity::warning, {vessel.id}));
        findings.back().value = *least;
        findings.back().limit = wanted;
    }
}

} // namespace

const Rule vesselFreeBoard{"vessel.little-free-board", "raise-wall", "common-practice", tell};

} // namespace sumpwright::findings

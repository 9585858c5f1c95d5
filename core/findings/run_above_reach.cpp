#include <algorithm>

#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

// As high as a pump lifts at no flow from its vessel's water; none without a pump at work.
std::optional<units::Elevation> pumpsReach(const Situation& situation)
{
    std::optional<units::Elevation> reach;
    for (const assessment::PumpResult& result : situation.results().pumps->pumps) {
        const plan::Pump* pump = situation.plan().pumps.find(result.id);
        const auto* vessel = pump ? assessment::find(situation.results().water->vessels, pump->vessel) : nullptr;
        if (!vessel || !pump->running || !vessel->water[assessment::WaterState::runningMost])
            continue;
        const units::Elevation top =
            units::elevationMetres(units::inMetres(vessel->water[assessment::WaterState::runningMost]->level) +
                                   units::inMetresHead(result.shutOff));
        reach = reach ? std::max(*reach, top) : top;
    }
    return reach;
}

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    const auto reach = pumpsReach(situation);
    for (const auto& run : situation.plan().runs) {
        if (!reach || run->service != plan::Service::pressure || run->vertices.empty())
            continue;
        const auto highest =
            std::max_element(run->vertices.begin(), run->vertices.end(),
                             [](const plan::Vertex& a, const plan::Vertex& b) { return a.level < b.level; });
        const auto flow = situation.largestFlow(run->id);
        if (highest->level <= *reach || !flow || *flow > units::Flow())
            continue;
        findings.push_back(findingOf(rule, Severity::error, {run->id}));
        findings.back().value = highest->level;
        findings.back().limit = *reach;
    }
}

} // namespace

// A pipe that falls again behind a point no pump can reach never fills.
const Rule runAboveReach{"run.above-reach", "lower-crest", "common-practice", tell};

} // namespace sumpwright::findings

#include "core/assessment/standing.hpp"

#include <algorithm>

#include "core/hydraulics/overflow.hpp"

namespace sumpwright::assessment
{
namespace
{

constexpr units::Flow still = units::litresPerHour(1e-6);

using OutletFlows = std::vector<Stage<units::Flow>>;

Throughflow nowhere(const Basin& basin, units::Flow inflow)
{
    if (inflow > still)
        return {Stage<Standing>::notSolved({"no-way-out", "water comes in and nothing leads it out", basin.id}), {}};
    return {
        Stage<Standing>::notComputed({"level-unknown", "no overflow, standpipe or outlet holds its level", basin.id}),
        {}};
}

OutletFlows onlyFirst(const Basin& basin, units::Flow inflow)
{
    OutletFlows flows(basin.outlets.size(), Stage<units::Flow>(units::Flow()));
    flows.front() = inflow;
    return flows;
}

units::Flow overLipsAt(const Basin& basin, units::Elevation level)
{
    units::Flow sum;
    for (const BasinOutlet& outlet : basin.outlets)
        if (!outlet.side && outlet.bore > units::Length())
            sum += hydraulics::overflowFlow({outlet.bore}, level - outlet.lip);
    return sum;
}

// The level at which all lips together take the inflow; between `low` and `high`.
units::Elevation sharedLevel(const Basin& basin, units::Flow inflow, units::Elevation low, units::Elevation high)
{
    double a = units::inMetres(low), b = units::inMetres(high);
    for (int step = 0; step < 200; ++step) {
        const double middle = 0.5 * (a + b);
        if (middle <= a || middle >= b)
            break;
        (overLipsAt(basin, units::elevationMetres(middle)) < inflow ? a : b) = middle;
    }
    return units::elevationMetres(b);
}

OutletFlows lipFlowsAt(const Basin& basin, units::Elevation level)
{
    OutletFlows flows;
    for (const BasinOutlet& outlet : basin.outlets) {
        const bool known = !outlet.side && outlet.bore > units::Length();
        flows.emplace_back(known ? hydraulics::overflowFlow({outlet.bore}, level - outlet.lip) : units::Flow());
    }
    return flows;
}

Throughflow unknownSplit(const Basin& basin, const Standing& standing)
{
    const Stage<units::Flow> unknown = Stage<units::Flow>::notComputed(
        {"split-unknown", "the water leaves by several outlets, how it divides is not modelled", basin.id});
    return {standing, OutletFlows(basin.outlets.size(), unknown)};
}

bool reachesSideOutlet(const Basin& basin, units::Elevation level)
{
    return std::any_of(basin.outlets.begin() + 1, basin.outlets.end(),
                       [level](const BasinOutlet& outlet) { return outlet.side && outlet.lip < level; });
}

Throughflow throughSide(const Basin& basin, units::Flow inflow)
{
    const BasinOutlet& outlet = basin.outlets.front();
    Standing standing{outlet.lip, HeldBy::sideOutlet, {}};
    if (inflow > still) {
        standing.overLip = std::min(outlet.bore, basin.rim - outlet.lip);
        standing.level = outlet.lip + standing.overLip;
    }
    for (std::size_t i = 1; i < basin.outlets.size(); ++i)
        if (basin.outlets[i].lip < standing.level)
            return unknownSplit(basin, standing);
    return {standing, onlyFirst(basin, inflow)};
}

Throughflow overLips(const Basin& basin, units::Flow inflow)
{
    const BasinOutlet& lowest = basin.outlets.front();
    const auto alone = hydraulics::overflowLevel({lowest.bore}, inflow);
    Standing standing{lowest.lip, HeldBy::lip, alone ? alone->predicted : units::Length()};
    standing.level = lowest.lip + standing.overLip;
    OutletFlows flows = onlyFirst(basin, inflow);
    const bool several = basin.outlets.size() > 1 && basin.outlets[1].lip < standing.level;
    if (several && reachesSideOutlet(basin, standing.level))
        return unknownSplit(basin, standing);
    if (several) {
        standing.level = sharedLevel(basin, inflow, lowest.lip, standing.level);
        flows = lipFlowsAt(basin, standing.level);
    }
    if (standing.level > basin.rim) {
        standing.level = basin.rim;
        standing.heldBy = HeldBy::rim;
        flows = lipFlowsAt(basin, basin.rim);
    }
    standing.overLip = standing.level - lowest.lip;
    return {standing, std::move(flows)};
}

} // namespace

Throughflow throughflowOf(const Basin& basin, units::Flow inflow, RunningState state)
{
    if (basin.fault)
        return {Stage<Standing>::notComputed(*basin.fault), OutletFlows(basin.outlets.size())};
    if (basin.outlets.empty())
        return nowhere(basin, inflow);
    const BasinOutlet& lowest = basin.outlets.front();
    if (inflow < -still)
        return {Stage<Standing>::notSolved({"runs-dry", "more water is taken out than comes in", basin.id}),
                OutletFlows(basin.outlets.size())};
    if (state == RunningState::most && lowest.drainLevel) {
        const units::Elevation level = std::clamp(*lowest.drainLevel, basin.bottom, std::max(lowest.lip, basin.bottom));
        return {Standing{level, HeldBy::drainLevel, {}}, onlyFirst(basin, inflow)};
    }
    const units::Flow received = std::max(inflow, units::Flow());
    return lowest.side ? throughSide(basin, received) : overLips(basin, received);
}

} // namespace sumpwright::assessment

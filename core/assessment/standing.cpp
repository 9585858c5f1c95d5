#include "core/assessment/standing.hpp"

#include <algorithm>

#include "core/hydraulics/overflow.hpp"
#include "core/hydraulics/shared_level.hpp"
#include "core/hydraulics/side_outlet.hpp"

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

// What the outlet itself asks for, before the run behind it.
units::Elevation ownLevel(const BasinOutlet& outlet, units::Flow flow)
{
    if (flow <= units::Flow() || outlet.bore <= units::Length())
        return outlet.lip;
    const units::Flow crowded = flow / outlet.openFraction; // a screen leaves that much of the lip or the bore
    if (outlet.side)
        return outlet.lip + hydraulics::sideOutletFlow(outlet.bore, crowded).levelOverInvert;
    const auto level = hydraulics::overflowLevel({outlet.bore, outlet.openFraction}, flow);
    return level ? outlet.lip + level->predicted : outlet.lip;
}

Throughflow through(const Basin& basin, units::Flow inflow, const RunNeeds& needs)
{
    const BasinOutlet& lowest = basin.outlets.front();
    const hydraulics::LevelNeeded needed = [&](std::size_t way, units::Flow flow) {
        const BasinOutlet& outlet = basin.outlets[way];
        return std::max({outlet.holds, ownLevel(outlet, flow), needs(outlet, flow)});
    };
    const hydraulics::SharedLevel shared = hydraulics::shareOut(basin.outlets.size(), inflow, needed);
    Standing standing{shared.level, lowest.side ? HeldBy::sideOutlet : HeldBy::lip, {}};
    OutletFlows flows(shared.flows.begin(), shared.flows.end());
    if (standing.level > basin.rim) {
        standing.level = basin.rim;
        standing.heldBy = HeldBy::rim;
        for (std::size_t way = 0; way < flows.size(); ++way)
            flows[way] = hydraulics::takenAt(way, basin.rim, inflow, needed);
    }
    standing.overLip = standing.level - lowest.holds;
    return {standing, std::move(flows)};
}

} // namespace

units::Elevation needsNothing(const BasinOutlet& outlet, units::Flow /*flow*/) { return outlet.holds; }

Throughflow throughflowOf(const Basin& basin, units::Flow inflow, RunningState state, const RunNeeds& needs)
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
        const units::Elevation level =
            std::clamp(*lowest.drainLevel, basin.bottom, std::max(lowest.holds, basin.bottom));
        return {Standing{level, HeldBy::drainLevel, {}}, onlyFirst(basin, inflow)};
    }
    return through(basin, inflow > still ? inflow : units::Flow(), needs);
}

} // namespace sumpwright::assessment

#include "core/assessment/open_flow_of.hpp"

#include <algorithm>

#include "core/hydraulics/friction.hpp"
#include "core/hydraulics/round_channel.hpp"
#include "core/hydraulics/sloping_drain.hpp"

namespace sumpwright::assessment
{
namespace
{

constexpr double steep = 0.7;                                 // from here a stretch drops rather than slopes
constexpr units::Length hair = units::millimetres(0.01);      // of a level
constexpr units::Length leastSlope = units::millimetres(1.0); // a shorter fall is none

// Fall over true length the way the water runs.
double fallOf(const Stretch& stretch, bool forward)
{
    const units::Length fall = forward ? stretch.start - stretch.end : stretch.end - stretch.start;
    return stretch.length > units::Length() && fall >= leastSlope ? static_cast<double>(fall / stretch.length) : 0.0;
}

std::optional<FlattestStretch> flattestOf(const DrawnRun& run, bool forward, units::Flow flow)
{
    std::optional<FlattestStretch> flattest;
    for (std::size_t i = 0; i < run.stretches.size(); ++i) {
        const double fall = fallOf(run.stretches[i], forward);
        if (fall <= 0.0 || fall > steep || (flattest && fall >= units::inSi(flattest->fall)))
            continue;
        flattest = FlattestStretch{i, units::metresPerMetre(fall), run.manningN, {}, {}};
    }
    if (flattest) {
        flattest->fullFlow = hydraulics::fullFlow(run.bore, flattest->fall, run.manningN);
        flattest->depth = hydraulics::normalDepth(run.bore, flow, flattest->fall, run.manningN);
    }
    return flattest;
}

// Depth that tells the velocity: the deeper end, or uniform flow where nothing holds the water back.
units::Length depthIn(const DrawnRun& run, std::size_t i, bool forward, units::Flow flow,
                      const hydraulics::ReachWater& water)
{
    const units::Length deeper = std::max(water.startDepth, water.endDepth);
    const double fall = fallOf(run.stretches[i], forward);
    if (fall <= 0.0 || deeper > hydraulics::criticalDepth(run.bore, flow) + hair)
        return deeper;
    const auto uniform = hydraulics::normalDepth(run.bore, flow, units::metresPerMetre(fall), run.manningN);
    return uniform ? std::min(*uniform, deeper) : deeper;
}

} // namespace

OpenFlow openFlowOf(const DrawnRun& run, bool forward, units::Flow flow, const hydraulics::GravityWater& water,
                    std::optional<units::Elevation> tail)
{
    OpenFlow open;
    open.levelNeeded = water.upstreamLevel;
    open.stretches = water.reaches;
    if (!forward) {
        std::reverse(open.stretches.begin(), open.stretches.end());
        for (hydraulics::ReachWater& reach : open.stretches) {
            std::swap(reach.startDepth, reach.endDepth);
            std::swap(reach.startGrade, reach.endGrade);
        }
    }
    const units::Length radius = 0.5 * run.bore;
    const DrawnEnd& end = forward ? run.to : run.from;
    open.backedUp = tail && end.kind == EndKind::vessel && *tail > end.level + radius;
    for (std::size_t i = 0; i < std::min(open.stretches.size(), run.stretches.size()); ++i) {
        const hydraulics::ReachWater& reach = open.stretches[i];
        open.fullest =
            std::max(open.fullest, static_cast<double>(std::max(reach.startDepth, reach.endDepth) / run.bore));
        open.surcharged = open.surcharged || reach.startGrade > run.stretches[i].start + radius + hair ||
                          reach.endGrade > run.stretches[i].end + radius + hair;
        const bool falls = fallOf(run.stretches[i], forward) > steep && reach.startDepth < run.bore;
        if (flow <= units::Flow() || run.stretches[i].length <= units::Length() || falls)
            continue; // falling water is quick
        const units::Velocity velocity =
            hydraulics::drainVelocity(flow, run.bore, depthIn(run, i, forward, flow, reach));
        open.slowest = open.slowest ? std::min(*open.slowest, velocity) : velocity;
    }
    open.surcharged = open.surcharged && !open.backedUp;
    open.flattest = flattestOf(run, forward, flow);
    return open;
}

} // namespace sumpwright::assessment

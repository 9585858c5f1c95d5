#include "core/hydraulics/gravity_run.hpp"

#include <algorithm>
#include <cmath>

#include "core/base/ensure.hpp"
#include "core/hydraulics/friction.hpp"
#include "core/hydraulics/round_channel.hpp"
#include "core/hydraulics/side_outlet.hpp"

namespace sumpwright::hydraulics
{
namespace
{

constexpr double g = units::standardGravity;
constexpr double mostSteps = 400.0; // along a reach that runs part full
constexpr double steep = 0.7;       // fall over true length from which a reach drops rather than slopes

// One pipe at one flow, in SI numbers; heights are above datum.
class Line
{
public:
    Line(const GravityPipe& pipe, units::Flow flow, units::KinematicViscosity viscosity)
        : m_pipe(pipe), m_flow(units::inCubicMetresPerSecond(flow)), m_bore(units::inMetres(pipe.bore)),
          m_viscosity(viscosity)
    {
        const double full = units::pi / 4.0 * m_bore * m_bore;
        m_fullVelocityHead = std::pow(m_flow / full, 2) / (2.0 * g);
        m_fullEnergy = m_bore + m_fullVelocityHead;
        m_fullSlope = slopeAt(m_bore);
        m_criticalDepth = units::inMetres(criticalDepth(pipe.bore, flow));
        m_criticalVelocityHead = velocityHead(m_criticalDepth);
        m_criticalEnergy = enteringLevel(0.0);
        m_criticalSlope = slopeAt(m_criticalDepth);
    }

    double upstream(std::optional<units::Elevation> tail, std::vector<ReachWater>* along)
    {
        const std::vector<GravityReach>& reaches = m_pipe.reaches;
        double energy = atEnd(tail);
        for (std::size_t i = reaches.size(); i-- > 0;) {
            const GravityReach& reach = reaches[i];
            const double end = units::inMetres(reach.endInvert), start = units::inMetres(reach.startInvert);
            energy = std::max(energy, end + m_criticalEnergy);
            const double endEnergy = energy;
            energy = through(energy, units::inMetres(reach.length), end, start);
            const bool held = energy > start + m_criticalEnergy;
            if (along)
                along->push_back(waterIn(start, std::max(energy, start + m_criticalEnergy), end, endEnergy));
            if (i == 0)
                return atStart(reach, start, energy, held);
            energy = std::max(energy, start + m_criticalEnergy);
            energy += reach.k * velocityHead(depthOf(energy - start));
        }
        return energy;
    }

private:
    // Level over the invert of still water before an entry with this K: the law of side_outlet.hpp, at the critical
    // depth that is known already.
    double enteringLevel(double k) const
    {
        const double free = m_criticalDepth + (1.0 + k) * m_criticalVelocityHead, limit = freeEntryLimit * m_bore;
        return free <= limit ? free : std::max(limit, 0.5 * m_bore + (1.0 + k) * m_fullVelocityHead);
    }

    double velocityHead(double depth) const
    {
        if (depth >= m_bore)
            return m_fullVelocityHead;
        const double area = units::inSquareMetres(sectionAt(m_pipe.bore, units::metres(depth)).area);
        return area > 0.0 ? std::pow(m_flow / area, 2) / (2.0 * g) : 0.0;
    }

    // Fall of the energy line per length.
    double slopeAt(double depth) const
    {
        if (depth <= 0.0)
            return 0.0;
        const WaterSection section = sectionAt(m_pipe.bore, units::metres(std::min(depth, m_bore)));
        const double area = units::inSquareMetres(section.area);
        const double across = 4.0 * area / units::inMetres(section.wettedPerimeter); // hydraulic diameter
        const double velocity = m_flow / area;
        const double reynolds = velocity * across / units::inSquareMetresPerSecond(m_viscosity);
        const double rough = std::min(units::inMetres(m_pipe.roughness) / across, roughestComputed);
        return frictionFactor(reynolds, rough) * velocity * velocity / (2.0 * g * across);
    }

    // Tranquil depth that holds this energy over the invert; the bore where it runs full, critical depth at the least.
    double depthOf(double energy) const
    {
        if (energy >= m_fullEnergy)
            return m_bore;
        double low = m_criticalDepth, high = m_bore, depth = std::clamp(energy, low, high);
        if (low + velocityHead(low) >= energy)
            return low;
        for (int step = 0; step < 60 && high - low > 1e-13; ++step) { // Newton, halving where it leaves the bracket
            const WaterSection section = sectionAt(m_pipe.bore, units::metres(depth));
            const double area = units::inSquareMetres(section.area), head = std::pow(m_flow / area, 2) / (2.0 * g);
            const double misfit = depth + head - energy;
            (misfit < 0.0 ? low : high) = depth;
            const double slope = 1.0 - 2.0 * head * units::inMetres(section.surfaceWidth) / area;
            const double next = depth - misfit / slope;
            const bool inside = slope > 0.0 && next > low && next < high;
            if (inside && std::fabs(next - depth) < 1e-13)
                return next;
            depth = inside ? next : 0.5 * (low + high);
        }
        return depth;
    }

    double atEnd(std::optional<units::Elevation> tail) const
    {
        const double invert = units::inMetres(m_pipe.reaches.back().endInvert);
        if (!tail || *tail <= m_pipe.reaches.back().endInvert)
            return invert + m_criticalEnergy;
        const double depth = std::clamp(units::inMetres(*tail) - invert, m_criticalDepth, m_bore);
        return units::inMetres(*tail) + m_pipe.endK * velocityHead(depth);
    }

    // Energy at the upper end of a reach from that at its lower end.
    double through(double energy, double length, double end, double start) const
    {
        if (length <= 0.0)
            return energy;
        const double rise = (start - end) / length;
        double left = length, invert = end;
        const double over = energy - end - m_fullEnergy;
        if (over >= 0.0) { // full at its end: up to where the water leaves the soffit
            const double closes = rise - m_fullSlope;
            const double full = closes > 0.0 ? std::min(length, over / closes) : length;
            energy += m_fullSlope * full;
            invert += rise * full;
            left -= full;
        }
        if (left <= 0.0 || energy + m_criticalSlope * left <= start + m_criticalEnergy)
            return energy;
        return partFull(energy, left, invert, rise);
    }

    double partFull(double energy, double left, double invert, double rise) const
    {
        const double shortest = left / mostSteps;
        const auto depthWith = [&](double head, double z) { return depthOf(std::max(head, z + m_criticalEnergy) - z); };
        while (left > 0.0) {
            const double depth = depthWith(energy, invert), slope = slopeAt(depth);
            // The depth changes by a small part of the bore, and settles rather than swings about uniform flow.
            // Near critical depth it changes with the root of the energy, so steps begin small there.
            const double part = depth < 1.2 * m_criticalDepth ? 0.004 : 0.04;
            const double small = std::min(part * m_bore / std::max(std::fabs(slope - rise), 1e-9),
                                          depth / (6.0 * std::max(slope, 1e-9)));
            const double step = std::min(left, std::max(small, shortest));
            const double middle = energy + 0.5 * step * slope;
            energy += step * slopeAt(depthWith(middle, invert + 0.5 * step * rise));
            invert += step * rise;
            left -= step;
            if (left > 0.0)
                energy = std::max(energy, invert + m_criticalEnergy);
        }
        return energy;
    }

    double atStart(const GravityReach& reach, double start, double energy, bool held) const
    {
        const double end = units::inMetres(reach.endInvert);
        const bool drops = start - end > steep * units::inMetres(reach.length);
        const double free = m_pipe.fromLip && drops ? start : start + enteringLevel(reach.k);
        return held ? std::max(free, energy + reach.k * velocityHead(depthOf(energy - start))) : free;
    }

    ReachWater waterIn(double start, double startEnergy, double end, double endEnergy) const
    {
        const double startDepth = depthOf(startEnergy - start), endDepth = depthOf(endEnergy - end);
        return {units::metres(startDepth), units::metres(endDepth),
                units::elevationMetres(std::max(startEnergy - velocityHead(startDepth), start)),
                units::elevationMetres(std::max(endEnergy - velocityHead(endDepth), end))};
    }

    const GravityPipe& m_pipe;
    double m_flow;
    double m_bore;
    units::KinematicViscosity m_viscosity;
    double m_fullVelocityHead = 0.0;
    double m_fullEnergy = 0.0;
    double m_fullSlope = 0.0;
    double m_criticalDepth = 0.0;
    double m_criticalVelocityHead = 0.0;
    double m_criticalEnergy = 0.0;
    double m_criticalSlope = 0.0;
};

// Without flow the water stands as high as the highest invert, or the tail.
GravityWater still(const GravityPipe& pipe, std::optional<units::Elevation> tail)
{
    GravityWater water;
    units::Elevation level = tail.value_or(pipe.reaches.back().endInvert);
    for (std::size_t i = pipe.reaches.size(); i-- > 0;) {
        const GravityReach& reach = pipe.reaches[i];
        const auto depthAt = [&](units::Elevation invert) {
            return std::clamp(level - invert, units::Length(), pipe.bore);
        };
        ReachWater in;
        level = std::max(level, reach.endInvert);
        in.endDepth = depthAt(reach.endInvert);
        in.endGrade = level;
        level = std::max(level, reach.startInvert);
        in.startDepth = depthAt(reach.startInvert);
        in.startGrade = level;
        water.reaches.push_back(in);
    }
    water.upstreamLevel = level;
    return water;
}

} // namespace

GravityWater waterAlong(const GravityPipe& pipe, units::Flow flow, std::optional<units::Elevation> tail,
                        units::KinematicViscosity viscosity)
{
    base::ensure(!pipe.reaches.empty() && pipe.bore > units::Length(), "a gravity pipe has a bore and a reach");
    GravityWater water;
    if (flow <= units::Flow()) {
        water = still(pipe, tail);
    } else {
        Line line(pipe, flow, viscosity);
        water.upstreamLevel = units::elevationMetres(line.upstream(tail, &water.reaches));
    }
    std::reverse(water.reaches.begin(), water.reaches.end());
    return water;
}

units::Elevation levelNeeded(const GravityPipe& pipe, units::Flow flow, std::optional<units::Elevation> tail,
                             units::KinematicViscosity viscosity)
{
    base::ensure(!pipe.reaches.empty() && pipe.bore > units::Length(), "a gravity pipe has a bore and a reach");
    if (flow <= units::Flow())
        return still(pipe, tail).upstreamLevel;
    return units::elevationMetres(Line(pipe, flow, viscosity).upstream(tail, nullptr));
}

} // namespace sumpwright::hydraulics

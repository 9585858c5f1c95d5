#include "core/hydraulics/side_outlet.hpp"

#include <algorithm>
#include <cmath>

#include "core/base/ensure.hpp"
#include "core/hydraulics/friction.hpp"
#include "core/hydraulics/kernel/wetted_arc.hpp"
#include "core/hydraulics/round_channel.hpp"

namespace sumpwright::hydraulics
{
namespace
{

constexpr double twiceGravity = 2.0 * units::standardGravity;

// Level over the invert as part of the bore at critical flow of this half angle: at critical flow the velocity head is
// half the mean depth A/T. Rises with the angle, without bound towards a full bore.
struct LevelLaw {
    double perVelocityHead; // 1 + entry K
    double wanted;          // level / bore

    kernel::Misfit operator()(double angle) const
    {
        const double sine = std::sin(angle);
        const double segment = kernel::segmentAt(angle);
        const double velocityHead = segment / (8.0 * sine);
        const double slope = (2.0 * sine * sine * sine - segment * std::cos(angle)) / (8.0 * sine * sine);
        return {kernel::depthRatioAt(angle) + perVelocityHead * velocityHead - wanted,
                sine / 2.0 + perVelocityHead * slope};
    }
};

double criticalFlowAtLevel(double bore, double level, double perVelocityHead)
{
    const LevelLaw law{perVelocityHead, level / bore};
    const double nearBy = kernel::halfAngleAt(0.7 * level / bore);
    const double angle = kernel::halfAngleWhere(law, nearBy, units::pi);
    const double area = kernel::segmentAt(angle) / 4.0;
    return area * std::sqrt(area / std::sin(angle)) * bore * bore * std::sqrt(units::standardGravity * bore);
}

units::Velocity criticalVelocity(const WaterSection& section)
{
    const double meanDepth = units::inSquareMetres(section.area) / units::inMetres(section.surfaceWidth);
    return units::metresPerSecond(std::sqrt(units::standardGravity * meanDepth));
}

} // namespace

SideOutletFlow sideOutletFlow(units::Length bore, units::Flow flow, double entryK)
{
    const units::Length depth = criticalDepth(bore, flow);
    if (!(depth > units::Length()))
        return SideOutletFlow();
    const units::Length free = criticalLevel(bore, flow, entryK);
    if (free <= freeEntryLimit * bore)
        return {depth, criticalVelocity(sectionAt(bore, depth)), free, false};
    const units::Velocity full = meanVelocity(flow, bore);
    const double v = units::inMetresPerSecond(full);
    const units::Length level = 0.5 * bore + units::metres((1.0 + entryK) * v * v / twiceGravity);
    return {depth, full, std::max(freeEntryLimit * bore, level), true};
}

units::Flow sideOutletCapacity(units::Length bore, units::Length levelOverInvert, double entryK)
{
    const double d = units::inMetres(bore);
    const double level = units::inMetres(levelOverInvert);
    base::ensure(d > 0.0 && entryK >= 0.0, "an outlet has a bore, and an entry that takes head");
    if (!(level > 0.0))
        return units::Flow();
    if (level < freeEntryLimit * d)
        return units::cubicMetresPerSecond(criticalFlowAtLevel(d, level, 1.0 + entryK));
    const double velocity = std::sqrt(twiceGravity * (level - 0.5 * d) / (1.0 + entryK));
    return units::cubicMetresPerSecond(velocity * units::pi / 4.0 * d * d);
}

} // namespace sumpwright::hydraulics

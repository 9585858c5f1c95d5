#include "core/hydraulics/round_channel.hpp"

#include <cmath>

#include "core/base/ensure.hpp"
#include "core/hydraulics/kernel/wetted_arc.hpp"

namespace sumpwright::hydraulics
{
namespace
{

using kernel::segmentAt;

double metresOf(units::Length bore)
{
    const double d = units::inMetres(bore);
    base::ensure(d > 0.0, "a channel has a bore");
    return d;
}

// Logarithm of A^3/T at the wanted flow, ratios to the bore: rises with the angle from minus to plus infinity.
struct CriticalLaw {
    double wanted;

    kernel::Misfit operator()(double angle) const
    {
        const double segment = segmentAt(angle);
        const double sine = std::sin(angle);
        return {3.0 * std::log(segment / 4.0) - std::log(sine) - wanted,
                6.0 * sine * sine / segment - std::cos(angle) / sine};
    }
};

// The depth as part of the bore at a flow of `number` = Q / sqrt(g D^5).
double criticalRatio(double number)
{
    const CriticalLaw law{2.0 * std::log(number)};
    const double nearBy = kernel::halfAngleAt(std::fmin(std::sqrt(number), 0.98)); // y/D is near the root up to 0.8
    return kernel::depthRatioAt(kernel::halfAngleWhere(law, nearBy, units::pi));
}

} // namespace

WaterSection sectionAt(units::Length bore, units::Length depth)
{
    const double d = metresOf(bore);
    const double angle = kernel::halfAngleAt(units::inMetres(depth) / d);
    return {units::squareMetres(d * d * segmentAt(angle) / 4.0), units::metres(d * std::fabs(std::sin(angle))),
            units::metres(d * angle)};
}

units::Length criticalDepth(units::Length bore, units::Flow flow)
{
    const double d = metresOf(bore);
    const double number = units::inCubicMetresPerSecond(flow) / (d * d * std::sqrt(units::standardGravity * d));
    if (!(number > 0.0))
        return units::metres(0.0);
    return units::metres(std::fmin(d * criticalRatio(number), std::nextafter(d, 0.0)));
}

units::Length criticalLevel(units::Length bore, units::Flow flow, double entryK)
{
    base::ensure(entryK >= 0.0, "an entry takes head, it gives none");
    const units::Length depth = criticalDepth(bore, flow);
    const double area = units::inSquareMetres(sectionAt(bore, depth).area);
    if (!(area > 0.0))
        return units::metres(0.0);
    const double velocity = units::inCubicMetresPerSecond(flow) / area;
    return depth + units::metres((1.0 + entryK) * velocity * velocity / (2.0 * units::standardGravity));
}

} // namespace sumpwright::hydraulics

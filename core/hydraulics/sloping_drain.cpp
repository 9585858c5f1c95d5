#include "core/hydraulics/sloping_drain.hpp"

#include <cmath>

#include "core/base/ensure.hpp"
#include "core/hydraulics/kernel/wetted_arc.hpp"
#include "core/hydraulics/round_channel.hpp"

namespace sumpwright::hydraulics
{
namespace
{

using kernel::segmentAt;

constexpr double mostFlowAngle = 2.6391; // rad, at the depth of the greatest flow: up to here flow rises
constexpr double twoThirds = 2.0 / 3.0;  // Manning's power of the hydraulic radius
constexpr double fiveThirds = 5.0 / 3.0; // hence that of the area

// Flow as part of the full bore's, at a half angle: (A/Af)^(5/3) (P/Pf)^(-2/3).
double flowRatio(double angle)
{
    if (!(angle > 0.0))
        return 0.0;
    const double segment = segmentAt(angle);
    return segment / units::pi * std::pow(segment / angle, twoThirds);
}

// Logarithm of that against the wanted one.
struct NormalLaw {
    double wanted;

    kernel::Misfit operator()(double angle) const
    {
        const double segment = segmentAt(angle);
        const double sine = std::sin(angle);
        return {fiveThirds * std::log(segment) - twoThirds * std::log(angle) - std::log(units::pi) - wanted,
                fiveThirds * 2.0 * sine * sine / segment - twoThirds / angle};
    }
};

double fullFlowNumber(units::Length bore, double fall, double manningN)
{
    const double d = units::inMetres(bore);
    base::ensure(d > 0.0 && manningN > 0.0, "a drain has a bore and a roughness");
    return units::pi / 4.0 * d * d * std::pow(d / 4.0, twoThirds) * std::sqrt(fall) / manningN;
}

double fallOf(units::Slope fall) { return std::fmax(units::inMetresPerMetre(fall), 0.0); }

} // namespace

units::Flow normalFlow(units::Length bore, units::Length depth, units::Slope fall, double manningN)
{
    const double full = fullFlowNumber(bore, fallOf(fall), manningN);
    const double angle = kernel::halfAngleAt(units::inMetres(depth) / units::inMetres(bore));
    return units::cubicMetresPerSecond(full * flowRatio(angle));
}

units::Flow fullFlow(units::Length bore, units::Slope fall, double manningN)
{
    return units::cubicMetresPerSecond(fullFlowNumber(bore, fallOf(fall), manningN));
}

std::optional<units::Length> normalDepth(units::Length bore, units::Flow flow, units::Slope fall, double manningN)
{
    const double full = fullFlowNumber(bore, fallOf(fall), manningN);
    if (!(full > 0.0))
        return std::nullopt;
    const double ratio = units::inCubicMetresPerSecond(flow) / full;
    if (!(ratio <= 1.0))
        return std::nullopt;
    if (!(ratio > 0.0))
        return units::Length();
    // A thin film carries near 3/2 of the fourth power of its angle; half full is half the flow.
    const double nearBy = units::pi / 2.0 * std::pow(2.0 * ratio, 0.24);
    const double angle = kernel::halfAngleWhere(NormalLaw{std::log(ratio)}, nearBy, mostFlowAngle);
    return kernel::depthRatioAt(angle) * bore;
}

units::Slope fallNeeded(units::Length bore, units::Flow flow, double fill, double manningN)
{
    base::ensure(fill > 0.0 && fill <= 1.0, "a fill is a part of the bore");
    const double atOne = fullFlowNumber(bore, 1.0, manningN) * flowRatio(kernel::halfAngleAt(fill));
    const double root = std::fmax(units::inCubicMetresPerSecond(flow), 0.0) / atOne;
    return units::metresPerMetre(root * root);
}

units::Velocity drainVelocity(units::Flow flow, units::Length bore, units::Length depth)
{
    const double area = units::inSquareMetres(sectionAt(bore, depth).area);
    return units::metresPerSecond(area > 0.0 ? std::fmax(units::inCubicMetresPerSecond(flow), 0.0) / area : 0.0);
}

SelfCleansing selfCleansingAt(units::Velocity velocity)
{
    if (velocity < settlingVelocity)
        return SelfCleansing::Settles;
    return velocity < cleansingVelocity ? SelfCleansing::Doubtful : SelfCleansing::Cleans;
}

DrainFill drainFillAt(double fill)
{
    if (fill <= designFill)
        return DrainFill::Designed;
    if (fill <= highFill)
        return DrainFill::Ample;
    return fill <= surchargedFill ? DrainFill::High : DrainFill::Surcharged;
}

} // namespace sumpwright::hydraulics

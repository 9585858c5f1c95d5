#include "core/hydraulics/friction.hpp"

#include <cmath>

#include "core/base/ensure.hpp"
#include "core/hydraulics/kernel/pipe_law.hpp"

namespace sumpwright::hydraulics
{
namespace
{

kernel::PipeLaw::Value lossAt(const StraightPipe& pipe, units::Flow flow, units::KinematicViscosity viscosity)
{
    const kernel::PipeNumbers numbers{units::inMetres(pipe.bore), units::inMetres(pipe.length),
                                      units::inMetres(pipe.roughness), 0.0, pipe.corrugatedFactor};
    base::ensure(numbers.bore > 0.0 && numbers.length >= 0.0, "a pipe has a bore and no negative length");
    base::ensure(numbers.roughness >= 0.0 && numbers.roughness <= roughestComputed * numbers.bore,
                 "roughness is 0 to half the bore");
    base::ensure(numbers.corrugatedFactor >= 0.0, "a friction factor is not negative");
    base::ensure(units::inSquareMetresPerSecond(viscosity) > 0.0, "viscosity is above zero");
    kernel::LastRoot root;
    return kernel::PipeLaw(numbers, units::inSquareMetresPerSecond(viscosity))
        .at(units::inCubicMetresPerSecond(flow), root);
}

} // namespace

units::Area boreArea(units::Length bore)
{
    return units::fromSi<units::Area>(units::pi / 4.0 * units::inMetres(bore) * units::inMetres(bore));
}

units::Velocity meanVelocity(units::Flow flow, units::Length bore)
{
    base::ensure(units::inMetres(bore) > 0.0, "a pipe has a bore");
    return units::metresPerSecond(units::inCubicMetresPerSecond(flow) / units::inSquareMetres(boreArea(bore)));
}

double reynoldsNumber(units::Flow flow, units::Length bore, units::KinematicViscosity viscosity)
{
    base::ensure(units::inSquareMetresPerSecond(viscosity) > 0.0, "viscosity is above zero");
    return std::fabs(units::inMetresPerSecond(meanVelocity(flow, bore))) * units::inMetres(bore) /
           units::inSquareMetresPerSecond(viscosity);
}

FlowRegime regimeOf(double reynolds)
{
    if (!(reynolds > 0.0))
        return FlowRegime::Still;
    if (reynolds <= laminarLimit)
        return FlowRegime::Laminar;
    return reynolds < turbulentLimit ? FlowRegime::Transition : FlowRegime::Turbulent;
}

double frictionFactor(double reynolds, double relativeRoughness)
{
    base::ensure(reynolds > 0.0 && std::isfinite(reynolds), "a friction factor needs flow");
    base::ensure(relativeRoughness >= 0.0 && relativeRoughness <= roughestComputed, "roughness is 0 to half the bore");
    kernel::LastRoot root;
    return kernel::FrictionLaw(relativeRoughness).at(reynolds, root).factor;
}

double corrugatedFrictionFactor(double reynolds, double corrugatedFactor)
{
    base::ensure(reynolds > 0.0 && corrugatedFactor > 0.0, "a friction factor needs flow and a wall");
    return std::fmax(64.0 / reynolds, corrugatedFactor);
}

units::Head frictionLoss(const StraightPipe& pipe, units::Flow flow, units::KinematicViscosity viscosity)
{
    return units::metresHead(lossAt(pipe, flow, viscosity).friction);
}

LossWithSlope frictionLossWithSlope(const StraightPipe& pipe, units::Flow flow, units::KinematicViscosity viscosity)
{
    const kernel::PipeLaw::Value value = lossAt(pipe, flow, viscosity);
    return {units::metresHead(value.friction), units::fromSi<HeadPerFlow>(value.slope)};
}

} // namespace sumpwright::hydraulics

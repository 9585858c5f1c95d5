#include "core/hydraulics/air_clearing.hpp"

#include <algorithm>
#include <cmath>

namespace sumpwright::hydraulics
{

units::Velocity airClearingVelocity(units::Length bore, units::Angle slope)
{
    const double sine = std::clamp(std::sin(units::inRadians(slope)), 0.0, 1.0);
    return units::metresPerSecond(std::sqrt(units::standardGravity * units::inMetres(bore)) *
                                  (0.25 * std::sqrt(sine) + 0.825));
}

} // namespace sumpwright::hydraulics

#include "core/hydraulics/standpipe.hpp"

#include <cmath>

#include "core/base/ensure.hpp"

namespace sumpwright::hydraulics
{

units::Flow standpipeCapacity(units::Length bore, double filling)
{
    base::ensure(bore > units::Length() && filling > 0.0 && filling <= mostStandpipeFilling,
                 "a standpipe has a bore, of which water fills a third at most");
    constexpr double roughness = 0.25; // mm
    const double litresPerSecond =
        2.5e-4 * std::pow(roughness, -0.167) * std::pow(units::inMillimetres(bore), 2.667) * std::pow(filling, 1.667);
    return units::litresPerHour(3600.0 * litresPerSecond);
}

} // namespace sumpwright::hydraulics

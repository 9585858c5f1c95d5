#include "core/nature/air.hpp"

#include <cmath>

namespace sumpwright::nature
{

base::Outcome<units::Pressure> airPressureAt(units::Length altitude)
{
    if (!(altitude >= lowestAltitude && altitude <= highestAltitude))
        return base::Refusal{"nature.altitude-out-of-range", "altitude",
                             "the standard atmosphere is not used at this altitude", "-500 to 5000 m above sea level"};
    constexpr double seaLevelPressure = 101325.0;  // Pa
    constexpr double seaLevelTemperature = 288.15; // K
    constexpr double lapse = 0.0065;               // K/m
    constexpr double gasConstant = 287.05287;      // J/(kg K), dry air
    constexpr double exponent = units::standardGravity / (gasConstant * lapse);
    return units::pascals(seaLevelPressure *
                          std::pow(1.0 - lapse * units::inMetres(altitude) / seaLevelTemperature, exponent));
}

} // namespace sumpwright::nature

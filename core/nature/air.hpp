// Air pressure of the standard atmosphere by altitude: the one pressure a site is computed with.
// Altitude is geopotential metres above sea level (against a surveyed height 2 m in 3 km, 0.003 % of the pressure).
// Valid -500 to 5 000 m. Source: ISO 2533:1975, troposphere. Key: iso-2533.
#pragma once

#include "core/base/outcome.hpp"
#include "core/units/measures.hpp"

namespace sumpwright::nature
{

constexpr units::Length lowestAltitude = units::metres(-500.0);
constexpr units::Length highestAltitude = units::metres(5000.0);

// Refusal: "nature.altitude-out-of-range", place "altitude".
base::Outcome<units::Pressure> airPressureAt(units::Length altitude);

} // namespace sumpwright::nature

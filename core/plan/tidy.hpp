// tidy: rounds what an edit computed to whole nanometres and billionths of a degree, so that 0.1 m + 0.2 m is
// written "0.3 m"; minus zero becomes zero. Not for what the person typed or a file holds.
#pragma once

#include <cmath>

#include "core/plan/point.hpp"

namespace sumpwright::plan
{

inline double tidyRatio(double value) { return std::round(value * 1e9) / 1e9 + 0.0; }
inline units::Length tidy(units::Length value) { return units::metres(tidyRatio(units::inMetres(value))); }
inline units::Elevation tidy(units::Elevation value)
{
    return units::elevationMetres(tidyRatio(units::inMetres(value)));
}
inline Point tidy(Point place) { return {tidy(place.x), tidy(place.y)}; }
// Into (-180, 180] degrees.
inline units::Angle tidy(units::Angle value)
{
    const double turns = std::remainder(units::inDegrees(value), 360.0);
    const double rounded = tidyRatio(turns);
    return units::degrees(rounded <= -180.0 ? 180.0 : rounded);
}

} // namespace sumpwright::plan

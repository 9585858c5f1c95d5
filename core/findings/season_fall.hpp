// How much less than today a pump or an outlet may give when pipes are fouled and the water is at its coldest.
#pragma once

#include "core/units/measures.hpp"

namespace sumpwright::findings
{

constexpr double largestSeasonFall = 0.15; // of today's flow; common practice, no source

inline bool fallsTooFar(units::Flow today, units::Flow then)
{
    return today > units::Flow() && then < (1.0 - largestSeasonFall) * today;
}

} // namespace sumpwright::findings

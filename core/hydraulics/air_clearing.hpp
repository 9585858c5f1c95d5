// How fast water must run to carry air out of a pipe that falls behind a high point, running full.
// V = sqrt(g D) (0.25 sqrt(sin slope) + 0.825); slope from level (0) to upright (pi / 2). An envelope of experiments:
// on the safe side. Source, from memory: wisner-1975.
#pragma once

#include "core/units/measures.hpp"

namespace sumpwright::hydraulics
{

units::Velocity airClearingVelocity(units::Length bore, units::Angle slope);

} // namespace sumpwright::hydraulics

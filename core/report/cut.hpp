// Cut: how far a vessel reaches along an upright sheet that follows the pipes through it. Metres in plan.
#pragma once

#include <vector>

#include "core/plan/vessel.hpp"

namespace sumpwright::report
{

// From a place inside the outline in a direction to where it leaves the outline; 0 where it does not lie inside.
units::Length reachAlong(const std::vector<plan::Point>& outline, plan::Point from, plan::Point direction);

// Along a line that starts inside the outline: its length until it first leaves; for one that never leaves, straight on
// from its end. A line without length goes on in the direction `otherwise`.
units::Length reachAlongLine(const std::vector<plan::Point>& outline, const std::vector<plan::Point>& line,
                             plan::Point otherwise);

} // namespace sumpwright::report

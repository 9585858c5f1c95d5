// The level at which several ways out of one body of water take a flow together, and what each of them takes: lips,
// outlets through the wall, pipes that lead on from a tee.
//
// Each way tells the level it needs for a flow from 0 up, never falling with the flow; it may jump where a pipe begins
// to run full. Flows sum to the total to rounding. Continuity; key: plain-geometry.
#pragma once

#include <cstddef>
#include <functional>
#include <vector>

#include "core/units/measures.hpp"

namespace sumpwright::hydraulics
{

using LevelNeeded = std::function<units::Elevation(std::size_t way, units::Flow flow)>;

struct SharedLevel {
    units::Elevation level;
    std::vector<units::Flow> flows; // by way
};

// Where a rising function first passes zero between two flows; the end where it does not. Found to rounding.
units::Flow risesThrough(const std::function<units::Flow(units::Flow)>& function, units::Flow low, units::Flow high);

// Promises asked of the caller: one way or more, total from 0 up.
SharedLevel shareOut(std::size_t ways, units::Flow total, const LevelNeeded& needed);
// What one way takes at a level, at most `most`.
units::Flow takenAt(std::size_t way, units::Elevation level, units::Flow most, const LevelNeeded& needed);

} // namespace sumpwright::hydraulics

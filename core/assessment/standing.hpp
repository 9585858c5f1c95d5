// The level at which water stands in a vessel that passes on what it receives, and what each of its outlets takes.
// Valid for lips of 10 to 300 mm bore; where a bore is not known the head over the lip counts as 0, which is a finding.
// A vessel whose lips cannot carry the flow stands at its rim and spills the rest. Keys: overflow-blend.
#pragma once

#include <vector>

#include "core/assessment/basin.hpp"
#include "core/assessment/stage.hpp"
#include "core/assessment/states.hpp"
#include "core/assessment/water_result.hpp"

namespace sumpwright::assessment
{

struct Standing {
    units::Elevation level;
    HeldBy heldBy = HeldBy::lip;
    units::Length overLip; // 0 in a drained bed

    friend bool operator==(const Standing&, const Standing&) = default;
};

struct Throughflow {
    Stage<Standing> standing;
    std::vector<Stage<units::Flow>> outlets; // as the basin's outlets
};

// runningMost: beds with a drain level stand there; otherwise the lips hold the water.
Throughflow throughflowOf(const Basin& basin, units::Flow inflow, RunningState state);

} // namespace sumpwright::assessment

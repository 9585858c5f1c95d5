// The level at which water stands in a vessel that passes on what it receives, and what each of its outlets takes.
// All outlets share one level: a lip by the head over it, an outlet through the wall and every run that leads water on
// by what the run needs (hydraulics/gravity_run.hpp). Valid for lips of 10 to 300 mm bore; where a bore is not known
// the head counts as 0, which is a finding. A vessel whose outlets cannot carry the flow stands at its rim and spills
// the rest. Keys: overflow-blend, open-channel.
#pragma once

#include <functional>
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
    units::Length overLip; // over the lip or invert of the lowest outlet; 0 in a drained bed

    friend bool operator==(const Standing&, const Standing&) = default;
};

struct Throughflow {
    Stage<Standing> standing;
    std::vector<Stage<units::Flow>> outlets; // as the basin's outlets
};

// The level a run that leads on from this outlet needs; below the outlet where it does not hold the water back.
using RunNeeds = std::function<units::Elevation(const BasinOutlet&, units::Flow)>;
// Free outfall behind every outlet.
units::Elevation needsNothing(const BasinOutlet& outlet, units::Flow flow);

// runningMost: beds with a drain level stand there; otherwise the outlets hold the water.
Throughflow throughflowOf(const Basin& basin, units::Flow inflow, RunningState state,
                          const RunNeeds& needs = needsNothing);

} // namespace sumpwright::assessment

// The hydraulic grade at both ends of a pressure run: the level water would stand at in an open pipe there.
// At a mouth the level of the water over it, or of the mouth where that is higher; at a tee the grade there; at a pump
// the level of its vessel and its head. Velocity heads are not taken off.
#pragma once

#include <optional>

#include "core/assessment/assessment.hpp"

namespace sumpwright::assessment
{

struct RunGrade {
    units::Elevation start;
    units::Elevation end;
};

// None for gravity runs, open ends, and where a level or a flow is not computed.
std::optional<RunGrade> gradeOf(const Assessment& assessment, const plan::Run& run, RunningState state);

} // namespace sumpwright::assessment

// stopCourseOf: the course of a pump stop whose end is known.
#pragma once

#include "core/assessment/pump_stop.hpp"
#include "core/assessment/stop_course.hpp"

namespace sumpwright::assessment
{

// Of a circuit with one sump whose most-flow state is solved.
StopCourse stopCourseOf(const Pipework& pipework, const std::vector<Basin>& basins, const SolvedCircuit& solved,
                        const PumpStop& stop);

} // namespace sumpwright::assessment

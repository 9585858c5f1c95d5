// A pump as worksheets ask for it: one of the table or the points of a curve, and its speed.
#pragma once

#include <vector>

#include "core/base/outcome.hpp"
#include "core/hydraulics/pump_curve.hpp"
#include "core/worksheets/inputs.hpp"

namespace sumpwright::worksheets
{

std::vector<InputSpec> pumpInputs(); // pump, points, speed
// Refusals: "worksheets.one-of", "worksheets.needs-one" (place "pump"), those of PumpCurve (place "points, point 2").
base::Outcome<hydraulics::PumpCurve> pumpCurveOf(const Inputs& inputs);
Note inventedPumpNote();

} // namespace sumpwright::worksheets

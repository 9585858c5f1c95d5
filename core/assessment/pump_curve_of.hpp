// The curve of a drawn pump, through its catalogue points or the person's own; of all its units together.
#pragma once

#include "core/assessment/pipework.hpp"
#include "core/base/outcome.hpp"
#include "core/hydraulics/pump_curve.hpp"

namespace sumpwright::assessment
{

// Refusals: those of hydraulics::PumpCurve::fromPoints and fromRatings; "assessment.pump-fault" where the pump has a
// fault of its own.
base::Outcome<hydraulics::PumpCurve> curveOf(const DrawnPump& pump);

} // namespace sumpwright::assessment

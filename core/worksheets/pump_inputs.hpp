// A pump as worksheets ask for it: one of the table, the points of a curve or the two numbers of a box; its speed, and
// whether two alike stand together.
#pragma once

#include <vector>

#include "core/base/outcome.hpp"
#include "core/hydraulics/pump_curve.hpp"
#include "core/worksheets/answer_draft.hpp"
#include "core/worksheets/inputs.hpp"

namespace sumpwright::worksheets
{

std::vector<InputSpec> pumpInputs(); // pump, points, shut_off_head, greatest_flow, speed, arrangement
// Refusals: "worksheets.one-of", "worksheets.needs-one" (place "pump"), "worksheets.missing-input" (one of the box's
// numbers alone), those of PumpCurve (place "points, point 2").
base::Outcome<hydraulics::PumpCurve> pumpCurveOf(const Inputs& inputs);
bool hasRatings(const Inputs& inputs);                   // the two numbers of a box, or one of them
bool isEstimated(const Inputs& inputs);                  // the curve is only a box's two numbers
void tellPump(AnswerDraft& draft, const Inputs& inputs); // working, notes and source of what was asked for
Note inventedPumpNote();
Note twoNumbersNote();

} // namespace sumpwright::worksheets

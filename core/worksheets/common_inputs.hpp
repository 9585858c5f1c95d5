// Inputs that several worksheets ask in the same words and ranges.
#pragma once

#include "core/worksheets/worksheet.hpp"

namespace sumpwright::worksheets
{

InputSpec flowInput();             // more than 0, at most 1 m3/s
InputSpec boreInput();             // 1 mm to 1 m
InputSpec lengthInput();           // 0 to 10 km
InputSpec roughnessInput();        // 0 to 10 mm, new plastic pipe by default
InputSpec waterTemperatureInput(); // 0 to 40 degC, 20 degC by default
InputSpec sumKInput();             // 0 to 10 000, 0 by default

Note transitionNote(); // the flow is between laminar and turbulent
Note roughNote();      // rougher than the Moody chart

} // namespace sumpwright::worksheets

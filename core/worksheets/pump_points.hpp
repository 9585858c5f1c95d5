// Reading a pump's points as people write them: "0 L/h: 3.2 m; 1125 L/h: 2.9 m; 4500 L/h: 0 m".
#pragma once

#include <string_view>
#include <vector>

#include "core/base/outcome.hpp"
#include "core/hydraulics/pump_curve.hpp"
#include "core/units/number_style.hpp"

namespace sumpwright::worksheets
{

// Refusals: "worksheets.bad-points" (place "point 2"), "worksheets.too-many-points" (more than 100), those of
// units::parse. Whether the points make a curve is asked of PumpCurve.
base::Outcome<std::vector<hydraulics::PumpPoint>> readPumpPoints(std::string_view text,
                                                                 const units::NumberStyle& style);

} // namespace sumpwright::worksheets

// The bar models of the side charts: pure functions from results to what is shown. No results, no rows, a sentence
// that says what is missing.
#pragma once

#include "core/assessment/assessment.hpp"
#include "ui/charts/bar_model.hpp"
#include "ui/text/display.hpp"

namespace sumpwright::ui::charts
{

// Where is the water? Volumes by kind of vessel and in the pipes, running and after pump stop; sump room left.
BarModel waterModel(const assessment::Assessment& results, const text::DisplaySettings& display);
// Where does the head go? Lift and, run by run, friction and fittings along the worst path, least-flow state.
BarModel headModel(const assessment::Assessment& results, const text::DisplaySettings& display);
// What does the floor carry? Pressure under each footprint, every vessel to its rim and beds flooded; limit by choice.
BarModel floorModel(const assessment::Assessment& results, const text::DisplaySettings& display);

} // namespace sumpwright::ui::charts

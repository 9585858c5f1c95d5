// The site sketch under the plan.
#pragma once

#include <string>

#include "core/plan/edits/edit.hpp"

namespace sumpwright::plan
{

Edit setUnderlay(Underlay underlay); // puts it there, or replaces it
Edit removeUnderlay();
// Two clicked places and the true distance between them set the scale; `first` stays where it is.
Edit scaleUnderlay(Point first, Point second, units::Length trueDistance);
Edit moveUnderlay(Point corner);
Edit turnUnderlay(units::Angle turn);
Edit setUnderlayOpacity(double opacity); // (0, 1]

} // namespace sumpwright::plan

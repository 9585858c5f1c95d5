// Moving, turning, raising. Pumps standing in a vessel and the ends of attached runs follow. A run goes along whole
// when it is named or when both its ends move; otherwise its end is carried along, a vertical leg at that end stays
// vertical, and a raised end is taken up by the first vertical leg. An end attached to what stays, stays.
#pragma once

#include <vector>

#include "core/plan/edits/edit.hpp"

namespace sumpwright::plan
{

// Elements of every kind, in plan. The underlay is moved by its own edit.
Edit moveElements(std::vector<base::Id> elements, Point by);
// Puts one element's place (see anchorOf) at `place`.
Edit moveElementTo(base::Id element, Point place);
Edit turnElements(std::vector<base::Id> elements, Point about, units::Angle by);
Edit raiseElements(std::vector<base::Id> elements, units::Length by); // up positive

// The turn of vessels about their own centres.
Edit setTurn(std::vector<base::Id> vessels, units::Angle turn);
// The underside of vessels; ports, pumps, running level and attached runs go with them.
Edit setBaseLevel(std::vector<base::Id> vessels, units::Elevation level);
Edit setTeeLevel(std::vector<base::Id> tees, units::Elevation level);

// The place that stands for an element: centre of a vessel, pump, tee or post, first vertex of a run, first end of
// wall, door and dimension line, place of a note.
Point anchorOf(const Plan& plan, base::Id element);

} // namespace sumpwright::plan

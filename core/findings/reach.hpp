// Can a hand reach a place from somewhere a person can stand? Standing places lie on the floor, at least 0.2 m from
// every vessel, wall and post; the limit is that of the site. Nothing is told until the floor is drawn.
#pragma once

#include <vector>

#include "core/findings/rules.hpp"

namespace sumpwright::findings
{

// Distance from the place to the nearest standing place; found in steps of 50 mm, the limit itself exactly.
bool withinReach(const Situation& situation, plan::Point place, units::Length reach);
// Adds the rule's warning when the place is out of reach.
void tellIfFar(const Situation& situation, const Rule& rule, plan::Point place, std::vector<base::Id> elements,
               std::vector<Finding>& findings);

} // namespace sumpwright::findings

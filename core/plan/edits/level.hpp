// Setting any one level of the plan, by what it belongs to: what is dragged or typed in elevation and section.
#pragma once

#include "core/plan/edits/edit.hpp"
#include "core/plan/level_ref.hpp"

namespace sumpwright::plan
{

// The same edit, with the same name, that sets this level elsewhere: the base takes the whole vessel along, the rim
// changes the height of the wall, ends of runs follow ports, pumps and tees. Refused for a level the plan has not.
Edit setLevel(const LevelRef& level, units::Elevation to);

} // namespace sumpwright::plan

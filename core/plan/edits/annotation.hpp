// Notes and dimension lines after they are placed.
#pragma once

#include <string>
#include <vector>

#include "core/plan/edits/edit.hpp"

namespace sumpwright::plan
{

Edit setNoteText(base::Id note, std::string text);
Edit setDimensionEnds(base::Id dimension, Point from, Point to);
Edit setDimensionOffset(std::vector<base::Id> dimensions, units::Length offset);

} // namespace sumpwright::plan

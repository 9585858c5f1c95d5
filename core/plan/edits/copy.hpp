// Copies with fresh ids and tags. Pumps go with their vessel. A run is copied only when each end is open or leads to
// something that is copied too; a tee only with all its runs. Runs left behind are told by runsLeftBehind.
#pragma once

#include <vector>

#include "core/plan/edits/edit.hpp"

namespace sumpwright::plan
{

// The copies take ids from plan.nextId upwards.
Edit duplicate(std::vector<base::Id> elements, Point by);
// columns x rows, the original counted as the first; 2 ... 400 in all.
Edit arrayCopy(std::vector<base::Id> elements, int columns, int rows, Point columnStep, Point rowStep);

std::vector<base::Id> runsLeftBehind(const Plan& plan, const std::vector<base::Id>& elements);

} // namespace sumpwright::plan

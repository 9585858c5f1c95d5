// A steady fall along a gravity run, and the whole run set by its invert.
#pragma once

#include "core/plan/edits/edit.hpp"
#include "core/plan/edits/target.hpp"

namespace sumpwright::plan
{

// Levels of every vertex from the kept end at `fall` (m/m, falling from `from` to `to`); vertical legs keep their
// drop. Where the far end is attached at another level, the last vertical leg takes up the difference, or a new one
// is made there; a run that would have to climb to it is refused.
Edit setFall(std::vector<base::Id> runs, units::Slope fall, RunSide kept);
// Raises or lowers an open-ended run as a whole so that the invert at one side has this level; attached ends stay.
Edit setInvert(base::Id run, RunSide side, units::Elevation invert, units::Length bore);

} // namespace sumpwright::plan

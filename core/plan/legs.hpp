// Where the legs or piers of a vessel's stand are: spread over the corners first, then along the longer sides, their
// square pads inside the outline; of a round vessel around its rim. Common practice, no source.
#pragma once

#include <vector>

#include "core/plan/vessel.hpp"

namespace sumpwright::plan
{

// From the vessel's centre, in its own frame before turning; empty for one that stands flat.
std::vector<Point> legOffsets(const Vessel& vessel);

} // namespace sumpwright::plan

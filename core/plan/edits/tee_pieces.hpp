// One run made from the two that meet in a tee. (Splitting is its opposite: splitRun in tees.hpp.)
#pragma once

#include "core/plan/run_ends.hpp"

namespace sumpwright::plan
{

// The longer keeps id, tag and direction; ends, vertices, valves and undrawn fittings of both. The tee's own vertex
// stays where the pipe bends there, or where the tee took the place of a vertex.
Run joinedRun(const Tee& tee, const Run& a, RunSide aSide, const Run& b, RunSide bSide);

} // namespace sumpwright::plan

// A gravity run as hydraulics follows the water through it: inverts from the drawn centre line, fittings where they
// sit.
#pragma once

#include "core/assessment/pipework.hpp"
#include "core/hydraulics/gravity_run.hpp"

namespace sumpwright::assessment
{

// `forward`: the water runs as drawn. Of a run without a fault; fittings along the run without a place count at its
// start, the safe side for the level upstream.
hydraulics::GravityPipe gravityPipeOf(const DrawnRun& run, bool forward);

} // namespace sumpwright::assessment

// PipeCrossing: two runs that want the same place: their centre lines come nearer than both outside radii together
// and a small clearance. Near a port, pump or tee that both meet they are joined, which is no crossing: within three
// times what they need from it nothing counts.
#pragma once

#include <vector>

#include "core/space/pipe_body.hpp"

namespace sumpwright::space
{

struct PipeCrossing {
    base::Id first; // the smaller id
    base::Id second;
    units::Length between; // centre line to centre line, in space
    units::Length needed;  // both outside radii, without the clearance
    Spot at;               // on the first, where they come nearest
};

// For every run that comes too near another the pair that is worst, told once; by ids. A run is not held against
// itself.
std::vector<PipeCrossing> crossingsOf(const std::vector<PipeBody>& bodies, units::Length clearance);

} // namespace sumpwright::space

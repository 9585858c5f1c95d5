// HighPoint: where a run rises and then falls again by more than 20 mm, so that air stays above the water.
#pragma once

#include <vector>

#include "core/space/pipe_body.hpp"

namespace sumpwright::space
{

struct HighPoint {
    std::size_t vertex = 0; // index of the first vertex at the top
    Spot top;
    units::Length height;    // over the lower of the two ways on, as far as they fall without rising
    units::Angle steepest;   // of the legs that fall behind it, from level (0) to upright (pi / 2)
    bool fallsToEnd = false; // the water's way falls from here to the run's end
};

// In the order the water meets them. `forward`: it runs as the run is drawn.
std::vector<HighPoint> highPointsOf(const PipeBody& body, bool forward);

} // namespace sumpwright::space

// The water of a gravity run: where it stands along the run, how full it is, how fast, and what it could carry.
//
// Depth 0 to bore over the invert; the grade is the level water would stand at in an open pipe, above the soffit where
// the run is full under pressure. Where no water holds it back the depth is that of uniform flow (Manning), otherwise
// that of the energy line followed upstream; an estimate. Keys: open-channel, manning-plastic, en-12056-2.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/hydraulics/gravity_run.hpp"
#include "core/units/measures.hpp"

namespace sumpwright::assessment
{

// The stretch that carries least: the one with the smallest fall of those that slope the way the water runs.
struct FlattestStretch {
    std::size_t stretch = 0; // index into the run's stretches as drawn
    units::Slope fall;       // above 0
    double manningN = 0.0;
    units::Flow fullFlow;               // that fills the bore in uniform flow
    std::optional<units::Length> depth; // of uniform flow; absent: more comes than the bore takes
    friend bool operator==(const FlattestStretch&, const FlattestStretch&) = default;
};

struct OpenFlow {
    std::vector<hydraulics::ReachWater> stretches; // as drawn: start and end are those of the drawing
    units::Elevation levelNeeded;                  // of still water where the run begins
    double fullest = 0.0;                          // greatest depth / bore; 1: full
    bool surcharged = false; // full, and the grade above the soffit, where its own end is not under water
    bool backedUp = false;   // its mouth in a vessel is under water
    std::optional<units::Velocity> slowest;  // least mean velocity; absent: no flow
    std::optional<FlattestStretch> flattest; // absent: no stretch slopes the way the water runs
    friend bool operator==(const OpenFlow&, const OpenFlow&) = default;
};

} // namespace sumpwright::assessment

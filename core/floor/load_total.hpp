// What all vessels together put on the floor, and how it compares with a live load. Masses and their footprints in,
// N down positive and Pa on the floor out; never a verdict. Footprints above 0. Keys: cgpm-1901, floor-mass-model.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/units/measures.hpp"

namespace sumpwright::floor
{

struct StandingMass {
    units::Mass mass;
    units::Area footprint;
};

struct LoadTotal {
    units::Mass mass;
    units::Force weight;
    units::GroundPressure worst; // under one footprint, spread evenly
    std::size_t worstAt = 0;     // index of that mass
    std::optional<units::GroundPressure> meanOverFloor;
};

// `floorArea` 0: not known, no mean.
LoadTotal totalLoad(const std::vector<StandingMass>& masses, units::Area floorArea);

struct LiveLoadRatios {
    double worst = 0.0;         // pressure under the worst footprint over the live load
    std::optional<double> mean; // mean over the floor over the live load
    units::Length waterDepth;   // of water that alone weighs as much as the live load
};

// The live load above 0: a promise of the caller.
LiveLoadRatios compareWithLiveLoad(units::GroundPressure worst, const std::optional<units::GroundPressure>& mean,
                                   units::GroundPressure liveLoad);

} // namespace sumpwright::floor

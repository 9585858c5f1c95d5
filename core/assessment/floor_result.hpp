// What stands on the floor: masses, forces and pressures in load case LC2 (all beds flooded, water conserved) and
// LC4 (every vessel to its rim, the headline). kN down positive; the slab itself is not counted. All are estimates
// from the sizes and densities listed; whether a floor may carry them is never said. Sources: en-1991-1-1.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "core/assessment/stage.hpp"
#include "core/assessment/states.hpp"
#include "core/units/measures.hpp"

namespace sumpwright::assessment
{

enum class LoadCase { bedsFlooded, toRim };
inline constexpr std::array allLoadCases{LoadCase::bedsFlooded, LoadCase::toRim};

// Where a number comes from; shown with it.
enum class Trust { measured, catalogue, assumed };

struct Load {
    units::Mass water;  // free water, also between the grains
    units::Mass medium; // grains with the water in and on them
    units::Mass tare;   // the empty vessel
    units::Mass stand;
    units::Mass total;
    units::Force weight;
    units::GroundPressure underFootprint; // spread evenly over the vessel's own outline
    std::optional<units::Force> perLeg;   // shared evenly: real legs do not, see the caution
    std::optional<units::GroundPressure> underPad;

    friend bool operator==(const Load&, const Load&) = default;
};

struct VesselLoad {
    base::Id id;
    std::array<Stage<Load>, 2> load; // by load case
    const Stage<Load>& in(LoadCase which) const { return load[static_cast<std::size_t>(which)]; }
    units::Area footprint;
    Trust tareFrom = Trust::assumed;
    std::optional<Trust> mediumFrom; // absent: no medium
    std::optional<Trust> standFrom;  // absent: stands flat

    friend bool operator==(const VesselLoad&, const VesselLoad&) = default;
};

struct FloorTotal {
    units::Mass mass;
    units::Force weight;
    std::optional<units::GroundPressure> meanOverFloor; // absent until the floor is drawn
    units::GroundPressure worstFootprint;
    base::Id worstVessel;

    friend bool operator==(const FloorTotal&, const FloorTotal&) = default;
};

// Comparison with what a code lets an ordinary floor of the chosen use carry; a ratio, never a verdict.
struct LiveLoadComparison {
    std::string useId;
    std::string use;
    std::string code;
    std::string source;
    units::GroundPressure liveLoad;
    double worstFootprintRatio = 0.0; // LC4, worst footprint over live load
    std::optional<double> meanRatio;  // LC4, mean over the floor over live load
    units::Length waterDepth;         // that alone weighs as much as the live load

    friend bool operator==(const LiveLoadComparison&, const LiveLoadComparison&) = default;
};

struct FloorResult {
    std::vector<VesselLoad> vessels; // by id
    std::array<Stage<FloorTotal>, 2> total;
    const Stage<FloorTotal>& in(LoadCase which) const { return total[static_cast<std::size_t>(which)]; }
    std::optional<LiveLoadComparison> comparison; // absent until a use is chosen

    friend bool operator==(const FloorResult&, const FloorResult&) = default;
};

} // namespace sumpwright::assessment

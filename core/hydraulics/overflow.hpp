// Water leaving over the lip of an upturned pipe: level over the lip, capacity, and how noisily the pipe runs.
// Levels are heights of the water surface above the lip, up positive. Two answers: the predicted level (weir blended
// into drowned lip, Cd 0.62 and Co 0.60) and the design capacity of EN 12056-3 for every "will it overflow" question.
// Valid: bore 10 to 300 mm, level up to 2 bores; the pipe below must be able to carry the flow (own check).
// Sources: EN 12056-3:2000 outlets, from memory; Hills 1983 by way of process-engineering notes for the Froude limits;
// Cd and Co are our own choice. Keys: en-12056-3, hills-1983, overflow-blend.
#pragma once

#include "core/base/outcome.hpp"
#include "core/units/measures.hpp"

namespace sumpwright::hydraulics
{

constexpr units::Length smallestOverflowBore = units::millimetres(10.0);
constexpr units::Length largestOverflowBore = units::millimetres(300.0);
constexpr double deepestOverBore = 2.0; // level over the lip / bore

struct Lip {
    units::Length bore;
    double openFraction = 1.0; // of the lip and the area, left free by a screen; above 0, at most 1
};

units::Flow weirFlow(const Lip& lip, units::Length level); // level below 0 counts as 0, here and below
units::Flow drownedFlow(const Lip& lip, units::Length level);
units::Flow overflowFlow(const Lip& lip, units::Length level); // the blend of both, below either
units::Flow overflowDesignCapacity(const Lip& lip, units::Length level);

struct OverflowLevel {
    units::Length predicted;
    units::Length design;
    bool inRange = true; // predicted level within deepestOverBore
};

// Refusals: "hydraulics.negative" (place "flow"), "hydraulics.bore-out-of-range" (place "bore"),
// "hydraulics.open-fraction-out-of-range" (place "open_fraction").
base::Outcome<OverflowLevel> overflowLevel(const Lip& lip, units::Flow flow);

// How a vertical pipe that is not under water takes the flow, by its Froude number V / sqrt(g D), V on the full bore.
enum class OverflowRegime { Quiet, Gurgling, Siphoning }; // below 0.3, 0.3 to 1, above 1

constexpr double quietFroude = 0.3;
constexpr double siphoningFroude = 1.0;

double pipeFroudeNumber(units::Flow flow, units::Length bore);
OverflowRegime overflowRegimeOf(double froudeNumber);
units::Flow flowAtFroude(double froudeNumber, units::Length bore);

} // namespace sumpwright::hydraulics

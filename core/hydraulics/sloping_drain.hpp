// A round drain laid to a fall, running partly full: Manning's flow at a depth, the depth at a flow, the fall a flow
// needs, and whether the pipe keeps itself clean. Falls are m per m of length, falling positive; depths over the
// invert; flows from 0 up, a flow below 0 counts as 0. Depth and flow are steady: long pipe, no backwater. A round pipe
// carries most (1.0757 of its full flow) at 0.938 of its bore; what lies above full flow counts as too much. Valid:
// bore and n above 0 (promises of the caller); water in smooth plastic n 0.009 to 0.011, from memory. Velocity limits
// for fish solids and the fills are common practice, no source. Sources: Manning's formula, Chow 1959; ratios to full
// agree with the US National Standard Plumbing Code 2009 App. K. Keys: chow-1959, nspc-2009, drain-defaults.
#pragma once

#include <optional>

#include "core/units/measures.hpp"

namespace sumpwright::hydraulics
{

constexpr double smoothPlasticManning = 0.009;
constexpr double fouledPlasticManning = 0.011;

units::Flow normalFlow(units::Length bore, units::Length depth, units::Slope fall, double manningN);
units::Flow fullFlow(units::Length bore, units::Slope fall, double manningN);

// The smallest depth; none when the flow is above the full-bore flow or the fall is not above zero.
std::optional<units::Length> normalDepth(units::Length bore, units::Flow flow, units::Slope fall, double manningN);

// So that the flow runs at this depth / bore (above 0, at most 1: a promise of the caller).
units::Slope fallNeeded(units::Length bore, units::Flow flow, double fill, double manningN);

// Flow over the wetted area; 0 where nothing is wetted.
units::Velocity drainVelocity(units::Flow flow, units::Length bore, units::Length depth);

// Does water with fish solids keep the pipe clean?
enum class SelfCleansing { Settles, Doubtful, Cleans }; // below the first limit, between, from the second up

constexpr units::Velocity settlingVelocity = units::metresPerSecond(0.3);
constexpr units::Velocity cleansingVelocity = units::metresPerSecond(0.5);

SelfCleansing selfCleansingAt(units::Velocity velocity);

// How full a drain runs: up to the design fill, up to the highest, above it, and with no free surface to count on.
enum class DrainFill { Designed, Ample, High, Surcharged };

constexpr double designFill = 0.5; // depth / bore
constexpr double highFill = 0.7;
constexpr double surchargedFill = 0.93;

DrainFill drainFillAt(double fill);

} // namespace sumpwright::hydraulics

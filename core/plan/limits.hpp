// Limits inside which a plan's numbers must lie: wide enough for every small system, narrow enough to catch a slip of
// a unit. Common practice, no source.
#pragma once

#include <cstddef>

#include "core/units/measures.hpp"

namespace sumpwright::plan::limits
{

inline constexpr double farthestMetres = 1000.0; // of a place from the origin, in x and in y
inline const units::Length farthest = units::metres(farthestMetres);
inline const units::Elevation lowest = units::elevationMetres(-100.0);
inline const units::Elevation highest = units::elevationMetres(100.0);
inline const units::Length leastSize = units::millimetres(10.0); // of vessels and fixtures
inline const units::Length largestSize = units::metres(100.0);
inline const units::Length thinnestWall = units::millimetres(0.1);
inline const units::Length leastLeg = units::millimetres(1.0);     // between two vertices of a run
inline const units::Length leastPiece = units::millimetres(10.0);  // from a tee to the run's end
inline const units::Length sameVertex = units::millimetres(1.0);   // a tee this near a vertex takes its place
inline const units::Length endTolerance = units::millimetres(0.5); // of a run's end from what it meets
inline constexpr double fastestPump = 1.5;
inline constexpr double leastOpenFraction = 0.01; // a screen leaves at least this much of a lip or outlet open
inline const units::Flow largestFlow = units::litresPerHour(1e6);
inline constexpr double largestLoss = 1e6; // K
inline constexpr std::size_t mostVertices = 1000;
inline constexpr std::size_t mostCurvePoints = 200;
inline constexpr std::size_t mostOwnParts = 20'000;
inline constexpr std::size_t longestPartName = 80; // bytes
inline constexpr std::size_t longestTag = 40;      // bytes
inline constexpr std::size_t longestText = 10'000; // bytes
inline constexpr int mostCopies = 400;

} // namespace sumpwright::plan::limits

// How much a vertical pipe, vented at its head, carries as a film down its wall: the flow it takes in by itself.
// A standpipe below an overflow that gets more runs full in gushes and draws air. Flow L/s from the bore in mm:
// 2.5e-4 kb^-0.167 di^2.667 f^1.667 with the wall's roughness kb 0.25 mm and the filling degree f.
// Valid: filling degree 0.20 to 0.33; bores 50 to 150 mm, below as an estimate.
// Source: Wyly and Eaton's formula as in EN 12056-3, from memory. Key: en-12056-3.
#pragma once

#include "core/units/measures.hpp"

namespace sumpwright::hydraulics
{

constexpr double leastStandpipeFilling = 0.20;
constexpr double mostStandpipeFilling = 0.33;
constexpr units::Length smallestListedStandpipe = units::millimetres(50.0);

// Bore above 0, filling above 0 and at most mostStandpipeFilling: promises of the caller.
units::Flow standpipeCapacity(units::Length bore, double filling = mostStandpipeFilling);

} // namespace sumpwright::hydraulics

// Outlines of vessels in plan and the distances between them, in metres. Round vessels are polygons of 48 sides:
// distances to them are up to 2 mm too long per metre of radius.
#pragma once

#include <optional>
#include <vector>

#include "core/plan/fixture.hpp"
#include "core/plan/vessel.hpp"

namespace sumpwright::space
{

struct Outline {
    base::Id id;
    std::vector<plan::Point> corners; // counter-clockwise, convex
    plan::Point low;                  // of the box around it
    plan::Point high;
    units::Elevation base;
    units::Elevation top;
};

Outline footprintOf(const plan::Vessel& vessel);
// A wall with its thickness, a post, or a door's opening; a power point is a single corner.
Outline footprintOf(const plan::Fixture& fixture);

bool contains(const Outline& outline, plan::Point place);
bool overlap(const Outline& a, const Outline& b); // by more than 1 mm
// Clear distance; 0 where they touch or overlap. Nothing when their boxes lie farther apart than `within`.
std::optional<units::Length> gapBetween(const Outline& a, const Outline& b, units::Length within);
units::Length gapTo(const Outline& outline, plan::Point place); // 0 inside

} // namespace sumpwright::space

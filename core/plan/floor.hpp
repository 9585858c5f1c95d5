// Floor: the outline on which everything stands, its level, its fall and its drain point.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/plan/point.hpp"

namespace sumpwright::plan
{

struct Floor {
    std::vector<Point> outline; // corners, counter-clockwise, not repeated; empty: not drawn yet
    units::Elevation level = units::elevationMetres(0.0); // at the origin; the datum of the plan when 0
    units::Slope fall = units::metresPerMetre(0.0);       // steepest fall, 0 or more
    units::Angle fallDirection = units::radians(0.0);     // where the water runs to
    std::optional<Point> drainPoint;
    std::optional<units::Length> clearHeight; // floor to ceiling
    std::optional<units::Length> thickness;   // of the slab, for the later load check
    std::string extra;

    friend bool operator==(const Floor&, const Floor&) = default;
};

// The floor's own level at a place, with its fall.
units::Elevation levelAt(const Floor& floor, Point place);
units::Area areaOf(const Floor& floor);
bool inside(const Floor& floor, Point place);

} // namespace sumpwright::plan

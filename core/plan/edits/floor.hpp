// The floor: outline, level, fall, drain point, clear height, thickness.
#pragma once

#include <optional>
#include <vector>

#include "core/plan/edits/edit.hpp"

namespace sumpwright::plan
{

// Corners in either direction, kept counter-clockwise; three or more, edges must not cross. Empty: no floor.
Edit setOutline(std::vector<Point> corners);
Edit setFloorLevel(units::Elevation level); // what stands on it stays where it is
Edit setFloorFall(units::Slope fall, units::Angle direction);
Edit setDrainPoint(std::optional<Point> place);
Edit setClearHeight(std::optional<units::Length> height);
Edit setFloorThickness(std::optional<units::Length> thickness);

} // namespace sumpwright::plan

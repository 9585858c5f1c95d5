// Properties of vessels; each edit sets one property of one or many.
#pragma once

#include <optional>
#include <vector>

#include "core/plan/edits/edit.hpp"

namespace sumpwright::plan
{

// Ports and pumps keep their proportion of length and width, so what sat at the wall stays at the wall.
Edit setShape(std::vector<base::Id> vessels, Shape shape);
// Dragging a corner or side: shape and centre in one step.
Edit resizeVessel(base::Id vessel, Shape shape, Point centre);
// Height of the wall from base to rim. Lips, inlets and levels stay where they are; a lip above the new rim is refused.
Edit setWallHeight(std::vector<base::Id> vessels, units::Length height);
Edit setWallThickness(std::vector<base::Id> vessels, units::Length thickness);
Edit setVesselKind(std::vector<base::Id> vessels, VesselKind kind);
Edit setMedium(std::vector<base::Id> vessels, std::optional<Medium> medium);
Edit setStand(std::vector<base::Id> vessels, std::optional<Stand> stand);
Edit setMeasuredTare(std::vector<base::Id> vessels, std::optional<units::Mass> tare);
// Sumps only: the level while running with every bed at its drain level.
Edit setRunningLevel(std::vector<base::Id> sumps, std::optional<units::Elevation> level);

} // namespace sumpwright::plan

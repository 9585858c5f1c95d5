// Placing new elements. The new element gets the id plan.nextId had before the edit, and a free tag of its kind:
// T1 fish tank, S1 sump, B1 bed, ST1 settler, P1 pump, W1 wall, D1 door, PS1 post, PP1 power point.
#pragma once

#include <optional>
#include <string>

#include "core/plan/edits/edit.hpp"

namespace sumpwright::plan
{

struct VesselWish {
    VesselKind kind = VesselKind::fishTank;
    Point centre;
    units::Angle turn = units::radians(0.0);
    std::optional<Shape> shape;                // absent: usual for the kind
    std::optional<units::Length> wallHeight;   // absent: usual for the kind
    std::optional<units::Elevation> baseLevel; // absent: the floor there, beds on legs above it
};
// A vessel with ports, levels, stand and medium usual for its kind (common practice, no source); what it would be
// is told by usualVessel, with ids and tag still empty.
Edit placeVessel(const VesselWish& wish);
Vessel usualVessel(const Plan& plan, const VesselWish& wish);

// A pump at a place inside a vessel; its outlet 0.25 m above the vessel's inside bottom.
Edit placePump(base::Id vessel, Point place, std::string modelId);
// Wall and door: both ends; post and power point: `to` is not used.
Edit placeFixture(FixtureKind kind, Point from, Point to);
Edit placeNote(Point at, std::string text);
Edit placeDimension(Point from, Point to, units::Length offset);

} // namespace sumpwright::plan

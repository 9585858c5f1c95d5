// LevelRef: one level of the plan that the person sets, named by what it belongs to. Levels are absolute elevations,
// metres above datum, up positive. A reference to what the plan does not have has no level and no place.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/plan/plan.hpp"

namespace sumpwright::plan
{

enum class LevelKind {
    base,       // underside of a vessel; moves the whole vessel
    rim,        // by the height of its wall
    running,    // sump: the level while running
    lip,        // overflow or standpipe
    inlet,      // mouth
    sideOutlet, // centre line of the bore
    drain,      // of a lip with a bell siphon
    vent,       // of an inlet
    pumpOutlet, // centre line
    tee,        // centre line
    vertex,     // centre line of a run that is not held there
};

struct LevelRef {
    LevelKind kind = LevelKind::base;
    base::Id element;       // vessel, pump, tee or run
    base::Id port{};        // lip, inlet, side outlet, drain and vent level
    std::size_t vertex = 0; // of a run

    friend bool operator==(const LevelRef&, const LevelRef&) = default;
};

// Whether the vertex at this end is held by the port, pump or tee it meets: its level is set there.
bool isHeld(const Run& run, std::size_t vertex);

// All levels of one element that can be set now, a vessel's from its base up to its rim.
std::vector<LevelRef> levelsOf(const Plan& plan, base::Id element);
std::optional<units::Elevation> levelOf(const Plan& plan, const LevelRef& level);
// Where it lies in plan: of base, rim and running level the vessel's centre.
std::optional<Point> placeOf(const Plan& plan, const LevelRef& level);

} // namespace sumpwright::plan

// Basin: a vessel as the water sees it: how much it holds at which level, where water leaves, where it comes in.
// Volumes of free water; a medium up to its depth leaves only its typical porosity (all pores count; what grains hold
// back after draining is not subtracted, on the safe side for the sump's lowest level).
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "core/assessment/pipework.hpp"
#include "core/assessment/stage.hpp"
#include "core/catalogue/catalogue.hpp"
#include "core/plan/vessel.hpp"
#include "core/water/vessel_volume.hpp"

namespace sumpwright::assessment
{

// A lip, or an outlet through the wall.
struct BasinOutlet {
    base::Id port;
    bool side = false;
    units::Elevation lip;      // lip: its level; outlet through the wall: its own invert
    units::Length bore;        // 0: not known
    double openFraction = 1.0; // that a screen leaves free
    units::Elevation holds;    // level at which the water begins to leave: the lip, or a higher invert of the run
    std::optional<units::Elevation> drainLevel;
    std::optional<std::size_t> run; // index of the gravity run that leads it on
    bool runsForward = true;        // that run is drawn away from here

    friend bool operator==(const BasinOutlet&, const BasinOutlet&) = default;
};

struct BasinInlet {
    base::Id port;
    units::Elevation mouth;
    std::optional<units::Elevation> ventLevel;

    friend bool operator==(const BasinInlet&, const BasinInlet&) = default;
};

struct Basin {
    base::Id id;
    plan::VesselKind kind = plan::VesselKind::fishTank;
    units::Area plan;
    std::vector<water::PorousLayer> layers;
    units::Elevation bottom; // inside
    units::Elevation rim;
    std::vector<BasinOutlet> outlets; // by the level they hold, lowest first
    std::vector<BasinInlet> inlets;
    std::optional<units::Elevation> entry; // sump: the level the person entered
    std::optional<Reason> fault;           // its volume cannot be computed

    bool isSump() const { return kind == plan::VesselKind::sump; }
    friend bool operator==(const Basin& a, const Basin& b);
};

water::UprightVessel shapeOf(const Basin& basin); // of one without a fault
units::Volume volumeAt(const Basin& basin, units::Elevation level);
units::Elevation levelOf(const Basin& basin, units::Volume volume); // below its bottom counts as empty

std::vector<Basin> basinsOf(const plan::Table<plan::Vessel>& vessels, const Pipework& pipework,
                            const catalogue::Catalogue& catalogue);
// Index by id; the vector's size when there is none.
std::size_t indexOf(const std::vector<Basin>& basins, base::Id id);

} // namespace sumpwright::assessment

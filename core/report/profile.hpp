// Profile: what a vessel, with its ports and its water, looks like from the side; for the elevation and for the section
// along the water's path. Horizontal places are metres along the drawing, to the right; levels metres above datum.
// Water levels are those of the results given, whatever plan these belong to; none where they are not known.
#pragma once

#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

#include "core/assessment/assessment.hpp"
#include "core/plan/plan.hpp"

namespace sumpwright::report
{

struct WaterLevels {
    std::optional<units::Elevation> least; // running, least flow
    std::optional<units::Elevation> most;  // running, most flow
    std::optional<units::Elevation> stopped;
    std::optional<units::Length> freeBoard; // while running, the smaller of the two; below 0: over the rim

    friend bool operator==(const WaterLevels&, const WaterLevels&) = default;
};
WaterLevels waterLevelsOf(const assessment::Assessment* results, base::Id vessel);

struct PortProfile {
    base::Id id;
    std::string tag;
    plan::PortKind kind = plan::PortKind::inlet;
    units::Length along;
    units::Elevation level;
    units::Length bore; // of the port, else of the run that meets it; 0: not known
    std::optional<units::Elevation> drainLevel;
    std::optional<units::Elevation> ventLevel;

    friend bool operator==(const PortProfile&, const PortProfile&) = default;
};

struct VesselProfile {
    base::Id id;
    std::string tag;
    plan::VesselKind kind = plan::VesselKind::fishTank;
    bool caged = false;
    units::Length left; // outside
    units::Length right;
    units::Length wall;
    units::Elevation base; // underside
    units::Elevation bottom;
    units::Elevation rim;
    units::Elevation floor; // under its centre
    std::optional<units::Elevation> mediumTop;
    std::optional<plan::StandKind> stand;
    std::vector<units::Length> legs; // centres
    units::Length padSide;
    std::vector<PortProfile> ports;
    WaterLevels water;

    friend bool operator==(const VesselProfile&, const VesselProfile&) = default;
};
struct ProfilePoint {
    units::Length along;
    units::Elevation level;
    friend bool operator==(const ProfilePoint&, const ProfilePoint&) = default;
};

struct PipeSize {
    units::Length outside;
    units::Length bore;
    friend bool operator==(const PipeSize&, const PipeSize&) = default;
};
// Sizes by pipe, each looked up once. Of a pipe the catalogue does not have: 32 mm outside, as the plan draws it, and
// no bore.
class PipeSizes
{
public:
    explicit PipeSizes(const catalogue::Catalogue* catalogue) : m_catalogue(catalogue) {}
    const PipeSize& of(const plan::Run& run);

private:
    const catalogue::Catalogue* m_catalogue;
    std::unordered_map<std::string, PipeSize> m_known;
};
// Of the run that meets a port, by port.
using BoresAtPorts = std::unordered_map<base::Id, units::Length>;
BoresAtPorts boresAtPorts(const plan::Plan& plan, PipeSizes& sizes);

// All but the places along the drawing.
VesselProfile profileOf(const plan::Plan& plan, const plan::Vessel& vessel, const assessment::Assessment* results,
                        const BoresAtPorts& bores);

struct PumpProfile {
    base::Id id;
    base::Id vessel;
    std::string tag;
    units::Length along;
    units::Elevation standsAt; // inside bottom of its vessel
    units::Elevation outlet;
    bool running = true;

    friend bool operator==(const PumpProfile&, const PumpProfile&) = default;
};

} // namespace sumpwright::report

// A pipe that water runs through by its own fall, part full or full: the level it needs where it begins, and the water
// along it.
//
// Inverts and levels m above datum, flow from 0 up. The energy line is followed from the end upstream: friction by
// Darcy and Weisbach on the hydraulic diameter (four times the hydraulic radius), full bore where the water fills it,
// never below critical energy. The level needed at the start is that of still water outside, with the entry loss;
// where the pipe itself does not hold the water back it is that of an outlet through a wall. A pipe is vented: falling
// water draws none after it. Steady flow; slopes from level to vertical, adverse ones too. An estimate where a
// hydraulic jump stands in the pipe (levels upstream of it are right, its place is not told). Sources: critical depth
// and gradually varied flow, open-channel textbooks; friction as EN 12056-2 annex B uses it. Keys: open-channel,
// colebrook-1939, en-12056-2.
#pragma once

#include <optional>
#include <vector>

#include "core/units/measures.hpp"

namespace sumpwright::hydraulics
{

// A straight piece, as the water runs.
struct GravityReach {
    units::Length length; // true length; at least the difference of its inverts
    units::Elevation startInvert;
    units::Elevation endInvert;
    double k = 0.0; // fittings at its start (entry, bend, valve), on the velocity of the water there
};

struct GravityPipe {
    units::Length bore;
    units::Length roughness;
    std::vector<GravityReach> reaches; // one or more
    double endK = 1.0;                 // exit into a vessel or entry into a tee, on the velocity at the end
    bool fromLip = false;              // begins at an upturned lip: where it falls away steeply only the lip holds
};

// Where the water stands in a reach: depth 0 to bore over the invert; the grade is the level of the water in an open
// pipe there, above the soffit where the reach runs full under pressure.
struct ReachWater {
    units::Length startDepth;
    units::Length endDepth;
    units::Elevation startGrade;
    units::Elevation endGrade;
    friend bool operator==(const ReachWater&, const ReachWater&) = default;
};

struct GravityWater {
    units::Elevation upstreamLevel;
    std::vector<ReachWater> reaches;
    friend bool operator==(const GravityWater&, const GravityWater&) = default;
};

// `tail`: the water level at the end; none, or below the end: a free outfall.
units::Elevation levelNeeded(const GravityPipe& pipe, units::Flow flow, std::optional<units::Elevation> tail,
                             units::KinematicViscosity viscosity);
GravityWater waterAlong(const GravityPipe& pipe, units::Flow flow, std::optional<units::Elevation> tail,
                        units::KinematicViscosity viscosity);

} // namespace sumpwright::hydraulics

// Vessel: anything that holds water - fish tank, sump, media bed, raft bed, settler - with its ports and its stand.
//
// Sizes are outside sizes; the inside is smaller by the wall thickness on every side and at the bottom. The base
// level is the underside. All levels are absolute elevations; levels of lips and rims are of the lip.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/base/id.hpp"
#include "core/plan/point.hpp"

namespace sumpwright::plan
{

enum class VesselKind { fishTank, sump, mediaBed, raftBed, settler };

struct RoundShape {
    units::Length diameter;
    friend bool operator==(const RoundShape&, const RoundShape&) = default;
};
struct RectangleShape {
    units::Length length; // along the vessel's own x
    units::Length width;  // along the vessel's own y
    friend bool operator==(const RectangleShape&, const RectangleShape&) = default;
};
// A 1 000 L tank in its cage, standing on its own pallet: 1.2 m x 1.0 m outside.
struct CagedShape {
    friend bool operator==(const CagedShape&, const CagedShape&) = default;
};
using Shape = std::variant<RoundShape, RectangleShape, CagedShape>;

enum class PortKind {
    inlet,      // water comes in; level of the mouth
    lip,        // overflow or standpipe; level of the lip
    sideOutlet, // through the wall; level of the bore's centre line
};

struct Port {
    base::Id id;
    std::string tag;
    PortKind kind = PortKind::inlet;
    Point offset; // from the vessel's centre, in the vessel's own frame before turning
    units::Elevation level = units::elevationMetres(0.0);
    std::optional<units::Length> bore;          // of the lip or mouth; absent: the bore of the run that meets it
    std::optional<units::Elevation> drainLevel; // lip with a bell siphon: the level where air enters the bell
    std::optional<units::Elevation> ventLevel;  // inlet: the level of a vent hole that breaks siphon-back
    std::optional<double> openFraction; // lip or side outlet with a screen: the part it leaves free, above 0, at most 1
    std::optional<units::Flow> targetFlow; // inlet: what it should bring in, 0 or more; absent: no wish
    std::string extra{};

    friend bool operator==(const Port&, const Port&) = default;
};

struct Medium {
    std::string mediumId;                     // catalogue
    units::Length depth = units::metres(0.3); // from the inside bottom
    std::string extra{};
    friend bool operator==(const Medium&, const Medium&) = default;
};

enum class StandKind { flat, legs, blocks };
struct Stand {
    StandKind kind = StandKind::flat;
    std::optional<units::Mass> mass;            // absent: assumed from the table of the floor room
    int legCount = 4;                           // legs or piers
    units::Length padSide = units::metres(0.1); // side of each square pad
    std::string extra{};
    friend bool operator==(const Stand&, const Stand&) = default;
};

struct Vessel {
    base::Id id;
    std::string tag;
    VesselKind kind = VesselKind::fishTank;
    Shape shape = RectangleShape{units::metres(1.0), units::metres(1.0)};
    Point centre;
    units::Angle turn = units::radians(0.0);
    units::Elevation baseLevel = units::elevationMetres(0.0);
    units::Length wallHeight = units::metres(0.5); // base to rim, outside
    units::Length wallThickness = units::millimetres(6.0);
    std::optional<Medium> medium;
    std::optional<Stand> stand;
    std::optional<units::Mass> measuredTare;      // absent: assumed from the size
    std::optional<units::Elevation> runningLevel; // sump only: with every bed at its drain level
    std::vector<Port> ports;
    std::string extra;

    friend bool operator==(const Vessel&, const Vessel&) = default;
};

// The smallest rectangle around the shape, before turning: length along own x, width along own y.
RectangleShape frameOf(const Shape& shape);
units::Area outsideArea(const Vessel& vessel);
units::Area insideArea(const Vessel& vessel);
units::Elevation rimLevel(const Vessel& vessel);
units::Elevation insideBottom(const Vessel& vessel);
Point placeOf(const Vessel& vessel, const Port& port);
const Port* findPort(const Vessel& vessel, base::Id port);
// The lip the water stands at: the lowest one. Null when the vessel has none.
const Port* mainLip(const Vessel& vessel);
// Corners of the outside outline in plan, counter-clockwise; a round vessel gives its polygon of 48 sides.
std::vector<Point> outlineOf(const Vessel& vessel);

} // namespace sumpwright::plan

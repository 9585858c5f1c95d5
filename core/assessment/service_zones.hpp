// Zones: what stays joined on the pressure side when every valve that can be closed is closed. Runs are cut at such
// valves; tees join pieces, and so do pumps and the ports of one vessel do not.
#pragma once

#include <map>
#include <vector>

#include "core/assessment/pipework.hpp"

namespace sumpwright::assessment
{

// The part of a run between two closed valves, or a valve and an end.
struct ZonePiece {
    std::size_t run = 0; // index in the pipework
    units::Length from;  // along the run
    units::Length to;
};

// Where a zone ends: at a closed valve, or at what its pieces meet.
struct ZoneValve {
    base::Id valve;
    units::Elevation level;
};
struct ZoneEnd {
    DrawnEnd end; // a port or a pump
    std::size_t run = 0;
};

struct Zone {
    std::vector<ZonePiece> pieces;
    std::vector<ZoneValve> valves;
    std::vector<ZoneEnd> ends;
    bool hasUnion = false; // on one of its runs; unions have no place on a run, so each counts for all its pieces
};

class Zones
{
public:
    explicit Zones(const Pipework& pipework);
    const std::vector<Zone>& all() const { return m_zones; }
    // Zone of the piece at a run's end, and of the longest piece of a run; runs of the pressure side only.
    std::size_t atEnd(std::size_t run, bool atStart) const;
    std::size_t ofLongestPiece(std::size_t run) const;

private:
    std::vector<Zone> m_zones;
    std::vector<std::vector<std::size_t>> m_zoneOfPiece; // by run, its pieces from start to end
    std::vector<std::vector<ZonePiece>> m_pieces;
};

// Level of a run's bore that far along it, and the content of a part of it at and above a level.
units::Elevation levelAlong(const DrawnRun& run, units::Length along);
units::Volume contentAbove(const DrawnRun& run, units::Length from, units::Length to, units::Elevation level);

} // namespace sumpwright::assessment

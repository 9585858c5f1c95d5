// Supports: how far apart a run must be held, and how many supports that makes where it hangs free.
// A port in a vessel's wall, a pump and the floor hold a run; a tee does not, but its neighbour is taken to be held
// within half a distance. Upright legs need no support here, and count as held at their foot where that stands on the
// floor. Sources: per row (dvs-2210-1, pvc-schedule-supports, both from memory); ten times the outside diameter for
// drainage pipe and where no row is: common practice, no source.
#pragma once

#include <string>
#include <vector>

#include "core/catalogue/catalogue.hpp"
#include "core/space/pipe_body.hpp"

namespace sumpwright::space
{

struct SupportDistance {
    units::Length most;
    std::string source; // key in the table of sources, or "common-practice"
};

// Between the rows' diameters and temperatures in a straight line, outside them the nearest.
SupportDistance supportDistanceOf(const catalogue::Pipe& pipe, units::Temperature water,
                                  const catalogue::Catalogue& catalogue);

struct SupportNeed {
    units::Length longestFree; // level length between what holds the run
    int count = 0;             // supports needed
};
SupportNeed supportNeedOf(const PipeBody& body, const plan::Floor& floor, units::Length most);

} // namespace sumpwright::space

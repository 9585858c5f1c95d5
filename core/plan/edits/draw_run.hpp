// Drawing a run and connecting its ends. A run drawn towards a pump, a lip or a side outlet, or away from an inlet, is
// turned round, so that the water is led from `from` to `to`. A port or pump takes one run; a second is refused.
#pragma once

#include <string>
#include <vector>

#include "core/plan/edits/edit.hpp"
#include "core/plan/edits/target.hpp"

namespace sumpwright::plan
{

struct RunWish {
    Service service = Service::pressure;
    std::string pipeId; // catalogue
    Target from;
    Target to;
    // As drawn, two or more; the first and last are put at the targets' own place and level. Where the drawn level
    // differs from the target's, a vertical leg joins the two.
    std::vector<Vertex> vertices;
};
// The new run gets the id plan.nextId had before the edit and the next free tag R1, R2, ...; new ports, tees and the
// shorter half of a split run take the ids after it.
Edit drawRun(const RunWish& wish);

// Leads an end that is open, or attached elsewhere, to a target. Nowhere leaves it open where it lies.
Edit connectEnd(base::Id run, RunSide side, const Target& target);
// Opens an end; a tee left with two runs joins them.
Edit detachEnd(base::Id run, RunSide side);

} // namespace sumpwright::plan

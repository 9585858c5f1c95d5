// PipeBody: a run as it stands in space: a centre line through its vertices and a pipe's outside around it.
// Levels and places as drawn; the outside is that of the catalogue row, without couplers, clips or insulation.
#pragma once

#include <array>
#include <vector>

#include "core/catalogue/catalogue.hpp"
#include "core/plan/plan.hpp"

namespace sumpwright::space
{

// A place in space.
struct Spot {
    plan::Point at;
    units::Elevation level;
    friend bool operator==(const Spot&, const Spot&) = default;
};

// What a run's end is joined to: the port, the pump or the tee; none for an open end. `owner` is the vessel of the
// port, or the one the pump stands in.
struct Joint {
    base::Id met;
    base::Id owner;
};

struct PipeBody {
    base::Id run;
    units::Length radius;    // half the outside diameter; 0 for a pipe the catalogue does not have
    std::vector<Spot> spots; // the vertices
    std::array<Joint, 2> ends;
};

PipeBody bodyOf(const plan::Run& run, const plan::Plan& plan, const catalogue::Catalogue& catalogue);
// Of every run that has a length and a pipe of the catalogue, by id.
std::vector<PipeBody> bodiesOf(const plan::Plan& plan, const catalogue::Catalogue& catalogue);

} // namespace sumpwright::space

// LiveLoad: what a code lets an ordinary floor of one use carry, for comparison only. Never a proof: a tank is a
// sustained load and codes leave heavy equipment out of these values. kPa of floor, point load in N.
// Sources per row (resources/tables/live_loads.json).
#pragma once

#include <optional>
#include <string>

#include "core/catalogue/provenance.hpp"
#include "core/units/kinds.hpp"

namespace sumpwright::catalogue
{

struct LiveLoad {
    std::string id;  // e.g. "dwelling-asce"
    std::string use; // e.g. "Dwelling, living rooms"
    std::string code;
    units::GroundPressure uniform;
    std::optional<units::Force> point;
    Provenance provenance;
};

} // namespace sumpwright::catalogue

// VesselTemplate: a bought vessel with fixed sizes, offered when one is placed. Lengths in m, masses in kg.
// Sources per row (resources/tables/vessels.json).
#pragma once

#include <string>

#include "core/catalogue/medium.hpp"
#include "core/catalogue/provenance.hpp"
#include "core/units/kinds.hpp"

namespace sumpwright::catalogue
{

struct VesselTemplate {
    std::string id; // e.g. "caged-1000"
    std::string name;
    units::Length length;
    units::Length width;
    units::Length wallHeight; // inside, floor of the vessel to its rim
    units::Volume nominalVolume;
    Spread<units::Mass> emptyMass;
    Provenance provenance;
};

} // namespace sumpwright::catalogue

// Support: how far apart the supports of a level pipe full of water may stand, by the temperature of its wall.
// Sources per row (resources/tables/supports.json). Local codes and the maker's sheet come first.
#pragma once

#include <string>
#include <vector>

#include "core/catalogue/provenance.hpp"
#include "core/units/kinds.hpp"

namespace sumpwright::catalogue
{

struct SupportSpan {
    units::Temperature temperature;
    units::Length span;
};

struct Support {
    std::string id; // e.g. "support-pvcu-32"
    std::string name;
    std::string material; // as the pipes' rows say it
    std::string standard; // of the pipes it is meant for; empty: all of the material that have no rows of their own
    units::Length outsideDiameter;
    std::vector<SupportSpan> spans; // ascending in temperature, not growing
    Provenance provenance;
};

} // namespace sumpwright::catalogue

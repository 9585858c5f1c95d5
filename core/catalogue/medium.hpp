// Medium: what fills a grow bed. Dry bulk density in kg/m3 of bed; absorbed water per dry mass, porosity between the
// grains and water retained between them after draining are ratios. Low / typical / high are three fillings that can
// really lie in a bed, from the lightest to the heaviest: where grains lie denser the porosity is smaller. Water and
// life use typical, floor loads use high unless measured. Sources per row (resources/tables/media.json).
#pragma once

#include <string>

#include "core/catalogue/provenance.hpp"
#include "core/units/kinds.hpp"

namespace sumpwright::catalogue
{

template <class T> struct Spread {
    T low{};
    T typical{};
    T high{};
};

struct Medium {
    std::string id; // e.g. "expanded-clay"
    std::string name;
    Spread<units::Density> dryDensity;
    Spread<double> absorption; // kg of water in the grains per kg dry
    Spread<double> porosity;   // volume between the grains per volume of bed
    Spread<double> retained;   // water held between the grains after draining, per volume of bed
    Provenance provenance;
};

} // namespace sumpwright::catalogue

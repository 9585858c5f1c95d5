#include "core/units/written_units.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/base/ensure.hpp"
#include "core/units/measures.hpp"

namespace sumpwright::units::detail
{

namespace
{

constexpr auto metric = UnitSystem::metric;
constexpr auto us = UnitSystem::us;
constexpr double footMetres = 0.3048;

// For each kind and system one row starts at zero; the last row is the usual one, used for zero itself.
constexpr std::array screen{
    ScreenUnit{KindId::length, metric, 0.0, "mm", "mm"},
    ScreenUnit{KindId::length, metric, 0.1, "m", "m", 4, 3},
    ScreenUnit{KindId::length, us, 0.0, "in", "in"},
    ScreenUnit{KindId::length, us, footMetres, "ft", "ft", 4, 2},
    ScreenUnit{KindId::elevation, metric, 0.0, "m", "m"},
    ScreenUnit{KindId::elevation, us, 0.0, "ft", "ft"},
    ScreenUnit{KindId::area, metric, 0.0, "cm2", "cm\u00b2"},
    ScreenUnit{KindId::area, metric, 0.01, "m2", "m\u00b2"},
    ScreenUnit{KindId::area, us, 0.0, "in2", "in\u00b2"},
    ScreenUnit{KindId::area, us, footMetres* footMetres, "ft2", "ft\u00b2"},
    ScreenUnit{KindId::volume, metric, 100.0, "m3", "m\u00b3"},
    ScreenUnit{KindId::volume, metric, 0.0, "L", "L"},
    ScreenUnit{KindId::volume, us, 0.0, "US gal", "US gal"},
    ScreenUnit{KindId::angle, metric, 0.0, "deg", "\u00b0", 3, 1},
    ScreenUnit{KindId::slope, metric, 0.0, "%", "%"},
    ScreenUnit{KindId::slope, us, 0.0, "in/ft", "in/ft"},
    ScreenUnit{KindId::time, metric, 86400.0 * 2, "d", "d"},
    ScreenUnit{KindId::time, metric, 3600.0, "h", "h"},
    ScreenUnit{KindId::time, metric, 120.0, "min", "min"},
    ScreenUnit{KindId::time, metric, 0.0, "s", "s"},
    ScreenUnit{KindId::velocity, metric, 0.0, "m/s", "m/s"},
    ScreenUnit{KindId::velocity, us, 0.0, "ft/s", "ft/s"},
    ScreenUnit{KindId::head, metric, 0.0, "m", "m"},
    ScreenUnit{KindId::head, us, 0.0, "ft", "ft"},
    ScreenUnit{KindId::pressure, metric, 0.0, "Pa", "Pa"},
    ScreenUnit{KindId::pressure, metric, 1e6, "MPa", "MPa"},
    ScreenUnit{KindId::pressure, metric, 1e3, "kPa", "kPa"},
    ScreenUnit{KindId::pressure, us, 0.0, "psi", "psi"},
    ScreenUnit{KindId::groundPressure, metric, 1e6, "MPa", "MPa"},
    ScreenUnit{KindId::groundPressure, metric, 0.0, "kPa", "kPa"},
    ScreenUnit{KindId::groundPressure, us, 0.0, "psf", "psf"},
    ScreenUnit{KindId::density, metric, 0.0, "kg/m3", "kg/m\u00b3", 4},
    ScreenUnit{KindId::density, us, 0.0, "lb/ft3", "lb/ft\u00b3"},
    ScreenUnit{KindId::dynamicViscosity, metric, 0.0, "mPa s", "mPa\u00b7s", 4},
    ScreenUnit{KindId::kinematicViscosity, metric, 0.0, "mm2/s", "mm\u00b2/s", 4},
    ScreenUnit{KindId::flow, metric, 0.0, "L/h", "L/h"},
    ScreenUnit{KindId::flow, us, 0.0, "US gal/min", "US gal/min"},
    ScreenUnit{KindId::mass, metric, 0.0, "g", "g"},
    ScreenUnit{KindId::mass, metric, 1.0, "kg", "kg"},
    ScreenUnit{KindId::mass, us, 0.0, "lb", "lb"},
    ScreenUnit{KindId::force, metric, 0.0, "N", "N"},
    ScreenUnit{KindId::force, metric, 1e3, "kN", "kN"},
    ScreenUnit{KindId::force, us, 0.0, "lbf", "lbf"},
    ScreenUnit{KindId::lineLoad, metric, 0.0, "kN/m", "kN/m"},
    ScreenUnit{KindId::lineLoad, us, 0.0, "lbf/ft", "lbf/ft"},
    ScreenUnit{KindId::moment, metric, 0.0, "N m", "N\u00b7m"},
    ScreenUnit{KindId::moment, metric, 1e3, "kN m", "kN\u00b7m"},
    ScreenUnit{KindId::moment, us, 0.0, "lbf ft", "lbf\u00b7ft"},
    ScreenUnit{KindId::subgradeModulus, metric, 0.0, "MN/m3", "MN/m\u00b3"},
    ScreenUnit{KindId::subgradeModulus, us, 0.0, "pci", "pci"},
    ScreenUnit{KindId::temperature, metric, 0.0, "degC", "\u00b0C", 4, 1},
    ScreenUnit{KindId::temperature, us, 0.0, "degF", "\u00b0F", 4, 1},
    ScreenUnit{KindId::temperatureDifference, metric, 0.0, "K", "K", 3, 2},
    ScreenUnit{KindId::temperatureDifference, us, 0.0, "degF", "\u00b0F", 3, 2},
    ScreenUnit{KindId::energy, metric, 0.0, "J", "J"},
    ScreenUnit{KindId::energy, metric, 3.6e4, "kWh", "kWh"},
    ScreenUnit{KindId::power, metric, 1e4, "kW", "kW"},
    ScreenUnit{KindId::power, metric, 0.0, "W", "W"},
    ScreenUnit{KindId::money, metric, 0.0, "", ""},
    ScreenUnit{KindId::energyPrice, metric, 0.0, "/kWh", "/kWh"},
    ScreenUnit{KindId::tan, metric, 0.0, "mg/L N", "mg/L N"},
    ScreenUnit{KindId::ammoniaNitrogen, metric, 0.0, "mg/L NH3-N", "mg/L NH\u2083-N"},
    ScreenUnit{KindId::ammonia, metric, 0.0, "mg/L NH3", "mg/L NH\u2083"},
    ScreenUnit{KindId::nitriteNitrogen, metric, 0.0, "mg/L NO2-N", "mg/L NO\u2082-N"},
    ScreenUnit{KindId::nitrateNitrogen, metric, 0.0, "mg/L NO3-N", "mg/L NO\u2083-N"},
    ScreenUnit{KindId::oxygen, metric, 0.0, "mg/L O2", "mg/L O\u2082"},
    ScreenUnit{KindId::alkalinity, metric, 0.0, "mg/L CaCO3", "mg/L CaCO\u2083"},
    ScreenUnit{KindId::ratio, metric, 0.0, "", ""},
};

using Names = std::span<const std::string_view>;
template <std::size_t N> using Row = std::array<std::string_view, N>;

constexpr Row<2> lengths{"m", "mm"}, areas{"m2", "mm2"}, volumes{"L", "m3"}, angles{"deg", "rad"}, slopes{"%", ""};
constexpr Row<4> times{"s", "h", "min", "d"};
constexpr Row<2> velocities{"m/s", "mm/s"}, pressures{"kPa", "Pa"}, flows{"L/h", "m3/s"}, masses{"kg", "g"};
constexpr Row<2> dynamicViscosities{"mPa s", "Pa s"}, kinematicViscosities{"mm2/s", "m2/s"}, forces{"kN", "N"};
constexpr Row<2> lineLoads{"kN/m", "N/m"}, moments{"kN m", "N m"}, moduli{"MN/m3", "N/m3"};
constexpr Row<2> temperatures{"degC", "K"}, energies{"kWh", "J"}, powers{"W", "kW"}, prices{"/kWh", "/J"};
constexpr Row<1> levels{"m"}, densities{"kg/m3"}, differences{"K"}, plain{""};
constexpr Row<2> tan{"mg/L N", "kg/m3 N"}, ammoniaNitrogen{"mg/L NH3-N", "kg/m3 NH3-N"};
constexpr Row<2> ammonia{"mg/L NH3", "kg/m3 NH3"}, nitrite{"mg/L NO2-N", "kg/m3 NO2-N"};
constexpr Row<2> nitrate{"mg/L NO3-N", "kg/m3 NO3-N"}, oxygen{"mg/L O2", "kg/m3 O2"};
constexpr Row<2> alkalinity{"mg/L CaCO3", "kg/m3 CaCO3"};

constexpr Row<4> usLengths{"ft", "in", "m", "mm"}, usAreas{"ft2", "in2", "m2", "mm2"};
constexpr Row<4> usTemperatures{"degF", "degC", "K", "K"};
constexpr Row<3> usVolumes{"US gal", "L", "m3"}, usFlows{"US gal/min", "L/h", "m3/s"}, usMasses{"lb", "kg", "g"};
constexpr Row<3> usPressures{"psi", "kPa", "Pa"}, usGroundPressures{"psf", "kPa", "Pa"}, usForces{"lbf", "kN", "N"};
constexpr Row<3> usVelocities{"ft/s", "m/s", "mm/s"}, usSlopes{"in/ft", "%", ""};
constexpr Row<2> usLevels{"ft", "m"}, usDensities{"lb/ft3", "kg/m3"}, usDifferences{"degF", "K"};
constexpr Row<3> usLineLoads{"lbf/ft", "kN/m", "N/m"}, usMoments{"lbf ft", "kN m", "N m"},
    usModuli{"pci", "MN/m3", "N/m3"};

struct ExactRow {
    KindId kind;
    Names metric, us;
};

const std::array exactRows{
    ExactRow{KindId::length, lengths, usLengths},
    ExactRow{KindId::elevation, levels, usLevels},
    ExactRow{KindId::area, areas, usAreas},
    ExactRow{KindId::volume, volumes, usVolumes},
    ExactRow{KindId::angle, angles, angles},
    ExactRow{KindId::slope, slopes, usSlopes},
    ExactRow{KindId::time, times, times},
    ExactRow{KindId::velocity, velocities, usVelocities},
    ExactRow{KindId::head, levels, usLevels},
    ExactRow{KindId::pressure, pressures, usPressures},
    ExactRow{KindId::groundPressure, pressures, usGroundPressures},
    ExactRow{KindId::density, densities, usDensities},
    ExactRow{KindId::dynamicViscosity, dynamicViscosities, dynamicViscosities},
    ExactRow{KindId::kinematicViscosity, kinematicViscosities, kinematicViscosities},
    ExactRow{KindId::flow, flows, usFlows},
    ExactRow{KindId::mass, masses, usMasses},
    ExactRow{KindId::force, forces, usForces},
    ExactRow{KindId::lineLoad, lineLoads, usLineLoads},
    ExactRow{KindId::moment, moments, usMoments},
    ExactRow{KindId::subgradeModulus, moduli, usModuli},
    ExactRow{KindId::temperature, temperatures, usTemperatures},
    ExactRow{KindId::temperatureDifference, differences, usDifferences},
    ExactRow{KindId::energy, energies, energies},
    ExactRow{KindId::power, powers, powers},
    ExactRow{KindId::money, plain, plain},
    ExactRow{KindId::energyPrice, prices, prices},
    ExactRow{KindId::tan, tan, tan},
    ExactRow{KindId::ammoniaNitrogen, ammoniaNitrogen, ammoniaNitrogen},
    ExactRow{KindId::ammonia, ammonia, ammonia},
    ExactRow{KindId::nitriteNitrogen, nitrite, nitrite},
    ExactRow{KindId::nitrateNitrogen, nitrate, nitrate},
    ExactRow{KindId::oxygen, oxygen, oxygen},
    ExactRow{KindId::alkalinity, alkalinity, alkalinity},
    ExactRow{KindId::ratio, plain, plain},
};

} // namespace

const ScreenUnit& screenUnit(KindId kind, UnitSystem system, double si)
{
    const ScreenUnit* best = nullptr;
    for (const ScreenUnit& row : screen) {
        if (row.kind != kind || row.system != system)
            continue;
        const bool fits = std::abs(si) >= row.from;
        if (si == 0.0 || (fits && (!best || row.from >= best->from)))
            best = &row;
    }
    if (!best && system == UnitSystem::us)
        return screenUnit(kind, UnitSystem::metric, si);
    base::ensure(best != nullptr, "every kind has a unit on screen");
    return *best;
}

Names exactUnits(KindId kind, UnitSystem system)
{
    const auto row =
        std::find_if(exactRows.begin(), exactRows.end(), [&](const ExactRow& r) { return r.kind == kind; });
    base::ensure(row != exactRows.end(), "every kind has units for files");
    return system == UnitSystem::us ? row->us : row->metric;
}

double numberIn(const UnitRead& unit, double si)
{
    const double amount = unit.says == Says::celsius || unit.says == Says::fahrenheit ? si - celsiusZero : si;
    const double number = amount * unit.factor.over / unit.factor.times;
    return unit.says == Says::fahrenheit ? number + 32.0 : number;
}

double siFrom(const UnitRead& unit, double number)
{
    if (unit.says == Says::celsius)
        return number + celsiusZero;
    if (unit.says == Says::fahrenheit)
        return unit.factor.toSi(number - 32.0) + celsiusZero;
    return unit.factor.toSi(number);
}

} // namespace sumpwright::units::detail

// What each kind is called, measured in and asked for.
#include <algorithm>
#include <array>

#include "core/units/unit_table.hpp"

namespace sumpwright::units
{

namespace
{

using detail::Dimension;

struct KindRow {
    KindId kind;
    std::string_view name;
    std::string_view accepted;
    Dimension dimension;
};

constexpr Dimension concentration{.length = -3, .mass = 1};
constexpr Dimension pressure{.length = -1, .mass = 1, .time = -2};
constexpr Dimension work{.length = 2, .mass = 1, .time = -2};

constexpr std::array rows{
    KindRow{KindId::length, "length", "m, cm, mm, ft, in", {.length = 1}},
    KindRow{KindId::elevation, "level", "m, cm, mm, ft, in", {.length = 1}},
    KindRow{KindId::area, "area", "m2, cm2, mm2, ft2, in2", {.length = 2}},
    KindRow{KindId::volume, "volume", "L, mL, m3, US gal, imp gal, ft3", {.length = 3}},
    KindRow{KindId::angle, "angle", "deg, rad", {.angle = 1}},
    KindRow{KindId::slope, "slope", "1:60, 1 in 60, 2 %, 0.02, mm/m, in/ft", {}},
    KindRow{KindId::time, "time", "s, min, h, d", {.time = 1}},
    KindRow{KindId::velocity, "velocity", "m/s, mm/s, m/h, ft/s", {.length = 1, .time = -1}},
    KindRow{KindId::head, "head", "m, cm, mm, ft, in (of water)", {.length = 1}},
    KindRow{KindId::pressure, "pressure", "Pa, kPa, bar, mbar, psi", pressure},
    KindRow{KindId::groundPressure, "pressure on the floor or ground", "Pa, kPa, kN/m2, psf, psi", pressure},
    KindRow{KindId::density, "density", "kg/m3, g/L, lb/ft3", concentration},
    KindRow{KindId::dynamicViscosity, "dynamic viscosity", "Pa s, mPa s", {.length = -1, .mass = 1, .time = -1}},
    KindRow{KindId::kinematicViscosity, "kinematic viscosity", "m2/s, mm2/s", {.length = 2, .time = -1}},
    KindRow{KindId::flow, "flow", "L/h, L/min, L/s, m3/h, US gal/min, US gal/h", {.length = 3, .time = -1}},
    KindRow{KindId::mass, "mass", "kg, g, t, lb, oz", {.mass = 1}},
    KindRow{KindId::force, "force", "N, kN, lbf, kip", {.length = 1, .mass = 1, .time = -2}},
    KindRow{KindId::lineLoad, "line load", "N/m, kN/m, lbf/ft", {.mass = 1, .time = -2}},
    KindRow{KindId::moment, "moment", "N m, kN m, lbf ft, lbf in", work},
    KindRow{KindId::subgradeModulus,
            "subgrade modulus",
            "N/m3, kN/m3, MN/m3, MPa/m, pci",
            {.length = -2, .mass = 1, .time = -2}},
    KindRow{KindId::temperature, "temperature", "degC (\u00b0C), K, degF (\u00b0F)", {.temperature = 1}},
    KindRow{KindId::temperatureDifference, "temperature difference", "K, degC, degF", {.temperature = 1}},
    KindRow{KindId::energy, "energy", "kWh, Wh, J, kJ, MJ", work},
    KindRow{KindId::power, "power", "W, kW, hp", {.length = 2, .mass = 1, .time = -3}},
    KindRow{KindId::money, "amount of money", "a number, or with the currency's code as in 120 EUR", {.money = 1}},
    KindRow{KindId::energyPrice,
            "price of energy",
            "/kWh, or with the currency's code as in 0.31 EUR/kWh",
            {.length = -2, .mass = -1, .time = 2, .money = 1}},
    KindRow{KindId::tan, "total ammonia nitrogen, as N", "mg/L, mg/L N, mg/L TAN, g/m3", concentration},
    KindRow{KindId::ammoniaNitrogen, "ammonia, as N", "mg/L, mg/L N, mg/L NH3-N, g/m3", concentration},
    KindRow{KindId::ammonia, "ammonia, as NH3", "mg/L, mg/L NH3, g/m3", concentration},
    KindRow{KindId::nitriteNitrogen, "nitrite, as N", "mg/L, mg/L N, mg/L NO2-N, g/m3", concentration},
    KindRow{KindId::nitrateNitrogen, "nitrate, as N", "mg/L, mg/L N, mg/L NO3-N, g/m3", concentration},
    KindRow{KindId::oxygen, "dissolved oxygen", "mg/L, mg/L O2, g/m3", concentration},
    KindRow{KindId::alkalinity, "alkalinity, as CaCO3", "mg/L, mg/L CaCO3, g/m3", concentration},
    KindRow{KindId::ratio, "plain number", "a number without a unit, or %", {}},
};
static_assert(rows.size() == kindCount);

constexpr bool inOrder()
{
    for (std::size_t i = 0; i < rows.size(); ++i)
        if (static_cast<std::size_t>(rows[i].kind) != i)
            return false;
    return true;
}
static_assert(inOrder());

const KindRow& rowOf(KindId kind) { return rows[static_cast<std::size_t>(kind)]; }

bool isCustomary(std::string_view unit)
{
    for (std::string_view mark : {"ft", "in", "gal", "psi", "psf", "lb", "oz", "kip", "pci", "degF", "hp"}) {
        const std::size_t at = unit.find(mark);
        if (at != std::string_view::npos && !unit.starts_with("1 in") && !unit.starts_with("imp"))
            return true;
    }
    return false;
}

struct DimensionRow {
    Dimension dimension;
    std::string_view name;
};

constexpr std::array named{
    DimensionRow{{}, "a plain number"},
    DimensionRow{{.length = 1}, "a length"},
    DimensionRow{{.length = 2}, "an area"},
    DimensionRow{{.length = 3}, "a volume"},
    DimensionRow{{.angle = 1}, "an angle"},
    DimensionRow{{.time = 1}, "a time"},
    DimensionRow{{.length = 1, .time = -1}, "a velocity"},
    DimensionRow{{.length = 3, .time = -1}, "a flow"},
    DimensionRow{{.mass = 1}, "a mass"},
    DimensionRow{{.mass = 1, .time = -1}, "a mass per time"},
    DimensionRow{{.length = -2, .mass = 1}, "a mass per area"},
    DimensionRow{concentration, "a mass per volume"},
    DimensionRow{{.length = 1, .mass = 1, .time = -2}, "a force"},
    DimensionRow{{.mass = 1, .time = -2}, "a force per length"},
    DimensionRow{pressure, "a pressure"},
    DimensionRow{{.length = -2, .mass = 1, .time = -2}, "a force per volume"},
    DimensionRow{work, "an energy or a moment"},
    DimensionRow{{.length = 2, .mass = 1, .time = -3}, "a power"},
    DimensionRow{{.temperature = 1}, "a temperature"},
    DimensionRow{{.money = 1}, "an amount of money"},
    DimensionRow{{.length = -2, .mass = -1, .time = 2, .money = 1}, "a price of energy"},
    DimensionRow{{.length = -2, .mass = -1, .time = 2}, "something per energy"},
    DimensionRow{{.length = -1, .mass = 1, .time = -1}, "a dynamic viscosity"},
    DimensionRow{{.length = 2, .time = -1}, "a kinematic viscosity"},
};

} // namespace

std::string_view kindName(KindId kind) { return rowOf(kind).name; }
std::string_view acceptedUnits(KindId kind) { return rowOf(kind).accepted; }

std::string acceptedUnits(KindId kind, UnitSystem first)
{
    const std::string_view all = acceptedUnits(kind);
    if (first == UnitSystem::metric)
        return std::string(all);
    std::string front;
    std::string back;
    for (std::size_t at = 0; at < all.size();) {
        const std::size_t end = std::min(all.find(", ", at), all.size());
        const std::string_view unit = all.substr(at, end - at);
        std::string& side = isCustomary(unit) ? front : back;
        side += (side.empty() ? "" : ", ") + std::string(unit);
        at = end + 2;
    }
    return front + (front.empty() || back.empty() ? "" : ", ") + back;
}

namespace detail
{

Dimension dimensionOf(KindId kind) { return rowOf(kind).dimension; }

std::string_view dimensionName(const Dimension& dimension)
{
    for (const DimensionRow& row : named)
        if (row.dimension == dimension)
            return row.name;
    return "a quantity of another kind";
}

} // namespace detail

} // namespace sumpwright::units

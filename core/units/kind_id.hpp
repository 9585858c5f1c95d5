// KindId: the name of a quantity's kind as a run-time value, for tables, messages and lists of inputs.
#pragma once

#include <string>
#include <string_view>
#include <type_traits>

#include "core/units/kinds.hpp"
#include "core/units/unit_system.hpp"

namespace sumpwright::units
{

enum class KindId {
    length,
    elevation,
    area,
    volume,
    angle,
    slope,
    time,
    velocity,
    head,
    pressure,
    groundPressure,
    density,
    dynamicViscosity,
    kinematicViscosity,
    flow,
    mass,
    force,
    lineLoad,
    moment,
    subgradeModulus,
    temperature,
    temperatureDifference,
    energy,
    power,
    money,
    energyPrice,
    tan,
    ammoniaNitrogen,
    ammonia,
    nitriteNitrogen,
    nitrateNitrogen,
    oxygen,
    alkalinity,
    ratio, // a plain number; no quantity type
};
constexpr int kindCount = static_cast<int>(KindId::ratio) + 1;

// "length", "pressure on the ground", ...: plain English, for messages of the command line.
std::string_view kindName(KindId kind);
// The units a person may write, the usual ones first: "m, cm, mm, ft, in".
std::string_view acceptedUnits(KindId kind);
// The same with the units of one system first: "ft, in, m, cm, mm".
std::string acceptedUnits(KindId kind, UnitSystem first);

namespace detail
{
template <class Kind> struct IdOf;
#define SUMPWRIGHT_KINDS(X)                                                                                            \
    X(Length, length)                                                                                                  \
    X(Elevation, elevation)                                                                                            \
    X(Area, area)                                                                                                      \
    X(Volume, volume)                                                                                                  \
    X(Angle, angle)                                                                                                    \
    X(Slope, slope)                                                                                                    \
    X(Time, time)                                                                                                      \
    X(Velocity, velocity)                                                                                              \
    X(Head, head)                                                                                                      \
    X(Pressure, pressure)                                                                                              \
    X(GroundPressure, groundPressure)                                                                                  \
    X(Density, density)                                                                                                \
    X(DynamicViscosity, dynamicViscosity)                                                                              \
    X(KinematicViscosity, kinematicViscosity)                                                                          \
    X(Flow, flow)                                                                                                      \
    X(Mass, mass)                                                                                                      \
    X(Force, force)                                                                                                    \
    X(LineLoad, lineLoad)                                                                                              \
    X(Moment, moment)                                                                                                  \
    X(SubgradeModulus, subgradeModulus)                                                                                \
    X(Temperature, temperature)                                                                                        \
    X(TemperatureDifference, temperatureDifference)                                                                    \
    X(Energy, energy)                                                                                                  \
    X(Power, power)                                                                                                    \
    X(Money, money)                                                                                                    \
    X(EnergyPrice, energyPrice)                                                                                        \
    X(TanConcentration, tan)                                                                                           \
    X(AmmoniaNitrogenConcentration, ammoniaNitrogen)                                                                   \
    X(AmmoniaConcentration, ammonia)                                                                                   \
    X(NitriteNitrogenConcentration, nitriteNitrogen)                                                                   \
    X(NitrateNitrogenConcentration, nitrateNitrogen)                                                                   \
    X(OxygenConcentration, oxygen)                                                                                     \
    X(AlkalinityConcentration, alkalinity)
#define SUMPWRIGHT_ID_OF(Type, id)                                                                                     \
    template <> struct IdOf<Type> : std::integral_constant<KindId, KindId::id> {                                       \
    };
SUMPWRIGHT_KINDS(SUMPWRIGHT_ID_OF)
#undef SUMPWRIGHT_ID_OF
} // namespace detail

template <class Kind> constexpr KindId kindId = detail::IdOf<Kind>::value;

} // namespace sumpwright::units

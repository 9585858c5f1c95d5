// The kinds of quantity the program computes with: the only door to Boost.Units.
//
// Every kind is a boost::units quantity. Kinds that share SI dimensions but must not be mixed (a head and a
// length, a pressure on the ground and a pressure in water, nitrogen in ammonia and ammonia) get a base
// dimension of their own, so that mixing them does not compile; kinds that are points on a scale (elevation,
// temperature) are absolute units: point - point = difference, point + point does not compile.
//
// A raw number enters only through a named maker ("metres(1.2)") and leaves only through a named reader
// ("inMetres(x)"), see measures.hpp. Ratios are plain double.
#pragma once

#include <boost/units/absolute.hpp>
#include <boost/units/base_dimension.hpp>
#include <boost/units/base_unit.hpp>
#include <boost/units/derived_dimension.hpp>
#include <boost/units/make_system.hpp>
#include <boost/units/quantity.hpp>
#include <boost/units/systems/si/acceleration.hpp>
#include <boost/units/systems/si/area.hpp>
#include <boost/units/systems/si/dynamic_viscosity.hpp>
#include <boost/units/systems/si/energy.hpp>
#include <boost/units/systems/si/force.hpp>
#include <boost/units/systems/si/kinematic_viscosity.hpp>
#include <boost/units/systems/si/length.hpp>
#include <boost/units/systems/si/mass.hpp>
#include <boost/units/systems/si/mass_density.hpp>
#include <boost/units/systems/si/plane_angle.hpp>
#include <boost/units/systems/si/power.hpp>
#include <boost/units/systems/si/pressure.hpp>
#include <boost/units/systems/si/surface_tension.hpp>
#include <boost/units/systems/si/temperature.hpp>
#include <boost/units/systems/si/time.hpp>
#include <boost/units/systems/si/torque.hpp>
#include <boost/units/systems/si/velocity.hpp>
#include <boost/units/systems/si/volume.hpp>

namespace sumpwright::units
{

namespace si = boost::units::si;
namespace detail
{

// Base dimensions of our own. The numbers are ours; Boost reserves the negative ones.
struct HeadDimension : boost::units::base_dimension<HeadDimension, 3101> {
};
struct SlopeDimension : boost::units::base_dimension<SlopeDimension, 3102> {
};
struct GroundPressureDimension : boost::units::base_dimension<GroundPressureDimension, 3103> {
};
struct MoneyDimension : boost::units::base_dimension<MoneyDimension, 3104> {
};
struct TanDimension : boost::units::base_dimension<TanDimension, 3105> {
};
struct AmmoniaNitrogenDimension : boost::units::base_dimension<AmmoniaNitrogenDimension, 3106> {
};
struct AmmoniaDimension : boost::units::base_dimension<AmmoniaDimension, 3107> {
};
struct NitriteNitrogenDimension : boost::units::base_dimension<NitriteNitrogenDimension, 3108> {
};
struct NitrateNitrogenDimension : boost::units::base_dimension<NitrateNitrogenDimension, 3109> {
};
struct OxygenDimension : boost::units::base_dimension<OxygenDimension, 3110> {
};
struct AlkalinityDimension : boost::units::base_dimension<AlkalinityDimension, 3111> {
};

template <class Dimension, long Number>
struct OwnUnit : boost::units::base_unit<OwnUnit<Dimension, Number>, typename Dimension::dimension_type, Number> {
};

template <class Dimension, long Number> using Own = typename OwnUnit<Dimension, Number>::unit_type;

using FlowDimension = boost::units::derived_dimension<boost::units::length_base_dimension, 3,
                                                      boost::units::time_base_dimension, -1>::type;
using SubgradeDimension =
    boost::units::derived_dimension<boost::units::length_base_dimension, -2, boost::units::mass_base_dimension, 1,
                                    boost::units::time_base_dimension, -2>::type;

} // namespace detail

template <class Unit> using Quantity = boost::units::quantity<Unit>;

using Length = Quantity<si::length>;                                          // m, a distance or a size
using Elevation = Quantity<boost::units::absolute<si::length>>;               // m above the plan's datum, up positive
using Area = Quantity<si::area>;                                              // m2
using Volume = Quantity<si::volume>;                                          // m3
using Angle = Quantity<si::plane_angle>;                                      // rad, counter-clockwise positive
using Time = Quantity<si::time>;                                              // s
using Velocity = Quantity<si::velocity>;                                      // m/s
using Pressure = Quantity<si::pressure>;                                      // Pa, in water or air
using Mass = Quantity<si::mass>;                                              // kg
using Density = Quantity<si::mass_density>;                                   // kg/m3
using DynamicViscosity = Quantity<si::dynamic_viscosity>;                     // Pa s
using KinematicViscosity = Quantity<si::kinematic_viscosity>;                 // m2/s
using Force = Quantity<si::force>;                                            // N, down positive for loads
using LineLoad = Quantity<si::surface_tension>;                               // N/m
using Moment = Quantity<si::torque>;                                          // N m
using Energy = Quantity<si::energy>;                                          // J
using Power = Quantity<si::power>;                                            // W
using Temperature = Quantity<boost::units::absolute<si::temperature>>;        // K, a point on the scale
using TemperatureDifference = Quantity<si::temperature>;                      // K
using Flow = Quantity<boost::units::unit<detail::FlowDimension, si::system>>; // m3/s
using SubgradeModulus = Quantity<boost::units::unit<detail::SubgradeDimension, si::system>>; // N/m3

using Head = Quantity<detail::Own<detail::HeadDimension, 3201>>;   // m of water, the energy per weight of water
using Slope = Quantity<detail::Own<detail::SlopeDimension, 3202>>; // m/m, falling positive
using GroundPressure = Quantity<detail::Own<detail::GroundPressureDimension, 3203>>; // Pa on a floor or on the ground
using Money = Quantity<detail::Own<detail::MoneyDimension, 3204>>;                   // one unit of the plan's currency
using EnergyPrice = decltype(Money() / Energy());                                    // currency per J; written per kWh

// Concentrations, each by its basis: kg per m3, written mg/L.
using TanConcentration = Quantity<detail::Own<detail::TanDimension, 3205>>;                         // as N
using AmmoniaNitrogenConcentration = Quantity<detail::Own<detail::AmmoniaNitrogenDimension, 3206>>; // NH3 as N
using AmmoniaConcentration = Quantity<detail::Own<detail::AmmoniaDimension, 3207>>;                 // NH3 as NH3
using NitriteNitrogenConcentration = Quantity<detail::Own<detail::NitriteNitrogenDimension, 3208>>; // NO2 as N
using NitrateNitrogenConcentration = Quantity<detail::Own<detail::NitrateNitrogenDimension, 3209>>; // NO3 as N
using OxygenConcentration = Quantity<detail::Own<detail::OxygenDimension, 3210>>;
using AlkalinityConcentration = Quantity<detail::Own<detail::AlkalinityDimension, 3211>>; // as CaCO3

} // namespace sumpwright::units

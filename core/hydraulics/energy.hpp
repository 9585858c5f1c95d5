// Power and yearly energy of pumping. A year is 365 days of 24 hours. Wire-to-water is hydraulic over electrical power.
// Source: definition, P = density x g x flow x head.
#pragma once

#include "core/units/measures.hpp"

namespace sumpwright::hydraulics
{

constexpr units::Time operatingYear = units::hours(8760.0);

// 0 where the head is below 0: the water drives the pump.
units::Power hydraulicPower(units::Flow flow, units::Head head, units::Density density);
// wireToWater above 0, at most 1: a promise of the caller.
units::Power electricalPower(units::Power hydraulic, double wireToWater);
double wireToWater(units::Power hydraulic, units::Power electrical); // 0 when no electrical power is drawn
units::Energy energyPerYear(units::Power electrical, units::Time runPerYear = operatingYear);
units::Money costPerYear(units::Energy perYear, units::EnergyPrice price);

} // namespace sumpwright::hydraulics

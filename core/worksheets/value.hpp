// Value: a quantity of any kind, a ratio, or a name from a list: what goes into and comes out of a worksheet.
#pragma once

#include <string>
#include <variant>

#include "core/units/kind_id.hpp"
#include "core/units/kinds.hpp"

namespace sumpwright::worksheets
{

using Value =
    std::variant<double, std::string, units::Length, units::Temperature, units::Density, units::DynamicViscosity,
                 units::KinematicViscosity, units::Pressure, units::GroundPressure, units::Flow, units::Velocity,
                 units::Head, units::Power, units::Energy, units::EnergyPrice, units::Money, units::Mass, units::Force>;

// The coherent SI number of a quantity (degC for temperatures, kWh for energy, currency for money); a ratio itself.
// A name has none: a promise of the caller.
double numberOf(const Value& value);

} // namespace sumpwright::worksheets

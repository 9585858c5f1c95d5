// Value: a quantity of any kind a worksheet uses, a ratio, or a name from a list. Numbers leave it in the one unit of
// their kind: coherent SI, but degC for temperatures, kWh for energy and one unit of currency for money.
#pragma once

#include <string>
#include <string_view>
#include <variant>

#include "core/base/outcome.hpp"
#include "core/units/kind_id.hpp"
#include "core/units/kinds.hpp"
#include "core/units/number_style.hpp"

namespace sumpwright::worksheets
{

using Value =
    std::variant<double, std::string, units::Length, units::Elevation, units::Area, units::Volume, units::Angle,
                 units::Temperature, units::Density, units::DynamicViscosity, units::KinematicViscosity,
                 units::Pressure, units::GroundPressure, units::Flow, units::Velocity, units::Head, units::Power,
                 units::Energy, units::EnergyPrice, units::Money, units::Mass, units::Force, units::Slope, units::Time>;

bool isWord(const Value& value);
// Never minus zero; may be not finite when the quantity is. A word has no number: a promise of the caller.
double numberOf(const Value& value);
// "m3/s"; "1" for a ratio or a word. Prices and money are written with `currency`, or "currency" where that is empty.
std::string unitOf(const Value& value, std::string_view currency = {});

// For people: "1 500 L/h", "0.62", "G4500".
std::string shown(const Value& value, const units::NumberStyle& style, std::string_view currency = {});

// A text with a unit as a value of a kind. Kinds no worksheet uses are a broken promise of the caller.
base::Outcome<Value> readValue(std::string_view text, units::KindId kind, const units::NumberStyle& style);
// The unit of a kind's numbers before any value is known, for lists.
std::string unitOfKind(units::KindId kind);

} // namespace sumpwright::worksheets

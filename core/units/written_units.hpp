// Which unit a quantity is written in: on screen by size and system of units, in files by what keeps every bit.
// Internal to core/units.
#pragma once

#include <span>
#include <string_view>

#include "core/units/unit_reading.hpp"
#include "core/units/unit_system.hpp"

namespace sumpwright::units::detail
{

struct ScreenUnit {
    KindId kind;
    UnitSystem system;
    double from;            // used for sizes from here on, in SI
    std::string_view unit;  // as inUnit() reads it
    std::string_view shown; // as written behind the number
    int digits = 3;         // significant digits, one more from 1000 on
    int mostDecimals = 12;
};

// The row for a quantity of this size; for zero the row of the kind's usual size.
const ScreenUnit& screenUnit(KindId kind, UnitSystem system, double si);

// Units tried for exact text, the preferred ones first; the coherent SI unit is always among them.
std::span<const std::string_view> exactUnits(KindId kind, UnitSystem system);

// The number in a unit and back, with the very arithmetic of the parser.
double numberIn(const UnitRead& unit, double si);
double siFrom(const UnitRead& unit, double number);

} // namespace sumpwright::units::detail

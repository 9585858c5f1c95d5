// An expression of numbers with units, read and computed: sums, products with plain numbers, parentheses, signs,
// "4 ft 2 in" side by side. Works on SI values with a dimension; the kind wanted decides about degrees and bases.
// Internal to core/units.
#pragma once

#include <cstddef>
#include <string_view>

#include "core/units/number_style.hpp"
#include "core/units/unit_reading.hpp"

namespace sumpwright::units::detail
{

struct Value {
    double si = 0.0;
    Dimension dimension;
    bool hasUnit = false;
    bool onScale = false; // a temperature in degrees: a point on a scale, not an amount
    Says says = Says::nothing;
    std::size_t at = 0; // where to point when the kind is wrong: the unit, or the number without one
    // A single number with a unit keeps both, so that "2*600 mm" and "1/2 in" compute with 1200 and 0.5.
    bool simple = false;
    double number = 0.0;
    UnitRead unit;

    void setNumber(double n); // recomputes si from number and unit
};

// Throws Refused for anything but one complete expression.
Value readExpression(std::string_view text, const NumberStyle& style, KindId wanted);

} // namespace sumpwright::units::detail

// The digits of a number, turned into text: rounded, or the fewest that give the number back. Internal to core/units.
#pragma once

#include <string>
#include <string_view>

namespace sumpwright::units::detail
{

// A number as digits d1d2d3… with the decimal mark behind d1, times ten to `exponent`. The digits of zero are "0".
struct Decimal {
    bool negative = false;
    std::string digits;
    int exponent = 0;
};

Decimal rounded(double value, int significantDigits);
void dropTrailingZeros(Decimal& decimal);
// The value back, by the parser's own conversion.
double valueOf(const Decimal& decimal);

// Plain notation where it is readable (10^-5 to 10^15), else with an exponent ("1e-300"); no groups, the ASCII minus.
std::string fileText(const Decimal& decimal, std::string_view decimalMark);

// For people: groups of three set apart by U+202F, a true minus sign, exactly `decimals` decimals.
std::string screenText(double value, int decimals, std::string_view decimalMark);

} // namespace sumpwright::units::detail

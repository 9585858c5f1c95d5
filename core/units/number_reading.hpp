// Reading one number in a person's number style: digits, marks, groups, an exponent, a fraction ("1/2", "4 1/2", "½").
// A mark that could be either a decimal mark or a group mark is refused with both readings. Internal to core/units.
#pragma once

#include <cstddef>
#include <string_view>

#include "core/units/number_style.hpp"

namespace sumpwright::units::detail
{

struct NumberRead {
    double value;
    std::size_t end; // byte after the number
};

// Whether a number begins at byte `at`.
bool numberBeginsAt(std::string_view text, std::size_t at, const NumberStyle& style);
// Throws Refused. Call only where numberBeginsAt().
NumberRead readNumber(std::string_view text, std::size_t at, const NumberStyle& style);

} // namespace sumpwright::units::detail

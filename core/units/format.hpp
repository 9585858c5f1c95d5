// Writing quantities: format() rounds for people, exactText() keeps every bit for files.
//
// format(): 3-4 significant digits as the kind needs, thin spaces (U+202F) between groups of three, a space before
// the unit, a zero before the decimal mark, never NaN, infinity or "-0" (what is not finite reads "not computed").
// Levels carry their sign and three decimals: "+0.850 m", "±0.000 m".
#pragma once

#include <string>
#include <string_view>

#include "core/units/kind_id.hpp"
#include "core/units/number_style.hpp"
#include "core/units/unit_system.hpp"

namespace sumpwright::units
{

struct Look {
    std::string_view unit = {};        // show in this unit, e.g. "mm" or "m3/h", not in the kind's usual one
    int significantDigits = 0;         // 0: as the kind needs
    bool withoutTrailingZeros = false; // "2.4 m" instead of "2.400 m": for fields
    bool smallInMillimetres = false;   // lengths below 1 m in mm
    std::string_view currency = {};    // written after an amount of money
};

template <class Kind>
std::string format(const Kind& quantity, UnitSystem system = UnitSystem::metric,
                   const NumberStyle& style = NumberStyle::point(), const Look& look = {});

// A plain number for people; percent with formatPercent(0.613) = "61.3 %".
std::string formatRatio(double ratio, const NumberStyle& style = NumberStyle::point(), int significantDigits = 3);
std::string formatPercent(double ratio, const NumberStyle& style = NumberStyle::point(), int significantDigits = 3);

// The text with the shortest number that parse<Kind>() turns into the same bits: "2.4 m", "1.5 mm", "3000 L/h", "1:60",
// "20 degC". Files use the defaults. Minus zero is written as zero; what is not finite is a broken promise of the
// caller.
template <class Kind>
std::string exactText(const Kind& quantity, UnitSystem system = UnitSystem::metric,
                      const NumberStyle& style = NumberStyle::point());
std::string exactRatioText(double ratio);

// The number in a named unit, for axes, tables and JSON: inUnit(flow, "L/h"). An unknown unit or one of another
// kind is a broken promise of the caller.
template <class Kind> double inUnit(const Kind& quantity, std::string_view unit);

// The unit format() would use for this quantity, as shown on screen ("L/h", "m³"), and as parse() and inUnit() read it.
template <class Kind> std::string_view shownUnit(const Kind& quantity, UnitSystem system = UnitSystem::metric);

} // namespace sumpwright::units

// Reading quantities as people write them: "1.2 m + 30 cm", "2*600 mm", "4 ft 2 in", "3000 L/h", "1:60", "20 degC".
//
// Sums, differences, products and quotients, parentheses, fractions ("4 1/2 in"), feet and inches side by side.
// Refusal ids: units.empty, units.too-long, units.not-utf8, units.syntax, units.not-a-number, units.ambiguous-number,
// units.comma, units.not-finite, units.divide-by-zero, units.too-deep, units.unknown-unit, units.which-gallon,
// units.missing-unit, units.wrong-kind, units.wrong-basis, units.wrong-currency, units.below-absolute-zero,
// units.bad-date. The place is "character N", counted from 1. Never throws on bad text.
#pragma once

#include <chrono>
#include <string>
#include <string_view>

#include "core/base/outcome.hpp"
#include "core/units/kind_id.hpp"
#include "core/units/number_style.hpp"
#include "core/units/unit_system.hpp"

namespace sumpwright::units
{

struct Reading {
    std::string_view bareUnit = {}; // the unit of a number without one, e.g. "mm"; empty: such a number is refused
    std::string_view currency = {}; // the plan's currency code, e.g. "EUR"; empty: any three capital letters
    UnitSystem typed = UnitSystem::metric; // whose units a refusal names first
};

// For every kind of kinds.hpp (instantiated in parse.cpp).
template <class Kind>
base::Outcome<Kind> parse(std::string_view text, const NumberStyle& style = NumberStyle::point(),
                          const Reading& reading = {});

// A plain number: "1e5", "0.5", "50 %", "1/3".
base::Outcome<double> parseRatio(std::string_view text, const NumberStyle& style = NumberStyle::point());

// A calendar day, ISO 8601: "2026-04-30".
base::Outcome<std::chrono::year_month_day> parseDate(std::string_view text);
std::string dateText(std::chrono::year_month_day date);

// The currency code written in an amount ("0.31 EUR/kWh" gives "EUR"), empty when there is none.
std::string currencyIn(std::string_view text);

} // namespace sumpwright::units

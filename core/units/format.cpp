#include "core/units/format.hpp"

#include <algorithm>
#include <cmath>

#include "core/units/decimal_text.hpp"
#include "core/units/measures.hpp"
#include "core/units/written_units.hpp"

namespace sumpwright::units
{

namespace
{

constexpr std::string_view notComputed = "not computed";

bool writtenPlainly(double value) { return value == 0.0 || (std::abs(value) >= 1e-7 && std::abs(value) < 1e15); }

std::string withExponent(double value, int digits, std::string_view decimalMark)
{
    const detail::Decimal decimal = detail::rounded(value, digits);
    std::string text = (decimal.negative ? "\u2212" : "") + decimal.digits.substr(0, 1);
    if (decimal.digits.size() > 1)
        text += std::string(decimalMark) + decimal.digits.substr(1);
    return text + "e" + std::to_string(decimal.exponent);
}

void cutTrailingZeros(std::string& text, std::string_view decimalMark)
{
    if (text.find(decimalMark) == std::string::npos)
        return;
    while (text.back() == '0')
        text.pop_back();
    if (text.ends_with(decimalMark))
        text.erase(text.size() - decimalMark.size());
}

// A number with `digits` significant digits, one more from 1000 on, but no more decimals than `mostDecimals`.
std::string rounded(double value, int digits, int mostDecimals, const NumberStyle& style, bool cutZeros)
{
    if (value == 0.0)
        return "0";
    if (std::abs(value) >= 999.5)
        digits = std::max(digits, 4);
    if (!writtenPlainly(value))
        return withExponent(value, digits, style.decimalMark);
    const detail::Decimal decimal = detail::rounded(value, digits);
    const int decimals = std::clamp(digits - 1 - decimal.exponent, 0, mostDecimals);
    const double shown = decimals > 0 ? value : detail::valueOf(decimal);
    std::string text = detail::screenText(shown, decimals, style.decimalMark);
    if (cutZeros)
        cutTrailingZeros(text, style.decimalMark);
    return text;
}

std::string withUnit(std::string number, std::string_view unit)
{
    if (unit.empty())
        return number;
    return number + (unit == "\u00b0" ? "" : " ") + std::string(unit);
}

std::string levelText(double number, std::string_view unit, int decimals, const NumberStyle& style)
{
    std::string text = detail::screenText(number, decimals, style.decimalMark);
    if (text.find_first_of("123456789") == std::string::npos)
        text = "\u00b1" + text;
    else if (number > 0.0)
        text = "+" + text;
    return withUnit(std::move(text), unit);
}

// "2 h 30 min" between one hour and two days.
std::string hoursText(double seconds)
{
    const double minutes = std::round(std::abs(seconds) / 60.0);
    const int hours = static_cast<int>(minutes / 60.0);
    const int rest = static_cast<int>(minutes) - 60 * hours;
    return (seconds < 0.0 ? "\u2212" : "") + std::to_string(hours) + " h" +
           (rest > 0 ? " " + std::to_string(rest) + " min" : "");
}

std::string moneyText(double amount, const NumberStyle& style, std::string_view currency)
{
    return withUnit(detail::screenText(amount, 2, style.decimalMark), currency);
}

std::string shown(KindId kind, double si, UnitSystem system, const NumberStyle& style, const Look& look)
{
    if (!std::isfinite(si))
        return std::string(notComputed);
    const detail::ScreenUnit& row = detail::screenUnit(kind, system, si);
    std::string_view unit = row.unit;
    std::string shownAs(row.shown);
    if (!look.unit.empty())
        unit = shownAs = look.unit;
    else if (kind == KindId::length && look.smallInMillimetres && system == UnitSystem::metric && std::abs(si) < 0.9995)
        unit = shownAs = "mm";
    const double number = detail::numberIn(detail::unitNamed(unit, kind), si);
    if (!std::isfinite(number))
        return std::string(notComputed);
    const bool rowFits = unit == row.unit;
    if (kind == KindId::elevation)
        return levelText(number, shownAs, unit == "m" ? 3 : (unit == "mm" ? 0 : 2), style);
    if (kind == KindId::money)
        return moneyText(number, style, look.currency);
    if (kind == KindId::time && rowFits && unit == "h" && look.significantDigits == 0)
        return hoursText(si);
    if (kind == KindId::energyPrice)
        shownAs = std::string(look.currency) + shownAs;
    const int digits = look.significantDigits > 0 ? look.significantDigits : (rowFits ? row.digits : 3);
    const int decimals = look.significantDigits == 0 && rowFits ? row.mostDecimals : 12;
    return withUnit(rounded(number, digits, decimals, style, look.withoutTrailingZeros), shownAs);
}

} // namespace

template <class Kind>
std::string format(const Kind& quantity, UnitSystem system, const NumberStyle& style, const Look& look)
{
    return shown(kindId<Kind>, inSi(quantity), system, style, look);
}

template <class Kind> double inUnit(const Kind& quantity, std::string_view unit)
{
    return detail::numberIn(detail::unitNamed(unit, kindId<Kind>), inSi(quantity));
}

template <class Kind> std::string_view shownUnit(const Kind& quantity, UnitSystem system)
{
    return detail::screenUnit(kindId<Kind>, system, inSi(quantity)).shown;
}

#define SUMPWRIGHT_FORMAT(Type, id)                                                                                    \
    template std::string format<Type>(const Type&, UnitSystem, const NumberStyle&, const Look&);                       \
    template double inUnit<Type>(const Type&, std::string_view);                                                       \
    template std::string_view shownUnit<Type>(const Type&, UnitSystem);
SUMPWRIGHT_KINDS(SUMPWRIGHT_FORMAT)
#undef SUMPWRIGHT_FORMAT

std::string formatRatio(double ratio, const NumberStyle& style, int significantDigits)
{
    if (!std::isfinite(ratio))
        return std::string(notComputed);
    return rounded(ratio, significantDigits, 12, style, false);
}

std::string formatPercent(double ratio, const NumberStyle& style, int significantDigits)
{
    if (!std::isfinite(ratio) || !std::isfinite(ratio * 100.0))
        return std::string(notComputed);
    return rounded(ratio * 100.0, significantDigits, 12, style, false) + " %";
}

} // namespace sumpwright::units

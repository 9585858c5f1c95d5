#include "core/units/parse_si.hpp"

#include <cmath>
#include <optional>
#include <string>

#include "core/units/expression.hpp"
#include "core/units/measures.hpp"
#include "core/units/number_reading.hpp"
#include "core/units/refused.hpp"

namespace sumpwright::units
{

namespace detail
{

namespace
{

std::string accepted(KindId kind) { return "accepted: " + std::string(acceptedUnits(kind)); }

constexpr std::size_t longestText = 256;

// The byte range of a currency code: three capitals standing alone, as in "120 EUR" or "0.31 EUR/kWh".
struct Code {
    std::size_t begin = 0, length = 0;
};

Code currencyCodeAt(std::string_view text)
{
    for (std::size_t at = 0; at < text.size();) {
        std::size_t end = at;
        while (end < text.size() && isAsciiLetter(text[end]))
            ++end;
        bool capitals = end - at == 3;
        for (std::size_t i = at; i < end; ++i)
            capitals = capitals && text[i] >= 'A' && text[i] <= 'Z';
        if (capitals && text.substr(at, 3) != "NAN" && text.substr(at, 3) != "INF")
            return {at, 3};
        at = end > at ? end : at + 1;
    }
    return {};
}

// Takes the currency code out of the text (blanks in its place), after looking whether it is the plan's.
std::string withoutCurrency(std::string_view text, const Reading& reading)
{
    std::string plain(text);
    const Code code = currencyCodeAt(text);
    if (code.length == 0)
        return plain;
    const std::string_view written = text.substr(code.begin, code.length);
    if (!reading.currency.empty() && written != reading.currency)
        refuse("units.wrong-currency", text, code.begin, quoted(written) + " is not the plan's currency",
               "amounts in " + std::string(reading.currency));
    plain.replace(code.begin, code.length, code.length, ' ');
    return plain;
}

void checkText(std::string_view text)
{
    if (text.size() > longestText)
        refuse("units.too-long", text, 0, "the text has " + std::to_string(text.size()) + " bytes",
               "at most " + std::to_string(longestText));
    if (!isValidUtf8(text))
        refuse("units.not-utf8", "", 0, "the text is not valid UTF-8", "text in UTF-8");
}

double readPart(std::string_view text, std::size_t from, std::size_t end, const NumberStyle& style)
{
    const std::size_t at = skipSpaces(text, from);
    if (!numberBeginsAt(text, at, style))
        refuse("units.syntax", text, at, "a number is missing in the slope", accepted(KindId::slope));
    const NumberRead number = readNumber(text, at, style);
    if (skipSpaces(text, number.end) != end)
        refuse("units.syntax", text, skipSpaces(text, number.end), "a slope is written with two numbers here",
               accepted(KindId::slope));
    return number.value;
}

// "1:60" or "1 in 60" (a length in inches has no number behind "in"); nothing when it is written otherwise.
std::optional<double> slopeOfTwo(std::string_view text, const NumberStyle& style)
{
    std::size_t sign = text.find(':');
    std::size_t length = 1;
    if (sign == std::string_view::npos) {
        sign = text.find("in");
        length = 2;
        if (sign == std::string_view::npos || !numberBeginsAt(text, skipSpaces(text, sign + 2), style))
            return std::nullopt;
    }
    std::size_t from = skipSpaces(text, 0);
    const bool negative = startsAt(text, from, "-") || startsAt(text, from, "\u2212");
    if (negative)
        from += startsAt(text, from, "-") ? 1 : 3;
    const double rise = readPart(text, from, sign, style);
    const double run = readPart(text, sign + length, text.size(), style);
    if (run == 0.0)
        refuse("units.divide-by-zero", text, sign, "a slope over no length", "a run other than zero, as in 1:60");
    return negative ? -rise / run : rise / run;
}

bool takesPlainNumber(KindId kind) { return kind == KindId::slope || kind == KindId::ratio || kind == KindId::money; }

[[noreturn]] void refuseKind(std::string_view text, const Value& value, KindId kind)
{
    std::string_view found = dimensionName(value.dimension);
    if (value.says == Says::energy && value.dimension == dimensionOf(KindId::energy))
        found = "an energy";
    if (value.says == Says::force && value.dimension == dimensionOf(KindId::moment))
        found = "a moment";
    refuse("units.wrong-kind", text, value.at,
           quoted(text) + " is " + std::string(found) + ", wanted: " + std::string(kindName(kind)), accepted(kind));
}

void checkKind(std::string_view text, const Value& value, KindId kind)
{
    const Dimension wanted = dimensionOf(kind);
    Dimension given = value.dimension;
    if (kind == KindId::energyPrice)
        given = given.times(Dimension{.money = 1});
    const bool otherFamily =
        (kind == KindId::moment && value.says == Says::energy) || (kind == KindId::energy && value.says == Says::force);
    if (given != wanted || otherFamily)
        refuseKind(text, value, kind);
}

double finished(std::string_view text, const Value& value, KindId kind)
{
    if (!std::isfinite(value.si))
        refuse("units.not-finite", text, value.at, "the result is too large to compute with", "a smaller number");
    if (kind == KindId::temperature && value.si < 0.0)
        refuse("units.below-absolute-zero", text, value.at, quoted(text) + " is below absolute zero",
               "a temperature above -273.15 degC");
    return value.si == 0.0 ? 0.0 : value.si; // no negative zero
}

double readSi(KindId kind, std::string_view given, const NumberStyle& style, const Reading& reading)
{
    checkText(given);
    if (trimmed(given).empty())
        refuse("units.empty", given, 0, "nothing is written", accepted(kind));
    const bool moneyed = kind == KindId::money || kind == KindId::energyPrice;
    const std::string text = moneyed ? withoutCurrency(given, reading) : std::string(given);
    if (kind == KindId::slope)
        if (const auto slope = slopeOfTwo(text, style)) {
            Value value;
            value.si = *slope;
            return finished(text, value, kind);
        }
    Value value = readExpression(text, style, kind);
    if (!value.hasUnit && !takesPlainNumber(kind)) {
        if (reading.bareUnit.empty())
            refuse("units.missing-unit", text, value.at, quoted(given) + " has no unit", accepted(kind));
        const double number = value.si;
        value.unit = unitNamed(reading.bareUnit, kind);
        value.dimension = value.unit.dimension;
        value.setNumber(number);
    } else if (kind == KindId::money && !value.hasUnit) {
        value.dimension = value.dimension.times(Dimension{.money = 1});
    }
    checkKind(text, value, kind);
    return finished(text, value, kind);
}

base::Refusal namingFirst(UnitSystem system, KindId kind, base::Refusal refusal)
{
    const std::string_view usual = acceptedUnits(kind);
    const std::size_t at = refusal.accepts.find(usual);
    if (at != std::string::npos)
        refusal.accepts.replace(at, usual.size(), acceptedUnits(kind, system));
    return refusal;
}

} // namespace

base::Outcome<double> parseSi(KindId kind, std::string_view text, const NumberStyle& style, const Reading& reading)
{
    try {
        return readSi(kind, text, style, reading);
    } catch (const Refused& refused) {
        return namingFirst(reading.typed, kind, refused.refusal);
    }
}

} // namespace detail

std::string currencyIn(std::string_view text)
{
    const detail::Code code = detail::currencyCodeAt(text);
    return std::string(text.substr(code.begin, code.length));
}

} // namespace sumpwright::units

#include "core/units/number_reading.hpp"

#include <array>
#include <charconv>
#include <cmath>
#include <optional>
#include <string>
#include <vector>

#include "core/units/refused.hpp"

namespace sumpwright::units::detail
{

namespace
{

struct Mark {
    std::string_view text;
    std::size_t digitsBefore; // digits of the number written before this mark
};

// A number as written, taken apart: its digits without marks, its marks that are no spaces, its exponent.
struct Written {
    std::string digits;
    std::vector<Mark> marks;
    std::string exponent; // "e5", empty when there is none
    std::size_t begin = 0, end = 0;
};

std::size_t countDigits(std::string_view text, std::size_t at)
{
    std::size_t count = 0;
    while (digitAt(text, at + count))
        ++count;
    return count;
}

bool isApostrophe(std::string_view mark) { return mark == "'" || mark == "\u2019"; }

bool groupsWithSpace(const NumberStyle& style)
{
    for (const std::string& mark : style.groupMarks)
        if (spaceAt(mark, 0))
            return true;
    return false;
}

// A separator that people use inside numbers; spaces are looked at by spaceGroupAt().
std::string_view separatorAt(std::string_view text, std::size_t at, const NumberStyle& style)
{
    if (startsAt(text, at, style.decimalMark))
        return style.decimalMark;
    for (const std::string& mark : style.groupMarks)
        if (!spaceAt(mark, 0) && startsAt(text, at, mark)) {
            const bool groups = countDigits(text, at + mark.size()) == 3;
            return isApostrophe(mark) && !groups ? std::string_view{} : std::string_view(mark); // 4' 2": feet
        }
    if (startsAt(text, at, ".") || startsAt(text, at, ","))
        return text.substr(at, 1);
    return {};
}

// The length of a space that groups: exactly three digits follow, one to three digits stand before.
std::size_t spaceGroupAt(std::string_view text, std::size_t at, std::size_t groupLength, const NumberStyle& style)
{
    const std::size_t space = spaceAt(text, at);
    if (space == 0 || (space == 1 && !groupsWithSpace(style)))
        return 0;
    return groupLength >= 1 && groupLength <= 3 && countDigits(text, at + space) == 3 ? space : 0;
}

std::size_t readExponent(std::string_view text, std::size_t at, std::string& exponent)
{
    if (at >= text.size() || (text[at] != 'e' && text[at] != 'E'))
        return at;
    std::size_t digits = at + 1;
    if (digits < text.size() && (text[digits] == '+' || text[digits] == '-'))
        ++digits;
    const std::size_t count = countDigits(text, digits);
    if (count == 0)
        return at;
    exponent = text[at + 1] == '-' ? "e-" : "e";
    exponent += text.substr(digits, count);
    return digits + count;
}

Written takeApart(std::string_view text, std::size_t at, const NumberStyle& style)
{
    Written written;
    written.begin = at;
    std::size_t group = 0; // digits since the last space that groups, or since the beginning
    for (bool more = true; more;) {
        const std::size_t count = countDigits(text, at);
        written.digits += text.substr(at, count);
        group += count;
        at += count;
        more = false;
        if (const std::size_t space = written.marks.empty() ? spaceGroupAt(text, at, group, style) : 0) {
            at += space;
            group = 0;
            more = true;
        } else if (const std::string_view mark = separatorAt(text, at, style);
                   !mark.empty() && digitAt(text, at + mark.size())) {
            written.marks.push_back({mark, written.digits.size()});
            at += mark.size();
            more = true;
        }
    }
    written.end = readExponent(text, at, written.exponent);
    return written;
}

// The number with its decimal mark after `before` digits, as people of this style write it.
std::string reading(const Written& written, std::size_t before, std::string_view decimalMark)
{
    std::string whole = written.digits.substr(0, before);
    std::string rest = written.digits.substr(before);
    rest.erase(rest.find_last_not_of('0') + 1);
    whole.erase(0, std::min(whole.find_first_not_of('0'), whole.size()));
    if (whole.empty())
        whole = "0";
    return whole + (rest.empty() ? "" : std::string(decimalMark) + rest) + written.exponent;
}

[[noreturn]] void refuseTwoReadings(std::string_view text, const Written& written, const NumberStyle& style)
{
    const std::string_view as = text.substr(written.begin, written.end - written.begin);
    const Mark& first = written.marks.front();
    const Mark& last = written.marks.back();
    const bool repeated = written.marks.size() > 1 && first.text == last.text;
    const bool several = written.marks.size() > 1 && !repeated;
    const std::string one = reading(written, several ? last.digitsBefore : written.digits.size(), style.decimalMark);
    std::string other = reading(written, first.digitsBefore, style.decimalMark);
    if (isApostrophe(first.text))
        other = written.digits.substr(0, first.digitsBefore) + " ft " + written.digits.substr(first.digitsBefore, 3) +
                " (feet and inches)";
    refuse("units.ambiguous-number", text, written.begin, quoted(as) + " can be read as " + one + " or as " + other,
           "write " + one + " or " + other);
}

// Where the decimal mark is, as a count of digits before it. Refuses what has two readings.
std::size_t decimalPlace(std::string_view text, const Written& written, const NumberStyle& style)
{
    if (written.marks.empty())
        return written.digits.size();
    const Mark& mark = written.marks.front();
    if (style.isPlainPoint()) {
        for (const Mark& each : written.marks)
            if (each.text == ",")
                refuse("units.comma", text, written.begin, "a comma stands in the number",
                       "a point before the decimals and nothing between groups of digits, as in 1234.5");
    }
    if (written.marks.size() == 1 && mark.text == style.decimalMark)
        return mark.digitsBefore;
    if (written.marks.size() > 1) {
        bool onlyDecimalMarks = true;
        for (const Mark& each : written.marks)
            onlyDecimalMarks = onlyDecimalMarks && each.text == style.decimalMark;
        if (onlyDecimalMarks)
            refuse("units.not-a-number", text, written.begin, "the number has more than one decimal mark",
                   "one decimal mark, as in 1" + style.decimalMark + "5");
        refuseTwoReadings(text, written, style);
    }
    if (written.digits.size() - mark.digitsBefore == 3)
        refuseTwoReadings(text, written, style);
    return mark.digitsBefore; // not three digits: it cannot group, so it is the decimal mark
}

double toDouble(std::string_view text, const Written& written, const NumberStyle& style)
{
    const std::size_t place = decimalPlace(text, written, style);
    std::string plain = written.digits.substr(0, place);
    if (place < written.digits.size())
        plain += "." + written.digits.substr(place);
    plain += written.exponent;
    double value = 0.0;
    const auto [rest, error] = std::from_chars(plain.data(), plain.data() + plain.size(), value);
    if (error != std::errc{} || rest != plain.data() + plain.size() || !std::isfinite(value))
        refuse("units.not-finite", text, written.begin,
               quoted(text.substr(written.begin, written.end - written.begin)) +
                   " is too large or too small to compute with",
               "a number of a size that occurs in a building");
    return value;
}

// "½" and its relatives, as the value and the byte after it.
std::optional<NumberRead> vulgarFractionAt(std::string_view text, std::size_t at)
{
    struct Vulgar {
        std::string_view text;
        double value;
    };
    constexpr std::array fractions{Vulgar{"\u00bc", 0.25},  Vulgar{"\u00bd", 0.5},   Vulgar{"\u00be", 0.75},
                                   Vulgar{"\u215b", 0.125}, Vulgar{"\u215c", 0.375}, Vulgar{"\u215d", 0.625},
                                   Vulgar{"\u215e", 0.875}};
    for (const Vulgar& fraction : fractions)
        if (startsAt(text, at, fraction.text))
            return NumberRead{fraction.value, at + fraction.text.size()};
    return std::nullopt;
}

// "1/2" of whole numbers without spaces.
std::optional<NumberRead> fractionAt(std::string_view text, std::size_t at)
{
    const std::size_t above = countDigits(text, at);
    const std::size_t slash = at + above;
    if (above == 0 || above > 9 || !startsAt(text, slash, "/"))
        return std::nullopt;
    const std::size_t below = countDigits(text, slash + 1);
    const std::size_t end = slash + 1 + below;
    const bool goesOn =
        end < text.size() && (text[end] == '.' || text[end] == ',' || text[end] == 'e' || text[end] == 'E');
    if (below == 0 || below > 9 || goesOn)
        return std::nullopt;
    double numerator = 0.0;
    double denominator = 0.0;
    std::from_chars(text.data() + at, text.data() + slash, numerator);
    std::from_chars(text.data() + slash + 1, text.data() + end, denominator);
    if (denominator == 0.0)
        refuse("units.divide-by-zero", text, slash, "the number is divided by zero", "a divisor other than zero");
    return NumberRead{numerator / denominator, end};
}

} // namespace

bool numberBeginsAt(std::string_view text, std::size_t at, const NumberStyle& style)
{
    if (digitAt(text, at) || vulgarFractionAt(text, at))
        return true;
    return startsAt(text, at, style.decimalMark) && digitAt(text, at + style.decimalMark.size());
}

NumberRead readNumber(std::string_view text, std::size_t at, const NumberStyle& style)
{
    if (const auto vulgar = vulgarFractionAt(text, at))
        return *vulgar;
    if (const auto fraction = fractionAt(text, at))
        return *fraction;
    const Written written = takeApart(text, at, style);
    NumberRead number{toDouble(text, written, style), written.end};
    const bool whole = written.marks.empty() && written.exponent.empty();
    if (!whole)
        return number;
    const std::size_t next = skipSpaces(text, number.end);
    auto fraction = vulgarFractionAt(text, next);
    if (!fraction && next > number.end)
        fraction = fractionAt(text, next);
    if (fraction && fraction->value < 1.0)
        return {number.value + fraction->value, fraction->end};
    return number;
}

} // namespace sumpwright::units::detail

// One table of texts read in five number styles, good and bad rows together. A cell is the length in metres, or the
// id of the refusal. The styles follow the desktops of en_US, de_DE, fr_FR and de_CH as the Unicode locale data
// describes them; the plain point is the style of files and the command line.
#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <cstdlib>
#include <string>

#include "core/units/measures.hpp"
#include "core/units/parse.hpp"

namespace sumpwright::units
{

namespace
{

const std::array<NumberStyle, 5>& styles()
{
    static const std::array<NumberStyle, 5> all{
        NumberStyle::point(), NumberStyle::ofDesktop(".", ","), NumberStyle::ofDesktop(",", "."),
        NumberStyle::ofDesktop(",", std::vector<std::string>{"\u202f", "\u00a0"}),
        NumberStyle::ofDesktop(".", "\u2019")};
    return all;
}

struct Row {
    const char* text;
    std::array<const char*, 5> expected; // point, en_US, de_DE, fr_FR, de_CH
};

constexpr const char* comma = "units.comma";
constexpr const char* two = "units.ambiguous-number";
constexpr const char* syntax = "units.syntax";
constexpr const char* number = "units.not-a-number";
constexpr const char* kind = "units.wrong-kind";
constexpr const char* unit = "units.unknown-unit";
constexpr const char* missing = "units.missing-unit";
constexpr const char* finite = "units.not-finite";
constexpr const char* zero = "units.divide-by-zero";

const Row rows[] = {
    {"1.5 m", {"1.5", "1.5", "1.5", "1.5", "1.5"}},
    {"1,5 m", {comma, "1.5", "1.5", "1.5", "1.5"}},
    {"0.85 m", {"0.85", "0.85", "0.85", "0.85", "0.85"}},
    {"0,85 m", {comma, "0.85", "0.85", "0.85", "0.85"}},
    {"1.500 m", {"1.5", "1.5", two, two, "1.5"}},
    {"1,500 m", {comma, two, "1.5", "1.5", two}},
    {"0.500 m", {"0.5", "0.5", two, two, "0.5"}},
    {"1.2345 m", {"1.2345", "1.2345", "1.2345", "1.2345", "1.2345"}},
    {"1,2345 m", {comma, "1.2345", "1.2345", "1.2345", "1.2345"}},
    {"1.234,5 m", {comma, two, two, two, two}},
    {"1,234.5 m", {comma, two, two, two, two}},
    {"1.234.567 m", {number, number, two, two, number}},
    {"1,234,567 m", {comma, two, number, number, two}},
    {"1.2.3 m", {number, number, two, two, number}},
    {"12.34 m + 5,5 m", {comma, "17.84", "17.84", "17.84", "17.84"}},
    {"1500 m", {"1500", "1500", "1500", "1500", "1500"}},
    {"1 500 m", {syntax, syntax, syntax, "1500", syntax}},
    {"1\u202f500 m", {"1500", "1500", "1500", "1500", "1500"}},
    {"1\u00a0500 m", {"1500", "1500", "1500", "1500", "1500"}},
    {"1\u2009500\u2009000 mm", {"1500", "1500", "1500", "1500", "1500"}},
    {"1\u202f500,25 m", {comma, "1500.25", "1500.25", "1500.25", "1500.25"}},
    {"1\u202f500.25 m", {"1500.25", "1500.25", "1500.25", "1500.25", "1500.25"}},
    {"1\u202f50 m", {syntax, syntax, syntax, syntax, syntax}},
    {"1500\u202f000 m", {syntax, syntax, syntax, syntax, syntax}},
    {"1\u2019500 m", {syntax, syntax, syntax, syntax, two}},
    {"1'500 mm", {syntax, syntax, syntax, syntax, two}},
    {"1\u2019234.5 m", {syntax, syntax, syntax, syntax, two}},
    {"4' 2\"", {"1.27", "1.27", "1.27", "1.27", "1.27"}},
    {"4\u2019 2\u201d", {"1.27", "1.27", "1.27", "1.27", "1.27"}},
    {"4'2\"", {"1.27", "1.27", "1.27", "1.27", "1.27"}},
    {"1.5e3 mm", {"1.5", "1.5", "1.5", "1.5", "1.5"}},
    {"1,5e3 mm", {comma, "1.5", "1.5", "1.5", "1.5"}},
    {".5 m", {"0.5", "0.5", syntax, syntax, "0.5"}},
    {",5 m", {comma, comma, "0.5", "0.5", comma}},
    {"1. m", {syntax, syntax, syntax, syntax, syntax}},
    {"1, m", {comma, comma, comma, comma, comma}},
    {"1,2 m + 30 cm", {comma, "1.5", "1.5", "1.5", "1.5"}},
    {"2*600 mm", {"1.2", "1.2", "1.2", "1.2", "1.2"}},
    {"2.4 m", {"2.4", "2.4", "2.4", "2.4", "2.4"}},
    {"2400 mm", {"2.4", "2.4", "2.4", "2.4", "2.4"}},
    {"  240cm ", {"2.4", "2.4", "2.4", "2.4", "2.4"}},
    {"4 ft 2 in", {"1.27", "1.27", "1.27", "1.27", "1.27"}},
    {"4 ft 2 1/2 in", {"1.2827", "1.2827", "1.2827", "1.2827", "1.2827"}},
    {"4 1/2 in", {"0.1143", "0.1143", "0.1143", "0.1143", "0.1143"}},
    {"4\u00bd in", {"0.1143", "0.1143", "0.1143", "0.1143", "0.1143"}},
    {"1/2 in", {"0.0127", "0.0127", "0.0127", "0.0127", "0.0127"}},
    {"-4 ft 2 in", {"-1.27", "-1.27", "-1.27", "-1.27", "-1.27"}},
    {"\u22120.15 m", {"-0.15", "-0.15", "-0.15", "-0.15", "-0.15"}},
    {"+0.850 m", {"0.85", "0.85", two, two, "0.85"}},
    {"+0,850 m", {comma, two, "0.85", "0.85", two}},
    {"\u00b10 m", {"0", "0", "0", "0", "0"}},
    {"(1 + 2) * 30 cm", {"0.9", "0.9", "0.9", "0.9", "0.9"}},
    {"3 m / 2", {"1.5", "1.5", "1.5", "1.5", "1.5"}},
    {"6 m2 / 3 m", {"2", "2", "2", "2", "2"}},
    {"1 m - 25 cm", {"0.75", "0.75", "0.75", "0.75", "0.75"}},
    {"1e-3 km", {"1", "1", "1", "1", "1"}},
    {"1.25e1 m", {"12.5", "12.5", "12.5", "12.5", "12.5"}},
    {"1,25e1 m", {comma, "12.5", "12.5", "12.5", "12.5"}},
    {"2 \u00d7 1,5 m", {comma, "3", "3", "3", "3"}},
    {"3 kg", {kind, kind, kind, kind, kind}},
    {"1,5 kg", {comma, kind, kind, kind, kind}},
    {"12", {missing, missing, missing, missing, missing}},
    {"1,5", {comma, missing, missing, missing, missing}},
    {"2 m 3 m", {syntax, syntax, syntax, syntax, syntax}},
    {"5 xy", {unit, unit, unit, unit, unit}},
    {"inf m", {finite, finite, finite, finite, finite}},
    {"1/0 m", {zero, zero, zero, zero, zero}},
    {"2 m;", {syntax, syntax, syntax, syntax, syntax}},
};

std::string cell(const base::Outcome<Length>& outcome)
{
    return outcome ? std::to_string(inMetres(*outcome)) : outcome.refusal().id;
}

} // namespace

TEST(NumberStyle, ReadsOneTableInFiveStyles)
{
    for (const Row& row : rows)
        for (std::size_t i = 0; i < styles().size(); ++i) {
            const auto outcome = parse<Length>(row.text, styles()[i]);
            const std::string expected = row.expected[i];
            if (expected.starts_with("units."))
                EXPECT_EQ(cell(outcome), expected) << row.text << " in style " << i;
            else
                EXPECT_EQ(cell(outcome), std::to_string(std::atof(row.expected[i]))) << row.text << " in style " << i;
        }
}

TEST(NumberStyle, OffersBothReadingsInThePersonsOwnStyle)
{
    const auto german = parse<Length>("1.500 m", styles()[2]);
    ASSERT_FALSE(german);
    EXPECT_EQ(german.refusal().accepts, "write 1500 or 1,5");
    const auto american = parse<Length>("1.234,5 m", styles()[1]);
    ASSERT_FALSE(american);
    EXPECT_EQ(american.refusal().accepts, "write 1234.5 or 1.2345");
    EXPECT_EQ(inMetres(*parse<Length>("1500 m", styles()[2])), 1500.0);
    EXPECT_EQ(inMetres(*parse<Length>("1,5 m", styles()[2])), 1.5);
}

// No style may turn one text into two lengths that differ a thousandfold: it refuses, or all agree.
TEST(NumberStyle, NeverReadsAThousandfoldWrong)
{
    for (const Row& row : rows) {
        double least = 0.0;
        double most = 0.0;
        for (const NumberStyle& style : styles())
            if (const auto outcome = parse<Length>(row.text, style)) {
                const double metres = std::abs(inMetres(*outcome));
                least = least == 0.0 ? metres : std::min(least, metres);
                most = std::max(most, metres);
            }
        EXPECT_LE(most, 999.0 * least) << row.text;
    }
}

TEST(NumberStyle, FallsBackToThePointWhenTheDesktopsMarkIsUnusable)
{
    EXPECT_EQ(NumberStyle::ofDesktop("", "").decimalMark, ".");
    EXPECT_TRUE(NumberStyle::ofDesktop("\u066b", "").isPlainPoint());
    EXPECT_TRUE(NumberStyle::ofDesktop(",", ",").groupMarks.empty());
}

} // namespace sumpwright::units

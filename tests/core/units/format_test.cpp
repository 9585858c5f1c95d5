// Typography after NIST SP 811 chapter 7 and ISO 80000-1: a space between number and unit (none before the degree of
// arc), digits in groups of three set apart by a thin space, a zero before the decimal mark.
#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "core/units/format.hpp"
#include "core/units/measures.hpp"
#include "core/units/parse.hpp"

namespace sumpwright::units
{

namespace
{

constexpr auto us = UnitSystem::us;

template <class Kind> void shows(const Kind& quantity, const char* metric, const char* customary)
{
    EXPECT_EQ(format(quantity), metric);
    EXPECT_EQ(format(quantity, us), customary);
}

} // namespace

TEST(Format, RoundsAsEachKindNeeds)
{
    shows(litresPerHour(2596), "2\u202f596 L/h", "11.4 US gal/min");
    shows(litresPerHour(35.24), "35.2 L/h", "0.155 US gal/min");
    shows(litres(12346), "12\u202f350 L", "3\u202f261 US gal");
    shows(cubicMetres(250), "250 m\u00b3", "66\u202f040 US gal");
    shows(metres(2.4), "2.400 m", "7.87 ft");
    shows(metres(12.3456), "12.35 m", "40.50 ft");
    shows(metres(0.0381), "38.1 mm", "1.50 in");
    shows(metresHead(2.3149), "2.31 m", "7.59 ft");
    shows(pascals(13789.5), "13.8 kPa", "2.00 psi");
    shows(groundPascals(5000), "5.00 kPa", "104 psf");
    shows(kilograms(1040.4), "1\u202f040 kg", "2\u202f294 lb");
    shows(newtons(10200), "10.2 kN", "2\u202f293 lbf");
    shows(celsius(20), "20.0 \u00b0C", "68.0 \u00b0F");
    shows(kelvinDifference(5), "5.00 K", "9.00 \u00b0F");
    shows(kilogramsPerCubicMetre(998.2071), "998.2 kg/m\u00b3", "62.3 lb/ft\u00b3");
    shows(metresPerSecond(0.9871), "0.987 m/s", "3.24 ft/s");
    shows(squareMetres(54), "54.0 m\u00b2", "581 ft\u00b2");
    shows(degrees(30), "30.0\u00b0", "30.0\u00b0");
    shows(metresPerMetre(1.0 / 60.0), "1.67 %", "0.200 in/ft");
    shows(watts(61.34), "61.3 W", "61.3 W");
    shows(kilowattHours(537), "537 kWh", "537 kWh");
    shows(pascalSeconds(1.0016e-3), "1.002 mPa\u00b7s", "1.002 mPa\u00b7s");
    shows(fromSi<TanConcentration>(1.2e-3), "1.20 mg/L N", "1.20 mg/L N");
    shows(fromSi<Moment>(3000), "3.00 kN\u00b7m", "2\u202f213 lbf\u00b7ft");
    shows(hours(2.5), "2 h 30 min", "2 h 30 min");
    shows(seconds(45), "45.0 s", "45.0 s");
}

TEST(Format, GivesLevelsASignAndThreeDecimals)
{
    shows(elevationMetres(0.85), "+0.850 m", "+2.79 ft");
    shows(elevationMetres(-0.15), "\u22120.150 m", "\u22120.49 ft");
    shows(elevationMetres(0), "\u00b10.000 m", "\u00b10.00 ft");
    EXPECT_EQ(format(elevationMetres(-0.0)), "\u00b10.000 m");
    EXPECT_EQ(format(elevationMetres(-0.0004)), "\u00b10.000 m");
    EXPECT_EQ(format(elevationMetres(0.85), UnitSystem::metric, NumberStyle::ofDesktop(",", ".")), "+0,850 m");
}

TEST(Format, NeverShowsNanInfinityOrMinusZero)
{
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const double infinity = std::numeric_limits<double>::infinity();
    EXPECT_EQ(format(metres(nan)), "not computed");
    EXPECT_EQ(format(metres(-infinity)), "not computed");
    EXPECT_EQ(format(elevationMetres(nan)), "not computed");
    EXPECT_EQ(format(fromSi<Energy>(std::numeric_limits<double>::max()), us, NumberStyle::point(), {.unit = "J"}),
              "1.798e308 J");
    EXPECT_EQ(format(metres(1e306), us, NumberStyle::point(), {.unit = "mm"}), "not computed");
    EXPECT_EQ(format(metres(-0.0)), "0 m");
    EXPECT_EQ(format(money(-0.001)), "0.00");
    EXPECT_EQ(formatRatio(nan), "not computed");
    EXPECT_EQ(formatRatio(-0.0), "0");
    EXPECT_EQ(formatPercent(infinity), "not computed");
}

TEST(Format, FollowsTheNumberStyleAndTheLook)
{
    const NumberStyle german = NumberStyle::ofDesktop(",", ".");
    EXPECT_EQ(format(litresPerHour(35.24), UnitSystem::metric, german), "35,2 L/h");
    EXPECT_EQ(format(litresPerHour(2596), UnitSystem::metric, german), "2\u202f596 L/h");
    EXPECT_EQ(format(metres(0.25), UnitSystem::metric, german, {.smallInMillimetres = true}), "250 mm");
    EXPECT_EQ(format(metres(2.4), UnitSystem::metric, german, {.withoutTrailingZeros = true}), "2,4 m");
    EXPECT_EQ(format(metres(2400), UnitSystem::metric, german, {.withoutTrailingZeros = true}), "2\u202f400 m");
    EXPECT_EQ(format(litresPerHour(3000), UnitSystem::metric, german, {.unit = "m3/h"}), "3,00 m3/h");
    EXPECT_EQ(format(metres(2), UnitSystem::metric, german, {.significantDigits = 6, .withoutTrailingZeros = true}),
              "2 m");
    EXPECT_EQ(format(money(1234.5), UnitSystem::metric, german, {.currency = "EUR"}), "1\u202f234,50 EUR");
    EXPECT_EQ(format(perKilowattHour(0.31), UnitSystem::metric, german, {.currency = "EUR"}), "0,310 EUR/kWh");
    EXPECT_EQ(formatRatio(123456), "123\u202f500");
    EXPECT_EQ(formatPercent(0.6134), "61.3 %");
    EXPECT_EQ(shownUnit(litresPerHour(1)), "L/h");
    EXPECT_EQ(shownUnit(litresPerHour(1), us), "US gal/min");
}

TEST(Format, RoundsAcrossPowersOfTen)
{
    EXPECT_EQ(format(litresPerHour(9.996)), "10.0 L/h");
    EXPECT_EQ(format(litresPerHour(999.4)), "999 L/h");
    EXPECT_EQ(format(litresPerHour(999.96)), "1\u202f000 L/h");
    EXPECT_EQ(formatRatio(1.5e-9), "1.50e-9");
    EXPECT_EQ(formatRatio(0.00001234), "0.0000123");
}

// What the screen shows may be typed back: every shown text is read, to the digits shown, in every style.
TEST(Format, WritesWhatTheParserReads)
{
    for (const NumberStyle& style :
         {NumberStyle::point(), NumberStyle::ofDesktop(".", ","), NumberStyle::ofDesktop(",", "."),
          NumberStyle::ofDesktop(",", "\u202f"), NumberStyle::ofDesktop(".", "\u2019")})
        for (const UnitSystem system : {UnitSystem::metric, us})
            for (const double size : {0.0123, 0.77, 1.5, 1234.0, 56789.0, -3.25}) {
                const std::string flow = format(fromSi<Flow>(size * 1e-3), system, style);
                ASSERT_TRUE(parse<Flow>(flow, style)) << flow;
                EXPECT_NEAR(inSi(*parse<Flow>(flow, style)), size * 1e-3, 6e-3 * std::abs(size * 1e-3)) << flow;
                const std::string level = format(elevationMetres(size), system, style);
                ASSERT_TRUE(parse<Elevation>(level, style)) << level;
                EXPECT_NEAR(inMetres(*parse<Elevation>(level, style)), size, 2e-3) << level;
                const std::string moment = format(fromSi<Moment>(size), system, style);
                ASSERT_TRUE(parse<Moment>(moment, style)) << moment;
                const std::string ammonia = format(fromSi<AmmoniaNitrogenConcentration>(std::abs(size)), system, style);
                ASSERT_TRUE(parse<AmmoniaNitrogenConcentration>(ammonia, style)) << ammonia;
            }
}

} // namespace sumpwright::units

// Factors against published values. SP 811: NIST Special Publication 811, 2008 edition, appendix B.8, factors given
// there in bold are exact; the others are held to the digits printed.
#include <gtest/gtest.h>

#include "core/units/format.hpp"
#include "core/units/measures.hpp"
#include "core/units/parse.hpp"

namespace sumpwright::units
{

namespace
{

template <class Kind> double inSiUnits(const char* text)
{
    const auto outcome = parse<Kind>(text);
    EXPECT_TRUE(outcome.ok()) << text << ": " << (outcome ? "" : base::oneLine(outcome.refusal()));
    return outcome ? inSi(*outcome) : 0.0;
}

// Equal to the printed digits: half a unit in the last of `digits` significant digits.
void matches(double value, double printed, int digits)
{
    EXPECT_NEAR(value, printed, 0.5 * std::pow(10.0, std::floor(std::log10(std::abs(printed))) + 1 - digits));
}

} // namespace

TEST(Conversion, LengthsAreExactAfterSp811)
{
    EXPECT_EQ(inSiUnits<Length>("1 in"), 0.0254);
    EXPECT_EQ(inSiUnits<Length>("1 ft"), 0.3048);
    EXPECT_EQ(inSiUnits<Length>("1 yd"), 0.9144);
    EXPECT_EQ(inSiUnits<Length>("1.5 mm"), 0.0015);
    EXPECT_EQ(inSiUnits<Length>("110 mm"), 0.11);
    EXPECT_EQ(inSiUnits<Area>("1 ft2"), 0.09290304);
    EXPECT_EQ(inSiUnits<Area>("1 sq in"), 6.4516e-4);
}

TEST(Conversion, VolumesAndFlowsAfterSp811)
{
    EXPECT_EQ(inSiUnits<Volume>("1 US gal"), 3.785411784e-3); // 231 in3, exact
    EXPECT_EQ(inSiUnits<Volume>("231 in3"), 3.785411784e-3);
    EXPECT_EQ(inSiUnits<Volume>("1 imp gal"), 4.54609e-3);
    EXPECT_EQ(inSiUnits<Volume>("1 cu ft"), 0.028316846592);
    matches(inSiUnits<Flow>("1 US gal/min"), 6.309020e-5, 7);
    matches(inSiUnits<Flow>("1 ft3/s"), 2.831685e-2, 7);
    EXPECT_EQ(inSiUnits<Flow>("3600 L/h"), 1e-3);
}

TEST(Conversion, MassesForcesAndPressuresAfterSp811)
{
    EXPECT_EQ(inSiUnits<Mass>("1 lb"), 0.45359237);
    matches(inSiUnits<Mass>("1 oz"), 2.834952e-2, 7);
    EXPECT_NEAR(inSiUnits<Force>("1 lbf"), 4.4482216152605, 1e-13);
    EXPECT_EQ(inSiUnits<Force>("1 kgf"), 9.80665);
    matches(inSiUnits<Force>("1 kip"), 4.448222e3, 7);
    matches(inSiUnits<Pressure>("1 psi"), 6.894757293168e3, 13);
    matches(inSiUnits<GroundPressure>("1 psf"), 4.788026e1, 7);
    EXPECT_EQ(inSiUnits<Pressure>("1 bar"), 1e5);
    EXPECT_EQ(inSiUnits<Pressure>("1 atm"), 101325.0);
    matches(inSiUnits<LineLoad>("1 lbf/ft"), 1.459390e1, 7);
    matches(inSiUnits<LineLoad>("1 plf"), 1.459390e1, 7);
    matches(inSiUnits<Density>("1 lb/ft3"), 1.601846e1, 7);
    matches(inSiUnits<Density>("1 pcf"), 1.601846e1, 7);
    matches(inSiUnits<Moment>("1 lbf ft"), 1.355818, 7);
    matches(inSiUnits<Moment>("1 lbf in"), 1.129848e-1, 7);
}

// SP 811 prints no lbf/in3; it follows from its lbf and in: 4.4482216152605 / 0.0254^3 = 2.714471e5 N/m3.
TEST(Conversion, SubgradeModulusFollowsFromPoundForceAndInch)
{
    EXPECT_NEAR(inSiUnits<SubgradeModulus>("1 pci"), 4.4482216152605 / (0.0254 * 0.0254 * 0.0254), 1e-9);
    EXPECT_NEAR(inSiUnits<SubgradeModulus>("1 pci"), inSiUnits<SubgradeModulus>("1 psi/in"), 1e-9);
}

TEST(Conversion, TemperaturesEnergiesAndPowersAfterSp811)
{
    EXPECT_EQ(inSiUnits<Temperature>("0 degC"), 273.15);
    EXPECT_NEAR(inSiUnits<Temperature>("212 degF"), 373.15, 1e-12);
    EXPECT_NEAR(inSiUnits<Temperature>("-40 degF"), inSiUnits<Temperature>("-40 degC"), 1e-12);
    EXPECT_NEAR(inSiUnits<TemperatureDifference>("1.8 degF"), 1.0, 1e-15);
    EXPECT_EQ(inSiUnits<Energy>("1 kWh"), 3.6e6);
    matches(inSiUnits<Power>("1 hp"), 7.456999e2, 7);
    EXPECT_EQ(inSiUnits<Velocity>("1 ft/s"), 0.3048);
    matches(inSiUnits<Angle>("1 deg"), 1.745329e-2, 7);
    EXPECT_EQ(inSiUnits<DynamicViscosity>("1 mPa s"), 1e-3);
    EXPECT_EQ(inSiUnits<KinematicViscosity>("1 mm2/s"), 1e-6);
}

TEST(Conversion, MakersAndParserAgreeToTheBit)
{
    EXPECT_EQ(inSiUnits<Length>("0.3 mm"), inSi(millimetres(0.3)));
    EXPECT_EQ(inSiUnits<Volume>("1040 L"), inSi(litres(1040)));
    EXPECT_EQ(inSiUnits<Flow>("2596 L/h"), inSi(litresPerHour(2596)));
    EXPECT_EQ(inSiUnits<Temperature>("18.3 degC"), inSi(celsius(18.3)));
    EXPECT_EQ(inSiUnits<Angle>("30 deg"), inSi(degrees(30)));
    EXPECT_EQ(inSiUnits<EnergyPrice>("0.31 /kWh"), inSi(perKilowattHour(0.31)));
}

TEST(Conversion, ReadsANumberInANamedUnit)
{
    EXPECT_NEAR(inUnit(litresPerHour(3000), "L/h"), 3000.0, 1e-9);
    EXPECT_NEAR(inUnit(metres(1.27), "in"), 50.0, 1e-12);
    EXPECT_NEAR(inUnit(celsius(20), "degF"), 68.0, 1e-12);
    EXPECT_NEAR(inUnit(fromSi<TanConcentration>(1.2e-3), "mg/L"), 1.2, 1e-15);
    EXPECT_THROW(static_cast<void>(inUnit(metres(1), "kg")), base::BrokenPromise);
    EXPECT_THROW(static_cast<void>(inUnit(metres(1), "smoot")), base::BrokenPromise);
    EXPECT_THROW(static_cast<void>(inUnit(metres(1), "m x")), base::BrokenPromise);
}

} // namespace sumpwright::units

// What may be typed for each kind, and what is refused with which id; good and bad rows together. Factors are looked
// at in conversion_test.cpp against their published values; here the same amount is written in two ways.
#include <gtest/gtest.h>

#include <string>

#include "core/units/format.hpp"
#include "core/units/measures.hpp"
#include "core/units/parse.hpp"

namespace sumpwright::units
{

namespace
{

template <class Kind> void reads(const char* text, double expected)
{
    const auto outcome = parse<Kind>(text);
    ASSERT_TRUE(outcome.ok()) << text << ": " << base::oneLine(outcome.refusal());
    EXPECT_NEAR(inSi(*outcome), expected, 1e-12 * std::abs(expected)) << text;
}

template <class Kind> void refuses(const char* text, const char* id)
{
    const auto outcome = parse<Kind>(text);
    ASSERT_FALSE(outcome.ok()) << text << " was read as " << inSi(*outcome);
    EXPECT_EQ(outcome.refusal().id, id) << text << ": " << base::oneLine(outcome.refusal());
    EXPECT_TRUE(outcome.refusal().place.starts_with("character ")) << text;
    EXPECT_FALSE(outcome.refusal().what.empty()) << text;
    EXPECT_FALSE(outcome.refusal().accepts.empty()) << text;
}

} // namespace

TEST(ParseLength, ReadsSumsProductsAndFeet)
{
    reads<Length>("2.4 m", 2.4);
    reads<Length>("2.4m", 2.4);
    reads<Length>("  240 cm ", 2.4);
    reads<Length>("1.2 m + 30 cm", 1.5);
    reads<Length>("1.2 m - 30 cm", 0.9);
    reads<Length>("1.2 m \u2212 30 cm", 0.9);
    reads<Length>("2*600 mm", 1.2);
    reads<Length>("2 \u00d7 600 mm", 1.2);
    reads<Length>("600 mm * 2 + 5 cm", 1.25);
    reads<Length>("(1 + 2) * 30 cm", 0.9);
    reads<Length>("(1 + 2) m", 3.0);
    reads<Length>("3 m / 2", 1.5);
    reads<Length>("6 m2 / 3 m", 2.0);
    reads<Length>("4 ft 2 in", 1.27);
    reads<Length>("4 ft 2 1/2 in", 1.2827);
    reads<Length>("-4 ft 2 in", -1.27);
    reads<Length>("4 1/2 in", 0.1143);
    reads<Length>("4\u00bd in", 0.1143);
    reads<Length>("1/2 in", 0.0127);
    reads<Length>("1 / 2 in", 0.0127);
    reads<Length>("\u00be\u2033", 0.01905);
    reads<Length>("1 m 20 cm", 1.2);
    reads<Length>("150 \u00b5m", 1.5e-4);
    reads<Length>("1e-3 km", 1.0);
    reads<Length>("- - 3 m", 3.0);
}

TEST(ParseLength, RefusesWrongKindsAndNonsense)
{
    refuses<Length>("3 kg", "units.wrong-kind");
    refuses<Length>("2 m2", "units.wrong-kind");
    refuses<Length>("1.2 m + 3 kg", "units.wrong-kind");
    refuses<Length>("2 m * 3 m", "units.wrong-kind");
    refuses<Length>("50 %", "units.wrong-kind");
    refuses<Length>("30 deg", "units.wrong-kind");
    refuses<Length>("12", "units.missing-unit");
    refuses<Length>("0", "units.missing-unit");
    refuses<Length>("1.2 m + 30", "units.missing-unit");
    refuses<Length>("", "units.empty");
    refuses<Length>(" \t\u00a0", "units.empty");
    refuses<Length>("5 furlong", "units.unknown-unit");
    refuses<Length>("5 Mm", "units.unknown-unit");
    refuses<Length>("m", "units.syntax");
    refuses<Length>("1.2 m +", "units.syntax");
    refuses<Length>("* 2 m", "units.syntax");
    refuses<Length>("2 m 3 m", "units.syntax");
    refuses<Length>("2 in 4 ft", "units.syntax");
    refuses<Length>("4 ft 200 mm", "units.syntax");
    refuses<Length>("(2 m", "units.syntax");
    refuses<Length>("2 m)", "units.syntax");
    refuses<Length>("2 m @", "units.syntax");
    refuses<Length>("\u00b12 m", "units.syntax");
    refuses<Length>("1/0 m", "units.divide-by-zero");
    refuses<Length>("2 m / (1 - 1)", "units.divide-by-zero");
    refuses<Length>("1e999 m", "units.not-finite");
    refuses<Length>("1e308 m * 1e308", "units.not-finite");
    refuses<Length>("1e306 km", "units.not-finite");
    refuses<Length>("inf m", "units.not-finite");
    refuses<Length>("nan", "units.not-finite");
    refuses<Length>("2 \xff m", "units.not-utf8");
    refuses<Length>("\xed\xa0\x80", "units.not-utf8");
}

TEST(ParseLength, PointsAtTheCharacterThatIsWrong)
{
    EXPECT_EQ(parse<Length>("1.2 m + 3 kg").refusal().place, "character 11");
    EXPECT_EQ(parse<Length>("3 kg").refusal().place, "character 3");
    EXPECT_EQ(parse<Length>("150 \u00b5m + 5 xy").refusal().place, "character 12");
    EXPECT_EQ(parse<Length>("1 m + 1,5 m").refusal().place, "character 7");
}

TEST(ParseLength, NamesTheAcceptedUnitsThePersonsOwnFirst)
{
    EXPECT_EQ(parse<Length>("3 kg").refusal().accepts, "accepted: m, cm, mm, ft, in");
    Reading us;
    us.typed = UnitSystem::us;
    EXPECT_EQ(parse<Length>("3 kg", NumberStyle::point(), us).refusal().accepts, "accepted: ft, in, m, cm, mm");
    EXPECT_NE(parse<Length>("3 KM").refusal().accepts.find("km (capitals matter)"), std::string::npos);
}

TEST(ParseLength, TakesTheFieldsOwnUnitOnlyWhenAsked)
{
    Reading field;
    field.bareUnit = "mm";
    EXPECT_EQ(inMetres(*parse<Length>("600", NumberStyle::point(), field)), 0.6);
    EXPECT_EQ(inMetres(*parse<Length>("2*600", NumberStyle::point(), field)), 1.2);
    EXPECT_EQ(inMetres(*parse<Length>("2 m", NumberStyle::point(), field)), 2.0);
    EXPECT_EQ(parse<Length>("2 m + 30", NumberStyle::point(), field).refusal().id, "units.missing-unit");
    Reading wrong;
    wrong.bareUnit = "kg";
    EXPECT_THROW(static_cast<void>(parse<Length>("600", NumberStyle::point(), wrong)), base::BrokenPromise);
}

TEST(Parse, SurvivesHostileText)
{
    EXPECT_EQ(parse<Length>(std::string(100000, '(')).refusal().id, "units.too-long");
    EXPECT_EQ(parse<Length>(std::string(200, '(') + "1 m").refusal().id, "units.too-deep");
    EXPECT_EQ(parse<Length>(std::string(200, '-') + "1 m").refusal().id, "units.too-deep");
    EXPECT_EQ(parse<Flow>("1 L/" + std::string(100, '(') + "h").refusal().id, "units.too-deep");
    EXPECT_EQ(parse<Length>(std::string("1 m\0", 4)).refusal().id, "units.syntax");
    EXPECT_EQ(parse<Length>("1 m" + std::string(50, '9') + "999").refusal().id, "units.syntax");
}

TEST(ParseFlow, ReadsUnitsOfTheTradeAndAsksWhichGallon)
{
    reads<Flow>("3000 L/h", 3.0 / 3600.0);
    reads<Flow>("50 l/min", 3.0 / 3600.0);
    reads<Flow>("3 m\u00b3/h", 3.0 / 3600.0);
    reads<Flow>("3 m^3/h", 3.0 / 3600.0);
    reads<Flow>("6 m3 / 2 h", 3.0 / 3600.0);
    reads<Flow>("2 * 1500 L/h", 3.0 / 3600.0);
    reads<Flow>("13 US gal/min", 13 * 3.785411784e-3 / 60.0);
    reads<Flow>("13 US  gpm", 13 * 3.785411784e-3 / 60.0);
    refuses<Flow>("13 gal/min", "units.which-gallon");
    refuses<Flow>("13 gpm", "units.which-gallon");
    refuses<Volume>("gal", "units.which-gallon");
    refuses<Flow>("3000 L", "units.wrong-kind");
    refuses<Flow>("3000 L/", "units.syntax");
    refuses<Flow>("3000 L/(h", "units.syntax");
}

TEST(ParseSlope, ReadsRatiosPercentAndPlainNumbers)
{
    reads<Slope>("1:60", 1.0 / 60.0);
    reads<Slope>("1 : 60", 1.0 / 60.0);
    reads<Slope>("1 in 50", 0.02);
    reads<Slope>("2 %", 0.02);
    reads<Slope>("20 \u2030", 0.02);
    reads<Slope>("0.02", 0.02);
    reads<Slope>("1/50", 0.02);
    reads<Slope>("20 mm/m", 0.02);
    reads<Slope>("1/4 in/ft", 0.25 / 12.0);
    reads<Slope>("-1:60", -1.0 / 60.0);
    refuses<Slope>("1:0", "units.divide-by-zero");
    refuses<Slope>("1:", "units.syntax");
    refuses<Slope>("1:60 m", "units.syntax");
    refuses<Slope>("2 deg", "units.wrong-kind");
    refuses<Slope>("1,5 %", "units.comma");
}

TEST(ParseTime, ReadsPartsSideBySide)
{
    reads<Time>("2 h 30 min", 9000.0);
    reads<Time>("1 d 2 h 30 min 5 s", 95405.0);
    reads<Time>("2.5 hours", 9000.0);
    refuses<Time>("30 min 2 h", "units.syntax");
    refuses<Time>("2 h 30", "units.syntax");
}

TEST(ParseTemperature, KeepsPointsAndDifferencesApart)
{
    reads<Temperature>("20 degC", 293.15);
    reads<Temperature>("20 \u00b0C", 293.15);
    reads<Temperature>("20\u00b0C", 293.15);
    reads<Temperature>("-5 degC", 268.15);
    reads<Temperature>("68 degF", 293.15);
    reads<Temperature>("293.15 K", 293.15);
    reads<Temperature>("20 degC + 5 K", 298.15);
    reads<TemperatureDifference>("5 K", 5.0);
    reads<TemperatureDifference>("9 degF", 5.0);
    reads<TemperatureDifference>("30 degC - 20 degC", 10.0);
    refuses<Temperature>("20 degC + 5 degC", "units.wrong-kind");
    refuses<Temperature>("30 degC * 2", "units.wrong-kind");
    refuses<Temperature>("-300 degC", "units.below-absolute-zero");
    refuses<Temperature>("20", "units.missing-unit");
    refuses<Temperature>("20 C", "units.unknown-unit");
}

TEST(ParseLoads, TellsForcesMassesAndEnergiesApart)
{
    reads<Force>("1.5 kN", 1500.0);
    reads<Mass>("6 lb 4 oz", 6.25 * 0.45359237);
    reads<LineLoad>("2 kN/m", 2000.0);
    reads<Moment>("3 kN m", 3000.0);
    reads<Moment>("3 kN*m", 3000.0);
    reads<Moment>("3 kN\u00b7m", 3000.0);
    reads<GroundPressure>("5 kN/m2", 5000.0);
    reads<SubgradeModulus>("27 MPa/m", 27e6);
    reads<Energy>("1.5 kWh", 5.4e6);
    reads<Energy>("2 W h", 7200.0);
    reads<Power>("60 W", 60.0);
    refuses<Force>("3 kg", "units.wrong-kind");
    refuses<Moment>("5 J", "units.wrong-kind");
    refuses<Energy>("5 N m", "units.wrong-kind");
    refuses<GroundPressure>("500 kg/m2", "units.wrong-kind");
    refuses<Pressure>("3 m", "units.wrong-kind");
    refuses<Head>("30 kPa", "units.wrong-kind");
}

TEST(ParseConcentration, TakesTheBasisOfItsOwnKindOnly)
{
    reads<TanConcentration>("1.2 mg/L N", 1.2e-3);
    reads<TanConcentration>("1.2 mg/L as N", 1.2e-3);
    reads<TanConcentration>("1.2 mg/L", 1.2e-3);
    reads<AmmoniaNitrogenConcentration>("0.02 mg/L NH3-N", 2e-5);
    reads<AmmoniaConcentration>("0.02 mg/L NH3", 2e-5);
    reads<NitrateNitrogenConcentration>("20 mg/L NO\u2083-N", 2e-2);
    reads<AlkalinityConcentration>("80 g/m3 CaCO3", 8e-2);
    reads<OxygenConcentration>("6 mg/L O2", 6e-3);
    refuses<TanConcentration>("1.2 mg/L NH3", "units.wrong-basis");
    refuses<NitrateNitrogenConcentration>("20 mg/L NO3", "units.wrong-basis");
    refuses<AmmoniaConcentration>("1 mg/L N", "units.wrong-basis");
    refuses<Density>("1 mg/L N", "units.wrong-kind");
    refuses<OxygenConcentration>("6 ppm", "units.unknown-unit");
}

TEST(ParseMoney, LooksAtTheCurrency)
{
    reads<Money>("120", 120.0);
    reads<Money>("120 EUR", 120.0);
    reads<EnergyPrice>("0.31 /kWh", 0.31 / 3.6e6);
    reads<EnergyPrice>("0.31 EUR/kWh", 0.31 / 3.6e6);
    reads<EnergyPrice>("310 EUR/MWh", 0.31 / 3.6e6);
    refuses<EnergyPrice>("0.31", "units.missing-unit");
    refuses<Money>("3 kg", "units.wrong-kind");
    Reading plan;
    plan.currency = "EUR";
    EXPECT_TRUE(parse<Money>("5 EUR", NumberStyle::point(), plan));
    EXPECT_EQ(parse<EnergyPrice>("0.31 USD/kWh", NumberStyle::point(), plan).refusal().id, "units.wrong-currency");
    EXPECT_EQ(currencyIn("0.31 EUR/kWh"), "EUR");
    EXPECT_EQ(currencyIn("0.31 /kWh"), "");
}

TEST(ParseRatio, ReadsPlainNumbersOnly)
{
    EXPECT_EQ(*parseRatio("1e5"), 1e5);
    EXPECT_EQ(*parseRatio("0.5"), 0.5);
    EXPECT_EQ(*parseRatio("50 %"), 0.5);
    EXPECT_EQ(*parseRatio("1/4"), 0.25);
    EXPECT_EQ(*parseRatio("0,5", NumberStyle::ofDesktop(",", ".")), 0.5);
    EXPECT_EQ(parseRatio("0.5 m").refusal().id, "units.wrong-kind");
    EXPECT_EQ(parseRatio("-0").value(), 0.0);
    EXPECT_FALSE(std::signbit(parseRatio("-0").value()));
}

TEST(ParseDate, ReadsCalendarDaysOnly)
{
    using namespace std::chrono;
    EXPECT_EQ(*parseDate("2026-04-30"), year(2026) / April / 30);
    EXPECT_EQ(*parseDate("2024-02-29"), year(2024) / February / 29);
    EXPECT_EQ(dateText(*parseDate("2026-04-30")), "2026-04-30");
    for (const char* text :
         {"2026-02-29", "2026-13-01", "2026-4-30", "30.04.2026", "", "2026-04-30T10:00", "20260430", "2026-04-3\xff"})
        EXPECT_EQ(parseDate(text).refusal().id, "units.bad-date") << text;
}

} // namespace sumpwright::units

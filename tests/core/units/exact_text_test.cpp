// Text in files gives every bit back and still reads like something a person wrote.
#include <gtest/gtest.h>

#include <bit>
#include <cstdint>
#include <limits>
#include <random>

#include "core/units/format.hpp"
#include "core/units/measures.hpp"
#include "core/units/parse.hpp"

namespace sumpwright::units
{

namespace
{

template <class Kind> void givesBack(const Kind& quantity, UnitSystem system)
{
    const std::string text = exactText(quantity, system);
    const auto back = parse<Kind>(text);
    ASSERT_TRUE(back.ok()) << text << ": " << base::oneLine(back.refusal());
    ASSERT_EQ(std::bit_cast<std::uint64_t>(inSi(*back)), std::bit_cast<std::uint64_t>(inSi(quantity)))
        << text << " from " << kindName(kindId<Kind>);
}

template <class Kind> void fuzz(int count, std::uint64_t seed)
{
    std::mt19937_64 random(seed);
    std::uniform_real_distribution<double> mantissa(-1.0, 1.0);
    std::uniform_int_distribution<int> exponent(-12, 9);
    for (int i = 0; i < count && !testing::Test::HasFatalFailure(); ++i) {
        double value = mantissa(random) * std::pow(10.0, exponent(random));
        if (kindId<Kind> == KindId::temperature)
            value = std::abs(value);
        givesBack(fromSi<Kind>(value), i % 4 == 0 ? UnitSystem::us : UnitSystem::metric);
    }
}

} // namespace

TEST(ExactText, ReadsLikeAPersonsOwn)
{
    EXPECT_EQ(exactText(metres(2.4)), "2.4 m");
    EXPECT_EQ(exactText(millimetres(1.5)), "1.5 mm");
    EXPECT_EQ(exactText(litresPerHour(3000)), "3000 L/h");
    EXPECT_EQ(exactText(elevationMetres(0.85)), "0.85 m");
    EXPECT_EQ(exactText(elevationMetres(-0.15)), "-0.15 m");
    EXPECT_EQ(exactText(celsius(20)), "20 degC");
    EXPECT_EQ(exactText(celsius(18.3)), "18.3 degC");
    EXPECT_EQ(exactText(degrees(30)), "30 deg");
    EXPECT_EQ(exactText(degrees(-22.5)), "-22.5 deg");
    EXPECT_EQ(exactText(metresPerMetre(1.0 / 60.0)), "1:60");
    EXPECT_EQ(exactText(metresPerMetre(0.02)), "2 %");
    EXPECT_EQ(exactText(litres(350)), "350 L");
    EXPECT_EQ(exactText(kilograms(12.5)), "12.5 kg");
    EXPECT_EQ(exactText(perKilowattHour(0.31)), "0.31 /kWh");
    EXPECT_EQ(exactText(money(120)), "120");
    EXPECT_EQ(exactText(hours(2.5)), "2.5 h");
    EXPECT_EQ(exactText(fromSi<TanConcentration>(1.2 / 1e3)), "1.2 mg/L N");
    EXPECT_EQ(exactText(*parse<Length>("4 ft"), UnitSystem::us), "4 ft");
    EXPECT_EQ(exactText(*parse<Flow>("13 US gal/min"), UnitSystem::us), "13 US gal/min");
    EXPECT_EQ(exactText(metres(2.4), UnitSystem::metric, NumberStyle::ofDesktop(",", ".")), "2,4 m");
    EXPECT_EQ(exactRatioText(0.61), "0.61");
    EXPECT_EQ(exactRatioText(1e5), "100000");
}

TEST(ExactText, WritesMinusZeroAsZeroAndRefusesWhatIsNotFinite)
{
    EXPECT_EQ(exactText(metres(-0.0)), "0 m");
    EXPECT_THROW(static_cast<void>(exactText(metres(std::numeric_limits<double>::quiet_NaN()))), base::BrokenPromise);
    EXPECT_THROW(static_cast<void>(exactText(metres(std::numeric_limits<double>::infinity()))), base::BrokenPromise);
}

TEST(ExactText, GivesExtremesBack)
{
    for (const double value : {1e-300, 1e300, 1.7976931348623157e308, 2.2250738585072014e-308, 1e-7, 123456789012345.6,
                               9007199254740993.0, 0.1 + 0.2, 1.0 / 3.0})
        for (const double sign : {1.0, -1.0}) {
            givesBack(metres(sign * value), UnitSystem::metric);
            givesBack(fromSi<Flow>(sign * value), UnitSystem::us);
            givesBack(metresPerMetre(sign * value), UnitSystem::metric);
        }
}

// 1e5 amounts in all, spread over every kind.
TEST(ExactText, GivesEveryBitBackForEveryKind)
{
    constexpr int each = 100000 / (kindCount - 1) + 1;
#define SUMPWRIGHT_FUZZ(Type, id) fuzz<Type>(each, 7001 + static_cast<std::uint64_t>(KindId::id));
    SUMPWRIGHT_KINDS(SUMPWRIGHT_FUZZ)
#undef SUMPWRIGHT_FUZZ
}

// Whatever tidy amount a person types comes back with no more digits than were typed.
TEST(ExactText, KeepsTidyAmountsTidy)
{
    std::mt19937_64 random(42);
    std::uniform_int_distribution<int> millimetre(1, 20000);
    for (int i = 0; i < 5000; ++i) {
        const int mm = millimetre(random);
        const auto length = parse<Length>(std::to_string(mm) + " mm");
        ASSERT_TRUE(length);
        EXPECT_LE(exactText(*length).size(), std::to_string(mm).size() + 3) << mm;
    }
}

// Nonsense made from the parser's own alphabet is read or refused, never thrown, and a refusal always says where.
TEST(Parse, ReadsOrRefusesAnyTextMadeOfItsOwnAlphabet)
{
    const char* const pieces[] = {"1",      "0",      "2.5",    ",",    ".", "e", "'",  "\"",     "m",
                                  "ft",     "in",     "kg",     " ",    "+", "-", "*",  "/",      "(",
                                  ")",      ":",      "US gal", "degC", "K", "%", "h",  "\u00b5", "\u2019",
                                  "\u202f", "\u00bd", "\u00b0", "^",    "3", "N", "as", "EUR",    "\xff"};
    std::mt19937_64 random(99);
    std::uniform_int_distribution<std::size_t> pick(0, std::size(pieces) - 1);
    std::uniform_int_distribution<int> length(1, 12);
    const NumberStyle german = NumberStyle::ofDesktop(",", ".");
    int read = 0;
    for (int i = 0; i < 20000; ++i) {
        std::string text;
        for (int n = length(random); n > 0; --n)
            text += pieces[pick(random)];
        const auto look = [&](const auto& outcome) {
            read += outcome.ok() ? 1 : 0;
            if (!outcome.ok())
                ASSERT_TRUE(outcome.refusal().place.starts_with("character ")) << text;
            else
                ASSERT_TRUE(std::isfinite(inSi(*outcome))) << text;
        };
        look(parse<Length>(text));
        look(parse<Temperature>(text, german));
        look(parse<Slope>(text));
        look(parse<EnergyPrice>(text));
        look(parse<TanConcentration>(text, german));
    }
    EXPECT_GT(read, 300); // the alphabet does make amounts
}

} // namespace sumpwright::units

#include "core/hydraulics/overflow.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace sumpwright::hydraulics
{
namespace
{

Lip lipOf(double millimetres) { return {units::millimetres(millimetres), 1.0}; }

struct Row {
    double bore;  // mm
    double level; // mm
    double weir;  // L/h
    double drowned;
    double blend;
    double design;
};

// Source: weir and orifice formulas with the stated coefficients and EN 12056-3 (from memory), worked in an
// independent script; tolerance 0.1 %.
TEST(Overflow, FlowsByLevel)
{
    constexpr Row rows[] = {{47.3, 10, 979.2, 1680.9, 952.9, 718.0},    {47.3, 15, 1799.0, 2058.7, 1603.8, 1319.0},
                            {47.3, 20, 2769.7, 2377.1, 2133.0, 2030.7}, {47.3, 30, 5088.3, 2911.4, 2838.2, 2941.0},
                            {96.8, 10, 2004.0, 7040.0, 2000.8, 1469.3}, {96.8, 20, 5668.2, 9956.0, 5528.4, 4155.9}};
    for (const Row& row : rows) {
        const Lip lip = lipOf(row.bore);
        const units::Length level = units::millimetres(row.level);
        EXPECT_NEAR(units::inLitresPerHour(weirFlow(lip, level)) / row.weir, 1.0, 1e-3) << row.level;
        EXPECT_NEAR(units::inLitresPerHour(drownedFlow(lip, level)) / row.drowned, 1.0, 1e-3) << row.level;
        EXPECT_NEAR(units::inLitresPerHour(overflowFlow(lip, level)) / row.blend, 1.0, 1e-3) << row.level;
        EXPECT_NEAR(units::inLitresPerHour(overflowDesignCapacity(lip, level)) / row.design, 1.0, 1e-3) << row.level;
    }
}

// Source: EN 12056-3 formula solved by hand for h: (7500 Q / D)^(2/3); 19.80 mm and 19.50 mm.
TEST(Overflow, DesignLevelByFlow)
{
    EXPECT_NEAR(units::inMillimetres(overflowLevel(lipOf(47.3), units::litresPerHour(2000))->design), 19.80, 0.005);
    EXPECT_NEAR(units::inMillimetres(overflowLevel(lipOf(96.8), units::litresPerHour(4000))->design), 19.50, 0.005);
}

// Where the lip is far from drowned the blend is the plain weir: 4000 L/h over 200 mm stands 9.76 mm high by
// (3 Q / (2 Cd pi D sqrt(2g)))^(2/3); the blend may stand a little higher, never lower.
TEST(Overflow, PredictedLevelNearsTheWeirsOnAWideLip)
{
    const double q = 4000.0 / 3.6e6;
    const double weir =
        std::pow(3.0 * q / (2.0 * 0.62 * units::pi * 0.2 * std::sqrt(2.0 * units::standardGravity)), 2.0 / 3.0);
    const double level = units::inMetres(overflowLevel(lipOf(200), units::litresPerHour(4000))->predicted);
    EXPECT_GE(level, weir);
    EXPECT_NEAR(level / weir, 1.0, 1e-4);
}

TEST(Overflow, LevelIsTheInverseOfFlow)
{
    for (double bore : {12.0, 47.3, 96.8, 290.0})
        for (double lph = 0.1; lph < 60000.0; lph *= 1.9) {
            const auto level = overflowLevel(lipOf(bore), units::litresPerHour(lph));
            EXPECT_NEAR(units::inLitresPerHour(overflowFlow(lipOf(bore), level->predicted)) / lph, 1.0, 1e-12) << bore;
            EXPECT_NEAR(units::inLitresPerHour(overflowDesignCapacity(lipOf(bore), level->design)) / lph, 1.0, 1e-12);
        }
}

TEST(Overflow, BlendRisesWithLevelAndBoreAndStaysBelowBothParts)
{
    for (double bore = 15.0; bore < 290.0; bore += 11.0)
        for (double level = 1.0; level < 2.0 * bore; level += 1.7) {
            const auto flow = [](double d, double h) {
                return units::inLitresPerHour(overflowFlow(lipOf(d), units::millimetres(h)));
            };
            EXPECT_GT(flow(bore, level + 0.1), flow(bore, level));
            EXPECT_GT(flow(bore + 0.1, level), flow(bore, level));
            EXPECT_LT(overflowFlow(lipOf(bore), units::millimetres(level)),
                      weirFlow(lipOf(bore), units::millimetres(level)));
            EXPECT_LT(overflowFlow(lipOf(bore), units::millimetres(level)),
                      drownedFlow(lipOf(bore), units::millimetres(level)));
        }
}

TEST(Overflow, AScreenTakesItsPartOfTheLip)
{
    const units::Length level = units::millimetres(20);
    const Lip half{units::millimetres(47.3), 0.5};
    EXPECT_NEAR(units::inLitresPerHour(overflowFlow(half, level)),
                0.5 * units::inLitresPerHour(overflowFlow(lipOf(47.3), level)), 1e-9);
    EXPECT_NEAR(units::inLitresPerHour(overflowDesignCapacity(half, level)),
                0.5 * units::inLitresPerHour(overflowDesignCapacity(lipOf(47.3), level)), 1e-9);
}

// Source: a worked value in process-engineering notes on gravity overflow: 36 m3/h in 180 mm is J = 0.296.
TEST(Overflow, FroudeNumberOfAPublishedCase)
{
    const double j = pipeFroudeNumber(units::litresPerHour(36000), units::millimetres(180));
    EXPECT_NEAR(j, 0.296, 5e-4);
    EXPECT_EQ(overflowRegimeOf(j), OverflowRegime::Quiet);
}

// By hand from J = V / sqrt(g D): limits 0.3 and 1 in L/h.
TEST(Overflow, LimitsByBore)
{
    constexpr double rows[][3] = {{21.2, 174, 579}, {40.9, 899, 2995}, {57.0, 2060, 6868}, {103.6, 9176, 30588}};
    for (const auto& row : rows) {
        EXPECT_NEAR(units::inLitresPerHour(flowAtFroude(quietFroude, units::millimetres(row[0]))), row[1], 0.51);
        EXPECT_NEAR(units::inLitresPerHour(flowAtFroude(siphoningFroude, units::millimetres(row[0]))), row[2], 0.51);
    }
    EXPECT_EQ(overflowRegimeOf(0.46), OverflowRegime::Gurgling);
    EXPECT_EQ(overflowRegimeOf(1.01), OverflowRegime::Siphoning);
}

TEST(Overflow, DryLipAndLevelsBelowIt)
{
    EXPECT_EQ(units::inLitresPerHour(overflowFlow(lipOf(50), units::millimetres(0))), 0.0);
    EXPECT_EQ(units::inLitresPerHour(overflowFlow(lipOf(50), units::millimetres(-5))), 0.0);
    EXPECT_EQ(units::inMillimetres(overflowLevel(lipOf(50), units::Flow())->predicted), 0.0);
}

TEST(Overflow, SaysWhenTheLevelLeavesItsRange)
{
    EXPECT_TRUE(overflowLevel(lipOf(20), units::litresPerHour(500))->inRange);
    EXPECT_FALSE(overflowLevel(lipOf(20), units::litresPerHour(2000))->inRange);
}

TEST(Overflow, RefusesWhatIsNoOverflow)
{
    const auto refusal = [](Lip lip, double lph) {
        const auto level = overflowLevel(lip, units::litresPerHour(lph));
        return level.ok() ? std::string() : level.refusal().id + " " + level.refusal().place;
    };
    EXPECT_EQ(refusal(lipOf(50), -1), "hydraulics.negative flow");
    EXPECT_EQ(refusal(lipOf(50), std::nan("")), "hydraulics.negative flow");
    EXPECT_EQ(refusal(lipOf(5), 100), "hydraulics.bore-out-of-range bore");
    EXPECT_EQ(refusal(lipOf(400), 100), "hydraulics.bore-out-of-range bore");
    EXPECT_EQ(refusal({units::millimetres(50), 0.0}, 100), "hydraulics.open-fraction-out-of-range open_fraction");
    EXPECT_EQ(refusal(lipOf(50), 100), "");
}

} // namespace
} // namespace sumpwright::hydraulics

#include "core/hydraulics/round_channel.hpp"

#include <gtest/gtest.h>

#include <cmath>

#include "core/base/ensure.hpp"

namespace sumpwright::hydraulics
{
namespace
{

constexpr double g = units::standardGravity;

// Source: plain geometry of the circle, half full and brim full; a depth beyond either end counts as that end.
TEST(RoundChannel, SectionsOfAHalfAndAFullBore)
{
    const units::Length bore = units::metres(0.1);
    const WaterSection half = sectionAt(bore, units::metres(0.05));
    EXPECT_NEAR(units::inSquareMetres(half.area), units::pi / 800.0, 1e-16);
    EXPECT_NEAR(units::inMetres(half.surfaceWidth), 0.1, 1e-15);
    EXPECT_NEAR(units::inMetres(half.wettedPerimeter), units::pi / 20.0, 1e-15);
    for (double depth : {0.1, 0.3}) {
        const WaterSection full = sectionAt(bore, units::metres(depth));
        EXPECT_NEAR(units::inSquareMetres(full.area), units::pi / 400.0, 1e-16);
        EXPECT_NEAR(units::inMetres(full.surfaceWidth), 0.0, 1e-15);
        EXPECT_NEAR(units::inMetres(full.wettedPerimeter), units::pi / 10.0, 1e-15);
    }
    for (double depth : {0.0, -0.02})
        EXPECT_EQ(units::inSquareMetres(sectionAt(bore, units::metres(depth)).area), 0.0);
}

// The area's derivative is the width, the perimeter's 1/sqrt(y/D (1 - y/D)), down to a thin film.
TEST(RoundChannel, AreaGrowsByTheWidthOfTheSurface)
{
    const units::Length bore = units::metres(0.05);
    const auto area = [&](double y) { return units::inSquareMetres(sectionAt(bore, units::metres(y)).area); };
    for (double fill = 1e-6; fill < 0.999; fill = fill * 1.3 + 1e-6) {
        const double y = 0.05 * fill;
        const double step = 1e-4 * std::min(y, 0.05 - y);
        const double width = units::inMetres(sectionAt(bore, units::metres(y)).surfaceWidth);
        EXPECT_NEAR((area(y + step) - area(y - step)) / (2.0 * step) / width, 1.0, 2e-7) << fill;
    }
}

// Source: flow^2/g = A^3/T and the specific energy yc + V^2/2g worked exactly in an independent script, ratios to
// the bore.
TEST(RoundChannel, CriticalDepthAndLevelInRatiosToTheBore)
{
    constexpr double rows[][3] = {{0.1, 0.010669, 0.134063}, {0.2, 0.041808, 0.269890}, {0.3, 0.092147, 0.408110},
                                  {0.4, 0.160530, 0.549710}, {0.5, 0.246088, 0.696350}, {0.6, 0.348672, 0.851087},
                                  {0.7, 0.470048, 1.020360}, {0.8, 0.618064, 1.220984}, {0.9, 0.829357, 1.520436}};
    for (const double d : {0.02, 0.1036, 0.3})
        for (const auto& row : rows) {
            const units::Flow flow = units::cubicMetresPerSecond(row[1] * std::sqrt(g * d) * d * d);
            const units::Length bore = units::metres(d);
            EXPECT_NEAR(units::inMetres(criticalDepth(bore, flow)) / d, row[0], 3e-5) << row[0];
            EXPECT_NEAR(units::inMetres(criticalLevel(bore, flow, 0.0)) / d, row[2], 6e-5) << row[0];
        }
}

// Source: Straub's rule for round channels, yc = 1.01 (Q^2/g)^0.25 / D^0.26 (1978, from memory; metres), made for
// sewers: within 5 % for bores of 0.3 to 1.5 m and depths of 0.2 to 0.85 of the bore.
TEST(RoundChannel, CriticalDepthIsNearStraubsRule)
{
    for (double d = 0.3; d < 1.51; d += 0.2)
        for (double fill = 0.2; fill < 0.85; fill += 0.05) {
            const WaterSection section = sectionAt(units::metres(d), units::metres(fill * d));
            const double area = units::inSquareMetres(section.area);
            const double q = std::sqrt(g * std::pow(area, 3) / units::inMetres(section.surfaceWidth));
            const double rule = 1.01 / std::pow(d, 0.26) * std::pow(q * q / g, 0.25);
            EXPECT_NEAR(units::inMetres(criticalDepth(units::metres(d), units::cubicMetresPerSecond(q))) / rule, 1.0,
                        0.05)
                << d << " " << fill;
        }
}

TEST(RoundChannel, CriticalDepthHoldsItsEquationFromADropToASpout)
{
    for (const double d : {0.012, 0.0473, 0.1036, 1.0})
        for (double number = 1e-9; number < 1.6; number *= 1.37) {
            const double q = number * std::sqrt(g * d) * d * d;
            const units::Length depth = criticalDepth(units::metres(d), units::cubicMetresPerSecond(q));
            const WaterSection section = sectionAt(units::metres(d), depth);
            const double area = units::inSquareMetres(section.area);
            EXPECT_NEAR(std::pow(area, 3) / units::inMetres(section.surfaceWidth) / (q * q / g), 1.0, 2e-11) << number;
            EXPECT_LT(depth, units::metres(d));
        }
}

TEST(RoundChannel, CriticalDepthAndLevelRiseWithFlow)
{
    const units::Length bore = units::millimetres(57.0);
    units::Length depth;
    units::Length level;
    for (double lph = 0.01; lph < 1e6; lph *= 1.11) {
        const units::Length nextDepth = criticalDepth(bore, units::litresPerHour(lph));
        const units::Length nextLevel = criticalLevel(bore, units::litresPerHour(lph), 0.5);
        EXPECT_GE(nextDepth, depth);
        EXPECT_LT(nextDepth, bore);
        EXPECT_GT(nextLevel, level);
        depth = nextDepth;
        level = nextLevel;
    }
}

TEST(RoundChannel, NoFlowHasNoDepthAndNoHugeFlowFillsTheBore)
{
    const units::Length bore = units::metres(0.05);
    EXPECT_EQ(units::inMetres(criticalDepth(bore, units::Flow())), 0.0);
    EXPECT_EQ(units::inMetres(criticalDepth(bore, units::litresPerHour(-50.0))), 0.0);
    EXPECT_EQ(units::inMetres(criticalLevel(bore, units::Flow(), 0.5)), 0.0);
    EXPECT_LT(criticalDepth(bore, units::cubicMetresPerSecond(1e30)), bore);
    EXPECT_TRUE(std::isfinite(units::inMetres(criticalDepth(bore, units::cubicMetresPerSecond(1e-300)))));
    EXPECT_EQ(units::inMetres(criticalDepth(bore, units::cubicMetresPerSecond(std::nan("")))), 0.0);
}

TEST(RoundChannel, ABoreOfNothingIsABrokenPromise)
{
    EXPECT_THROW(criticalDepth(units::Length(), units::litresPerHour(10.0)), base::BrokenPromise);
    EXPECT_THROW(criticalLevel(units::metres(0.1), units::litresPerHour(10.0), -1.0), base::BrokenPromise);
}

} // namespace
} // namespace sumpwright::hydraulics

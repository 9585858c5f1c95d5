#include "core/hydraulics/sloping_drain.hpp"

#include <gtest/gtest.h>

#include <cmath>

#include "core/base/ensure.hpp"
#include "core/hydraulics/friction.hpp"
#include "core/hydraulics/round_channel.hpp"

namespace sumpwright::hydraulics
{
namespace
{

units::Slope percent(double fall) { return units::metresPerMetre(fall / 100.0); }

struct Ratios {
    double fill;
    double flow;
    double velocity;
};

Ratios ratiosToFull(double fill)
{
    const units::Length bore = units::metres(0.1);
    const units::Flow flow = normalFlow(bore, fill * bore, percent(1), 0.01);
    const units::Flow full = fullFlow(bore, percent(1), 0.01);
    return {fill, flow / full, drainVelocity(flow, bore, fill * bore) / meanVelocity(full, bore)};
}

// Source: geometry of the circle in Manning's formula, worked in an independent script; flow and velocity to those of a
// full bore. Greatest flow and greatest velocity are the well-known 1.0757 and 1.1400.
TEST(SlopingDrain, RatiosToAFullBore)
{
    constexpr Ratios rows[] = {{0.2, 0.08757, 0.61506}, {0.25, 0.13698, 0.70067}, {0.3, 0.19583, 0.77614},
                               {0.5, 0.5, 1.0},         {0.6, 0.67184, 1.07242},  {0.7, 0.83724, 1.11977},
                               {0.8, 0.97747, 1.13974}};
    for (const Ratios& row : rows) {
        const Ratios own = ratiosToFull(row.fill);
        EXPECT_NEAR(own.flow, row.flow, 5e-6) << row.fill;
        EXPECT_NEAR(own.velocity, row.velocity, 5e-6) << row.fill;
    }
    EXPECT_NEAR(ratiosToFull(0.9382).flow, 1.0757, 5e-5);
    EXPECT_NEAR(ratiosToFull(0.8128).velocity, 1.1400, 5e-5);
}

// Source: US National Standard Plumbing Code 2009, Appendix K: multipliers of the half-full flow and velocity.
TEST(SlopingDrain, MultipliersOfThePlumbingCode)
{
    constexpr Ratios rows[] = {{0.25, 0.274, 0.701}, {0.75, 1.82, 1.13}, {1.0, 2.00, 1.00}};
    for (const Ratios& row : rows) {
        const Ratios own = ratiosToFull(row.fill);
        EXPECT_NEAR(own.flow / 0.5, row.flow, 0.006) << row.fill;
        EXPECT_NEAR(own.velocity, row.velocity, 0.006) << row.fill;
    }
}

// Source: Manning's formula worked in an independent script, half full: bore mm, fall %, n, L/s, m/s; tolerance 0.1 %.
TEST(SlopingDrain, HalfFullFlows)
{
    constexpr double rows[][5] = {{103.6, 1, 0.009, 4.0996, 0.9727},   {103.6, 1, 0.011, 3.3542, 0.7958},
                                  {47.3, 2, 0.009, 0.7166, 0.8156},    {77.9, 1.04, 0.009, 1.9546, 0.8202},
                                  {52.5, 2.08, 0.009, 0.9651, 0.8916}, {102.3, 1.04, 0.009, 4.0423, 0.9836}};
    for (const auto& row : rows) {
        const units::Length bore = units::millimetres(row[0]);
        const units::Flow flow = normalFlow(bore, 0.5 * bore, percent(row[1]), row[2]);
        EXPECT_NEAR(1e3 * units::inCubicMetresPerSecond(flow) / row[3], 1.0, 1e-3) << row[0];
        EXPECT_NEAR(units::inMetresPerSecond(drainVelocity(flow, bore, 0.5 * bore)) / row[4], 1.0, 1e-3) << row[0];
    }
}

// The flow at a wall of this roughness by Darcy and Colebrook: Manning's n that stands for the same wall is
// R^(1/6) sqrt(f / (8 g)) with its friction factor f on four times the hydraulic radius R.
units::Flow flowByColebrook(units::Length bore, double fill, units::Slope fall, double roughness, double viscosity)
{
    const WaterSection section = sectionAt(bore, fill * bore);
    const double radius = units::inSquareMetres(section.area) / units::inMetres(section.wettedPerimeter);
    double n = 0.012;
    units::Flow flow;
    for (int round = 0; round < 40; ++round) {
        flow = normalFlow(bore, fill * bore, fall, n);
        const double velocity = units::inMetresPerSecond(drainVelocity(flow, bore, fill * bore));
        const double f = frictionFactor(4.0 * radius * velocity / viscosity, roughness / (4.0 * radius));
        n = std::pow(radius, 1.0 / 6.0) * std::sqrt(f / (8.0 * units::standardGravity));
    }
    return flow;
}

// Source: EN 12056-2 annex B (from memory): capacities of drains in L/s at 50 % and 70 % fill by the minimum bores
// 96 and 146 mm, with Colebrook's formula, 1.0 mm and 1.31e-6 m2/s. Tolerance: rounding of the table and 2 %.
TEST(SlopingDrain, CapacitiesOfTheDrainageStandard)
{
    constexpr double rows[][4] = {{96, 0.5, 0.5, 1.8},  {96, 0.5, 1.0, 2.5}, {96, 0.5, 1.5, 3.1},  {96, 0.5, 2.0, 3.5},
                                  {146, 0.5, 1.0, 7.7}, {96, 0.7, 1.0, 4.2}, {146, 0.7, 1.0, 12.8}};
    for (const auto& row : rows) {
        const units::Flow flow = flowByColebrook(units::millimetres(row[0]), row[1], percent(row[2]), 1e-3, 1.31e-6);
        EXPECT_NEAR(1e3 * units::inCubicMetresPerSecond(flow), row[3], 0.05 + 0.02 * row[3]) << row[0] << " " << row[2];
    }
}

// Source: Crane TP-410, example 7-26, as quoted with the fluids library: a cast iron pipe of 24 in, two thirds full, on
// a slope of 0.75 in/ft, relative roughness 0.00036, water at 60 degF: 24 500 US gallons a minute. Tolerance 1 %.
TEST(SlopingDrain, PipeTwoThirdsFullOfTheCraneHandbook)
{
    const units::Length bore = units::millimetres(24.0 * 25.4);
    const double radius = units::inSquareMetres(sectionAt(bore, 2.0 / 3.0 * bore).area) /
                          units::inMetres(sectionAt(bore, 2.0 / 3.0 * bore).wettedPerimeter);
    const units::Flow flow =
        flowByColebrook(bore, 2.0 / 3.0, percent(100.0 * 0.75 / 12.0), 0.00036 * 4.0 * radius, 1.1e-3 / 998.97);
    EXPECT_NEAR(units::inCubicMetresPerSecond(flow) / (24500.0 * 3.785411784e-3 / 60.0), 1.0, 0.01);
}

// Source: the same script: normal depths; tolerance of the printed digits.
TEST(SlopingDrain, NormalDepths)
{
    const auto big = normalDepth(units::millimetres(103.6), units::litresPerHour(2000), percent(1), 0.009);
    ASSERT_TRUE(big);
    EXPECT_NEAR(units::inMillimetres(*big), 18.27, 0.01);
    EXPECT_NEAR(units::inMetresPerSecond(drainVelocity(units::litresPerHour(2000), units::millimetres(103.6), *big)),
                0.555, 1e-3);
    const units::Length bore = units::millimetres(47.3);
    constexpr double rows[][3] = {{2000, 0.4322, 0.764}, {4000, 0.6614, 0.901}};
    for (const auto& row : rows) {
        const auto depth = normalDepth(bore, units::litresPerHour(row[0]), percent(2), 0.009);
        ASSERT_TRUE(depth);
        EXPECT_NEAR(*depth / bore, row[1], 1e-4);
        EXPECT_NEAR(units::inMetresPerSecond(drainVelocity(units::litresPerHour(row[0]), bore, *depth)), row[2], 1e-3);
    }
}

TEST(SlopingDrain, DepthIsTheInverseOfFlowAndTheSmallest)
{
    for (const double bore : {16.0, 57.0, 150.0})
        for (const double fall : {1e-4, 0.5, 2.0, 40.0}) {
            const units::Flow full = fullFlow(units::millimetres(bore), percent(fall), 0.009);
            for (double part = 1e-12; part <= 1.0; part *= 1.7) {
                const auto depth = normalDepth(units::millimetres(bore), part * full, percent(fall), 0.009);
                ASSERT_TRUE(depth);
                EXPECT_LT(*depth / units::millimetres(bore), 0.8197);
                EXPECT_NEAR(normalFlow(units::millimetres(bore), *depth, percent(fall), 0.009) / (part * full), 1.0,
                            1e-11)
                    << part;
            }
            const auto brim = normalDepth(units::millimetres(bore), full, percent(fall), 0.009);
            ASSERT_TRUE(brim);
            EXPECT_NEAR(*brim / units::millimetres(bore), 0.8196, 1e-3);
        }
}

TEST(SlopingDrain, FlowRisesWithDepthUpToTheDepthOfTheMost)
{
    units::Flow last;
    for (double fill = 0.001; fill < 0.938; fill += 0.001) {
        const units::Flow flow = normalFlow(units::metres(0.1), units::metres(0.1 * fill), percent(1), 0.009);
        EXPECT_GT(flow, last) << fill;
        last = flow;
    }
    EXPECT_LT(fullFlow(units::metres(0.1), percent(1), 0.009), last);
}

TEST(SlopingDrain, HasNoDepthForTooMuchWaterOrNoFall)
{
    const units::Length bore = units::millimetres(50);
    const units::Flow full = fullFlow(bore, percent(1), 0.009);
    EXPECT_FALSE(normalDepth(bore, 1.0001 * full, percent(1), 0.009));
    EXPECT_FALSE(normalDepth(bore, units::litresPerHour(1), percent(0), 0.009));
    EXPECT_FALSE(normalDepth(bore, units::litresPerHour(1), percent(-1), 0.009));
    EXPECT_FALSE(normalDepth(bore, units::cubicMetresPerSecond(std::nan("")), percent(1), 0.009));
    EXPECT_EQ(units::inMetres(*normalDepth(bore, units::Flow(), percent(1), 0.009)), 0.0);
    EXPECT_EQ(units::inMetres(*normalDepth(bore, units::litresPerHour(-5), percent(1), 0.009)), 0.0);
    EXPECT_EQ(units::inLitresPerHour(fullFlow(bore, percent(-1), 0.009)), 0.0);
    EXPECT_THROW(fullFlow(units::Length(), percent(1), 0.009), base::BrokenPromise);
    EXPECT_THROW(fullFlow(bore, percent(1), 0.0), base::BrokenPromise);
}

TEST(SlopingDrain, FallNeededCarriesTheFlowAtTheFill)
{
    const units::Length bore = units::millimetres(57);
    for (const double fill : {0.1, 0.5, 0.7, 1.0})
        for (double lph = 10.0; lph < 20000.0; lph *= 2.3) {
            const units::Slope fall = fallNeeded(bore, units::litresPerHour(lph), fill, 0.009);
            EXPECT_NEAR(units::inLitresPerHour(normalFlow(bore, fill * bore, fall, 0.009)) / lph, 1.0, 1e-12);
        }
    EXPECT_EQ(units::inMetresPerMetre(fallNeeded(bore, units::Flow(), 0.5, 0.009)), 0.0);
    EXPECT_THROW(fallNeeded(bore, units::litresPerHour(10), 0.0, 0.009), base::BrokenPromise);
}

TEST(SlopingDrain, SaysWhetherItKeepsItselfClean)
{
    EXPECT_EQ(selfCleansingAt(units::metresPerSecond(0.29)), SelfCleansing::Settles);
    EXPECT_EQ(selfCleansingAt(units::metresPerSecond(0.3)), SelfCleansing::Doubtful);
    EXPECT_EQ(selfCleansingAt(units::metresPerSecond(0.49)), SelfCleansing::Doubtful);
    EXPECT_EQ(selfCleansingAt(units::metresPerSecond(0.5)), SelfCleansing::Cleans);
}

TEST(SlopingDrain, SaysHowFullItRuns)
{
    EXPECT_EQ(drainFillAt(0.5), DrainFill::Designed);
    EXPECT_EQ(drainFillAt(0.51), DrainFill::Ample);
    EXPECT_EQ(drainFillAt(0.71), DrainFill::High);
    EXPECT_EQ(drainFillAt(0.94), DrainFill::Surcharged);
}

} // namespace
} // namespace sumpwright::hydraulics

#include "core/hydraulics/side_outlet.hpp"

#include <gtest/gtest.h>

#include <cmath>

#include "core/base/ensure.hpp"
#include "core/hydraulics/round_channel.hpp"

namespace sumpwright::hydraulics
{
namespace
{

// Source: critical depth and level yc + 1.5 V^2/2g worked in an independent script; tolerance 0.5 %.
TEST(SideOutlet, DepthAndLevelByFlow)
{
    constexpr double rows[][4] = {
        {2000, 47.3, 29.05, 47.5}, {2000, 103.6, 23.02, 35.2}, {8000, 103.6, 47.13, 74.3}, {3000, 52.5, 34.75, 57.7}};
    for (const auto& row : rows) {
        const SideOutletFlow out = sideOutletFlow(units::millimetres(row[1]), units::litresPerHour(row[0]));
        EXPECT_NEAR(units::inMillimetres(out.criticalDepth) / row[2], 1.0, 5e-3);
        EXPECT_NEAR(units::inMillimetres(out.levelOverInvert) / row[3], 1.0, 5e-3);
        EXPECT_FALSE(out.drowned);
    }
}

// Plain energy: the water upstream stands one velocity head and the entry's loss above the critical depth.
TEST(SideOutlet, LevelIsDepthAndVelocityHeads)
{
    const SideOutletFlow out = sideOutletFlow(units::millimetres(57.0), units::litresPerHour(1700.0), 0.8);
    const double v = units::inMetresPerSecond(out.velocity);
    EXPECT_NEAR(units::inMetres(out.levelOverInvert),
                units::inMetres(out.criticalDepth) + 1.8 * v * v / (2.0 * units::standardGravity), 1e-12);
    const double area = units::inSquareMetres(sectionAt(units::millimetres(57.0), out.criticalDepth).area);
    EXPECT_NEAR(v * area * 3.6e6, 1700.0, 1e-6);
}

// By hand: 50 mm bore running full at 6 m3/h: V = 0.84883 m/s, V^2/2g = 36.736 mm; 25 + 1.5 * 36.736 = 80.10 mm.
TEST(SideOutlet, ADrownedOutletRunsFull)
{
    const SideOutletFlow out = sideOutletFlow(units::millimetres(50.0), units::litresPerHour(6000.0));
    EXPECT_TRUE(out.drowned);
    EXPECT_NEAR(units::inMetresPerSecond(out.velocity), 0.84883, 5e-6);
    EXPECT_NEAR(units::inMillimetres(out.levelOverInvert), 80.10, 5e-3);
}

TEST(SideOutlet, LevelIsContinuousAndNeverFallsWithFlow)
{
    for (const double entryK : {0.0, 0.5, 1.0, 3.0})
        for (const double bore : {16.0, 47.3, 103.6}) {
            units::Length level;
            bool drowned = false;
            double last = 0.0;
            for (double lph = 1.0; lph < 3e5; lph *= 1.001) {
                const SideOutletFlow out = sideOutletFlow(units::millimetres(bore), units::litresPerHour(lph), entryK);
                EXPECT_GE(out.levelOverInvert, level) << lph;
                EXPECT_LE(out.levelOverInvert, 1.01 * level + units::millimetres(last == 0.0 ? bore : 0.0)) << lph;
                EXPECT_TRUE(out.drowned || !drowned) << lph;
                level = out.levelOverInvert;
                drowned = out.drowned;
                last = lph;
            }
            EXPECT_TRUE(drowned);
        }
}

TEST(SideOutlet, WaitsAtTheLimitWhileTheBoreFills)
{
    const units::Length bore = units::millimetres(50.0);
    const units::Length limit = freeEntryLimit * bore;
    const SideOutletFlow out = sideOutletFlow(bore, units::litresPerHour(4500.0));
    EXPECT_TRUE(out.drowned);
    EXPECT_EQ(out.levelOverInvert, limit);
    EXPECT_GT(sideOutletCapacity(bore, limit), units::litresPerHour(4500.0));
    EXPECT_LT(sideOutletCapacity(bore, 0.999 * limit), units::litresPerHour(4500.0));
}

TEST(SideOutlet, CapacityIsTheInverseOfTheLevel)
{
    for (const double entryK : {0.0, 0.5, 2.0})
        for (const double bore : {16.0, 57.0, 150.0})
            for (double ratio = 1e-4; ratio < 20.0; ratio *= 1.17) {
                const units::Length level = ratio * units::millimetres(bore);
                const units::Flow flow = sideOutletCapacity(units::millimetres(bore), level, entryK);
                const SideOutletFlow back = sideOutletFlow(units::millimetres(bore), flow, entryK);
                EXPECT_NEAR(back.levelOverInvert / level, 1.0, 1e-10) << bore << " " << ratio;
                EXPECT_EQ(back.drowned, ratio >= freeEntryLimit);
            }
}

TEST(SideOutlet, ABluntEntryStandsHigherAndCarriesLess)
{
    const units::Length bore = units::millimetres(57.0);
    for (double lph = 10.0; lph < 30000.0; lph *= 1.5)
        EXPECT_GE(sideOutletFlow(bore, units::litresPerHour(lph), 0.8).levelOverInvert,
                  sideOutletFlow(bore, units::litresPerHour(lph), 0.5).levelOverInvert);
    for (double mm = 1.0; mm < 300.0; mm *= 1.5)
        EXPECT_LT(sideOutletCapacity(bore, units::millimetres(mm), 0.8),
                  sideOutletCapacity(bore, units::millimetres(mm), 0.5));
}

TEST(SideOutlet, NothingFlowsFromALevelBelowTheInvert)
{
    const units::Length bore = units::millimetres(50.0);
    EXPECT_EQ(units::inLitresPerHour(sideOutletCapacity(bore, units::millimetres(-3.0))), 0.0);
    EXPECT_EQ(units::inLitresPerHour(sideOutletCapacity(bore, units::Length())), 0.0);
    const SideOutletFlow still = sideOutletFlow(bore, units::litresPerHour(-10.0));
    EXPECT_EQ(units::inMetres(still.levelOverInvert), 0.0);
    EXPECT_EQ(units::inMetresPerSecond(still.velocity), 0.0);
    EXPECT_FALSE(still.drowned);
    EXPECT_TRUE(
        std::isfinite(units::inMetresPerSecond(sideOutletFlow(bore, units::cubicMetresPerSecond(1e-300)).velocity)));
    EXPECT_THROW(sideOutletCapacity(units::Length(), bore), base::BrokenPromise);
}

} // namespace
} // namespace sumpwright::hydraulics

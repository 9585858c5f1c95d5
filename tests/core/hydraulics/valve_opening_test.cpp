#include "core/hydraulics/valve_opening.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace sumpwright::hydraulics
{
namespace
{

double atDegrees(ThrottleKind kind, double closed) { return throttlingLoss(kind, 1.0 - closed / 90.0)->added; }

// Source: Weisbach's table of the plug cock, degrees closed against K, from memory.
TEST(ValveOpening, BallFollowsTheTable)
{
    constexpr double rows[][2] = {{5, 0.05}, {20, 1.56}, {40, 17.3}, {60, 206}, {65, 486}};
    for (const auto& row : rows)
        EXPECT_NEAR(atDegrees(ThrottleKind::Ball, row[0]) / row[1], 1.0, 1e-9) << row[0];
}

// Source: a curve fitted to measured plug cocks, 0.1224 e^(0.1238 deg) - 0.4784 e^(-0.1827 deg), seen in public code.
TEST(ValveOpening, BallAgreesWithAFittedCurve)
{
    for (double degree = 25.0; degree <= 65.0; degree += 2.5) {
        const double fitted = 0.1224 * std::exp(0.1238 * degree) - 0.4784 * std::exp(-0.1827 * degree);
        EXPECT_NEAR(atDegrees(ThrottleKind::Ball, degree) / fitted, 1.0, 0.3) << degree;
    }
}

// Source: Weisbach's tables of the gate (part of the lift closed) and the butterfly (degrees), from memory.
TEST(ValveOpening, GateAndButterflyFollowTheirTables)
{
    constexpr double gate[][2] = {{0.125, 0.07}, {0.5, 2.06}, {0.875, 97.8}};
    for (const auto& row : gate)
        EXPECT_NEAR(throttlingLoss(ThrottleKind::Gate, 1.0 - row[0])->added / row[1], 1.0, 1e-9);
    constexpr double butterfly[][2] = {{5, 0.24}, {40, 10.8}, {70, 751}};
    for (const auto& row : butterfly)
        EXPECT_NEAR(atDegrees(ThrottleKind::Butterfly, row[0]) / row[1], 1.0, 1e-9);
}

// ln K is straight between rows: half way between 40 and 45 degrees K is sqrt(17.3 x 31.2) = 23.23.
TEST(ValveOpening, IsGeometricBetweenRows)
{
    EXPECT_NEAR(atDegrees(ThrottleKind::Ball, 42.5), std::sqrt(17.3 * 31.2), 1e-9);
    EXPECT_NEAR(atDegrees(ThrottleKind::Ball, 2.5), 0.025, 1e-12);
    EXPECT_EQ(throttlingLoss(ThrottleKind::Ball, 1.0)->added, 0.0);
}

TEST(ValveOpening, ClosingAlwaysAddsLossUntilShut)
{
    for (ThrottleKind kind : {ThrottleKind::Ball, ThrottleKind::Gate, ThrottleKind::Butterfly}) {
        double before = -1.0;
        bool shut = false;
        for (int step = 0; step <= 1000; ++step) {
            const ValveLoss loss = *throttlingLoss(kind, 1.0 - step / 1000.0);
            EXPECT_FALSE(shut && !loss.closed);
            shut = loss.closed;
            if (!shut) {
                EXPECT_GT(loss.added, before) << step;
            }
            before = loss.added;
        }
        EXPECT_TRUE(shut);
    }
}

TEST(ValveOpening, SaysWhereTheTableEnds)
{
    EXPECT_FALSE(throttlingLoss(ThrottleKind::Ball, 1.0 - 65.0 / 90.0)->extrapolated);
    EXPECT_TRUE(throttlingLoss(ThrottleKind::Ball, 1.0 - 70.0 / 90.0)->extrapolated);
    EXPECT_TRUE(throttlingLoss(ThrottleKind::Ball, 1.0 - 80.0 / 90.0)->closed);
    EXPECT_FALSE(throttlingLoss(ThrottleKind::Ball, 1.0 - 79.9 / 90.0)->closed);
    EXPECT_TRUE(throttlingLoss(ThrottleKind::Gate, 0.05)->closed);
    EXPECT_TRUE(throttlingLoss(ThrottleKind::Butterfly, 0.0)->closed);
}

TEST(ValveOpening, RefusesOpeningsThatAreNoPart)
{
    for (double opening : {-0.01, 1.01, std::nan("")}) {
        const auto loss = throttlingLoss(ThrottleKind::Ball, opening);
        ASSERT_FALSE(loss.ok());
        EXPECT_EQ(loss.refusal().id, "hydraulics.opening-out-of-range");
        EXPECT_EQ(loss.refusal().place, "opening");
    }
}

TEST(ValveOpening, OnlyValvesThrottle)
{
    EXPECT_EQ(throttleOf(FittingKind::BallValve), ThrottleKind::Ball);
    EXPECT_EQ(throttleOf(FittingKind::GateValve), ThrottleKind::Gate);
    EXPECT_EQ(throttleOf(FittingKind::BallValveReduced), ThrottleKind::Ball);
    EXPECT_EQ(throttleOf(FittingKind::ButterflyValve), ThrottleKind::Butterfly);
    EXPECT_FALSE(throttleOf(FittingKind::Elbow90).has_value());
    EXPECT_FALSE(throttleOf(FittingKind::GlobeValve).has_value());
}

} // namespace
} // namespace sumpwright::hydraulics

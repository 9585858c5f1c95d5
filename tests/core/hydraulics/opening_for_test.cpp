// Reading the valve tables backwards. Source of the K: Weisbach's tables, from memory, as in valve_opening.hpp.
#include <gtest/gtest.h>

#include "core/hydraulics/opening_for.hpp"

using namespace sumpwright::hydraulics;

namespace
{

constexpr ThrottleKind kinds[] = {ThrottleKind::Ball, ThrottleKind::Gate, ThrottleKind::Butterfly};

}

TEST(OpeningFor, MeetsTheRowsOfThePublishedTables)
{
    EXPECT_NEAR(90.0 * (1.0 - openingFor(ThrottleKind::Ball, 17.3)), 40.0, 1e-6); // degrees closed
    EXPECT_NEAR(90.0 * (1.0 - openingFor(ThrottleKind::Ball, 206.0)), 60.0, 1e-6);
    EXPECT_NEAR(1.0 - openingFor(ThrottleKind::Gate, 2.06), 0.5, 1e-9); // part of the lift closed
    EXPECT_NEAR(90.0 * (1.0 - openingFor(ThrottleKind::Butterfly, 32.6)), 50.0, 1e-6);
}

TEST(OpeningFor, IsTheThrottlingLossReadBackwards)
{
    for (const ThrottleKind kind : kinds)
        for (double added = 0.01; added < mostAdded(kind); added *= 1.7)
            EXPECT_NEAR(throttlingLoss(kind, openingFor(kind, added))->added / added, 1.0, 1e-9);
}

TEST(OpeningFor, StaysOpenHoweverMuchIsAsked)
{
    for (const ThrottleKind kind : kinds) {
        EXPECT_EQ(openingFor(kind, 0.0), 1.0);
        EXPECT_EQ(openingFor(kind, -3.0), 1.0);
        EXPECT_EQ(openingFor(kind, 1e12), leastOpening(kind));
        EXPECT_FALSE(throttlingLoss(kind, leastOpening(kind))->closed);
        EXPECT_TRUE(throttlingLoss(kind, leastOpening(kind) - 2e-4)->closed);
    }
}

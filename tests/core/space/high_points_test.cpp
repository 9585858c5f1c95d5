// Where air stays in a run.
#include "core/space/high_points.hpp"

#include <gtest/gtest.h>

#include "tests/core/space/bodies.hpp"

namespace
{

using namespace sumpwright;
using namespace sumpwright::test;

TEST(HighPoints, NameVertexHeightAndTheWayBehind)
{
    const auto points =
        space::highPointsOf(pipe(1, 0.02, {{0, 0, 0}, {0, 0, 1}, {1, 0, 1}, {1, 0, 0.4}, {3, 0, 0.4}}), true);
    ASSERT_EQ(points.size(), 1U);
    EXPECT_EQ(points[0].vertex, 1U);
    EXPECT_NEAR(units::inMetres(points[0].height), 0.6, 1e-12);
    EXPECT_NEAR(units::inRadians(points[0].steepest), units::pi / 2.0, 1e-12);
    EXPECT_TRUE(points[0].fallsToEnd);
}

TEST(HighPoints, TurnWithTheWater)
{
    const auto body = pipe(1, 0.02, {{0, 0, 0}, {0, 0, 1}, {1, 0, 1}, {2, 0, 0.4}, {3, 0, 0.9}});
    ASSERT_EQ(space::highPointsOf(body, true).size(), 1U);
    EXPECT_FALSE(space::highPointsOf(body, true)[0].fallsToEnd);
    const auto back = space::highPointsOf(body, false);
    ASSERT_EQ(back.size(), 1U);
    EXPECT_EQ(back[0].vertex, 2U);
    EXPECT_TRUE(back[0].fallsToEnd);
}

TEST(HighPoints, AreNotSeenInARunThatOnlyRisesFallsOrWavesALittle)
{
    EXPECT_TRUE(space::highPointsOf(pipe(1, 0.02, {{0, 0, 0}, {0, 0, 1}, {5, 0, 1}}), true).empty());
    EXPECT_TRUE(space::highPointsOf(pipe(1, 0.02, {{0, 0, 1}, {5, 0, 0.9}, {5, 0, 0}}), true).empty());
    EXPECT_TRUE(space::highPointsOf(pipe(1, 0.02, {{0, 0, 0}, {1, 0, 0.015}, {2, 0, 0}}), true).empty());
    EXPECT_TRUE(space::highPointsOf(pipe(1, 0.02, {{0, 0, 0}, {0, 0, 0}}), true).empty());
}

TEST(HighPoints, AreEachTold)
{
    const auto body = pipe(1, 0.02, {{0, 0, 0}, {1, 0, 0.5}, {2, 0, 0.1}, {3, 0, 0.9}, {4, 0, 0.2}});
    ASSERT_EQ(space::highPointsOf(body, true).size(), 2U);
    EXPECT_NEAR(units::inMetres(space::highPointsOf(body, true)[0].height), 0.4, 1e-12);
}

} // namespace

// What runs go through: vessels, walls, ceiling and floor. Expected by plain geometry.
#include "core/space/passages.hpp"

#include <gtest/gtest.h>

#include "tests/core/space/bodies.hpp"

namespace
{

using namespace sumpwright;
using namespace sumpwright::test;

const Id tankId{50};

// Two metres square about the origin, from 0.2 to 1.2 m.
space::Outline tank()
{
    plan::Vessel vessel;
    vessel.id = tankId;
    vessel.shape = plan::RectangleShape{units::metres(2.0), units::metres(2.0)};
    vessel.baseLevel = units::elevationMetres(0.2);
    vessel.wallHeight = units::metres(1.0);
    return space::footprintOf(vessel);
}

space::PipeBody meeting(space::PipeBody body, int ends)
{
    for (int i = 0; i < ends; ++i)
        body.ends[static_cast<std::size_t>(i)].owner = tankId;
    return body;
}

TEST(Passages, TellWhereARunGoesThroughAVesselItDoesNotMeet)
{
    const auto through = space::passageThrough(pipe(1, 0.02, {{-3, 0, 0.5}, {3, 0, 0.5}}), tank());
    ASSERT_TRUE(through);
    EXPECT_NEAR(units::inMetres(through->at.at.x), -1.015, 1e-9); // the pipe's outside, less what only touches
    EXPECT_NEAR(units::inMetres(through->length), 2.03, 1e-9);
    EXPECT_NEAR(units::inMetres(through->at.level), 0.5, 1e-9);
}

TEST(Passages, LeaveARunAloneOverTheRimBelowTheBottomAndAlongTheWall)
{
    EXPECT_FALSE(space::passageThrough(pipe(1, 0.02, {{-3, 0, 1.22}, {3, 0, 1.22}}), tank()));
    EXPECT_FALSE(space::passageThrough(pipe(1, 0.02, {{-3, 0, 0.18}, {3, 0, 0.18}}), tank()));
    EXPECT_FALSE(space::passageThrough(pipe(1, 0.02, {{-3, 1.018, 0.5}, {3, 1.018, 0.5}}), tank()));
    EXPECT_TRUE(space::passageThrough(pipe(1, 0.02, {{-3, 1.01, 0.5}, {3, 1.01, 0.5}}), tank()));
}

TEST(Passages, AllowOneWallForEachEndThatMeetsTheVessel)
{
    const auto drain = pipe(1, 0.02, {{0, 0, 1.1}, {0, 0, 0.1}, {3, 0, 0.05}}); // a standpipe through the bottom
    EXPECT_FALSE(space::passageThrough(meeting(drain, 1), tank()));
    EXPECT_TRUE(space::passageThrough(drain, tank()));
    // In, out again and back in to its port.
    const auto thrice = pipe(1, 0.02, {{-3, 0, 0.5}, {3, 0, 0.5}, {3, 0.5, 0.5}, {0, 0.5, 0.5}});
    EXPECT_TRUE(space::passageThrough(meeting(thrice, 1), tank()));
    const auto loop = pipe(1, 0.02, {{0, 0, 0.5}, {3, 0, 0.5}, {3, 0.5, 0.5}, {0, 0.5, 0.5}});
    EXPECT_FALSE(space::passageThrough(meeting(loop, 2), tank()));
}

TEST(Passages, AllowARunOverTheRimIntoItsOwnVessel)
{
    const auto over = pipe(1, 0.02, {{3, 0, 0.3}, {3, 0, 1.4}, {0.8, 0, 1.4}, {0.8, 0, 1.1}});
    EXPECT_FALSE(space::passageThrough(meeting(over, 1), tank()));
}

TEST(Passages, TellOfWallsAndPosts)
{
    plan::Fixture wall;
    wall.id = Id{60};
    wall.from = {units::metres(0.0), units::metres(-5.0)};
    wall.to = {units::metres(0.0), units::metres(5.0)};
    wall.size = units::metres(0.2);
    wall.height = units::metres(2.4);
    const auto outline = space::footprintOf(wall);
    const auto through = space::passageThrough(pipe(1, 0.02, {{-1, 0, 1}, {1, 0, 1}}), outline, units::Length());
    ASSERT_TRUE(through);
    EXPECT_NEAR(units::inMetres(through->length), 0.2, 1e-9);
    EXPECT_FALSE(space::passageThrough(pipe(1, 0.02, {{-1, 0, 2.5}, {1, 0, 2.5}}), outline, units::Length()));
    wall.to = wall.from; // no wall at all
    EXPECT_FALSE(
        space::passageThrough(pipe(1, 0.02, {{-1, -5, 1}, {1, -5, 1}}), space::footprintOf(wall), units::Length()));
}

plan::Floor floorOf(double fallToRight)
{
    plan::Floor floor;
    for (const auto& [x, y] : {std::pair{-10, -10}, {10, -10}, {10, 10}, {-10, 10}})
        floor.outline.push_back({units::metres(x), units::metres(y)});
    floor.fall = units::metresPerMetre(fallToRight);
    floor.clearHeight = units::metres(2.0);
    return floor;
}

TEST(Passages, TellHowFarAPipeReachesOverTheCeilingWithTheFloorsFall)
{
    const auto level = pipe(1, 0.02, {{0, 0, 1.9}, {8, 0, 1.9}});
    EXPECT_FALSE(space::aboveCeiling(level, floorOf(0.0)));
    const auto beyond = space::aboveCeiling(level, floorOf(0.02)); // the ceiling falls with the floor: 1.84 at 8 m
    ASSERT_TRUE(beyond);
    EXPECT_NEAR(units::inMetres(beyond->by), 0.08, 1e-9);
    EXPECT_FALSE(space::aboveCeiling(pipe(1, 0.02, {{20, 0, 5}, {30, 0, 5}}), floorOf(0.0))) << "outside";
}

TEST(Passages, TellHowDeepAPipeLiesBelowTheFloorButNotInAPit)
{
    const auto low = pipe(1, 0.02, {{-8, 0, 0.03}, {8, 0, 0.03}});
    EXPECT_FALSE(space::belowFloor(low, floorOf(0.0), {}));
    const auto deep = space::belowFloor(low, floorOf(0.02), {}); // the floor lies at +0.16 at -8 m
    ASSERT_TRUE(deep);
    EXPECT_NEAR(units::inMetres(deep->by), 0.15, 1e-9);
    space::Outline sunk = tank();
    sunk.base = units::elevationMetres(-0.8);
    const auto riser = pipe(2, 0.02, {{0, 0, -0.6}, {0, 0, 0.3}, {4, 0, 0.3}});
    EXPECT_TRUE(space::belowFloor(riser, floorOf(0.0), {}));
    EXPECT_FALSE(space::belowFloor(riser, floorOf(0.0), {sunk}));
    const auto out = space::belowFloor(pipe(2, 0.02, {{0, 0, -0.1}, {4, 0, -0.05}}), floorOf(0.0), {sunk});
    ASSERT_TRUE(out) << "beside the pit it lies in the floor";
    EXPECT_NEAR(units::inMetres(out->by), 0.1056, 0.0005); // 1.17 m from the middle: pit 0.15 m and the pipe's radius
}

} // namespace

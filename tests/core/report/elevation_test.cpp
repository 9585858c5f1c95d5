// The front elevation against geometry worked out by hand.
#include <gtest/gtest.h>

#include "core/report/elevation.hpp"
#include "tests/core/report/assessed.hpp"

using namespace sumpwright;
using report::FrontElevation;

namespace
{

double m(units::Length length) { return units::inMetres(length); }
double m(units::Elevation level) { return units::inMetres(level); }

FrontElevation elevationOf(const test::DrawnPlan& drawn)
{
    return report::elevationOf(drawn.plan, nullptr, catalogue::Catalogue::builtIn().get());
}

const report::VesselProfile& vessel(const FrontElevation& elevation, base::Id id)
{
    return *std::find_if(elevation.vessels.begin(), elevation.vessels.end(),
                         [id](const auto& v) { return v.id == id; });
}

} // namespace

TEST(FrontElevation, ShowsAVesselWhereItStandsInPlanAndAtItsLevels)
{
    const test::SoundPlan sound;
    const auto tank = vessel(elevationOf(sound.drawn), sound.tank);
    EXPECT_NEAR(m(tank.left), 1.0 - 0.606, 1e-12); // inside 1.2 m, walls of 6 mm
    EXPECT_NEAR(m(tank.right), 1.0 + 0.606, 1e-12);
    EXPECT_NEAR(m(tank.base), 0.0, 1e-12);
    EXPECT_NEAR(m(tank.bottom), 0.006, 1e-12);
    EXPECT_NEAR(m(tank.rim), 0.906, 1e-12);
    ASSERT_EQ(tank.ports.size(), 2U);
    EXPECT_NEAR(m(tank.ports[1].along), 0.7, 1e-12);
    EXPECT_NEAR(m(tank.ports[1].level), 0.8, 1e-12);
    EXPECT_NEAR(m(tank.ports[1].bore), 0.0638, 1e-12);
}

TEST(FrontElevation, ShowsATurnedVesselByTheWidthItTurnsToTheView)
{
    test::SoundPlan sound;
    sound.drawn.changeVessel(sound.tank, [](plan::Vessel& v) {
        v.shape = plan::RectangleShape{units::metres(1.2), units::metres(0.5)};
        v.turn = units::degrees(90.0);
    });
    const auto tank = vessel(elevationOf(sound.drawn), sound.tank);
    EXPECT_NEAR(m(tank.left), 0.75, 1e-12);
    EXPECT_NEAR(m(tank.right), 1.25, 1e-12);
}

TEST(FrontElevation, DrawsTheFarthestFirst)
{
    const test::SoundPlan sound;
    const auto elevation = elevationOf(sound.drawn);
    std::vector<base::Id> order;
    for (const auto& each : elevation.vessels)
        order.push_back(each.id);
    // Nearest sides at y = 2.994, 2.894, 0.794 and 0.594 m.
    EXPECT_EQ(order, (std::vector<base::Id>{sound.bed2, sound.tank, sound.bed1, sound.sump}));
}

TEST(FrontElevation, PutsTheLegsOfAStandWhereThePlanHasThem)
{
    const test::SoundPlan sound;
    const auto bed = vessel(elevationOf(sound.drawn), sound.bed1);
    ASSERT_EQ(bed.legs.size(), 6U); // three along 1.212 m, in pairs, pads of 0.1 m inside the outline
    EXPECT_NEAR(m(bed.legs[0]), 3.0 - 0.556, 1e-12);
    EXPECT_NEAR(m(bed.legs[2]), 3.0, 1e-12);
    EXPECT_NEAR(m(bed.legs[5]), 3.0 + 0.556, 1e-12);
    ASSERT_TRUE(bed.mediumTop);
    EXPECT_NEAR(m(*bed.mediumTop), 0.706 + 0.3, 1e-12);
}

TEST(FrontElevation, ProjectsPipesWithTheirTrueOutsideDiameter)
{
    const test::SoundPlan sound;
    const auto elevation = elevationOf(sound.drawn);
    const auto header = std::find_if(elevation.runs.begin(), elevation.runs.end(),
                                     [&](const auto& run) { return run.id == sound.header; });
    ASSERT_NE(header, elevation.runs.end());
    EXPECT_NEAR(m(header->pipe.outside), 0.032, 1e-12);
    ASSERT_EQ(header->centre.size(), 2U);
    EXPECT_NEAR(m(header->centre[1].along), 3.0, 1e-12);
    EXPECT_NEAR(m(header->centre[1].level), 1.2, 1e-12);
}

TEST(FrontElevation, DrawsAPipeTheCatalogueDoesNotHave)
{
    test::SoundPlan sound;
    sound.drawn.changeRun(sound.header, [](plan::Run& run) { run.pipeId = "no-such-pipe"; });
    const auto elevation = elevationOf(sound.drawn);
    for (const auto& run : elevation.runs)
        if (run.id == sound.header) {
            EXPECT_NEAR(m(run.pipe.outside), 0.032, 1e-12);
        }
}

TEST(FrontElevation, DrawsTheFloorsNearEdgeWithItsFall)
{
    test::SoundPlan sound;
    auto floor = *sound.drawn.plan.floor;
    floor.fall = units::metresPerMetre(0.01); // towards +x
    sound.drawn.plan.floor = std::make_shared<const plan::Floor>(floor);
    const auto elevation = elevationOf(sound.drawn);
    ASSERT_TRUE(elevation.floor);
    EXPECT_NEAR(m(elevation.floor->first.level), 0.0, 1e-12);
    EXPECT_NEAR(m(elevation.floor->second.along), 6.0, 1e-12);
    EXPECT_NEAR(m(elevation.floor->second.level), -0.06, 1e-12);
}

TEST(FrontElevation, ShowsAWallByItsLengthAcrossAndItsThicknessAlongTheView)
{
    test::DrawnPlan drawn;
    plan::Fixture wall;
    wall.id = {drawn.plan.nextId++};
    wall.to = {units::metres(4.0), units::metres(0.0)};
    wall.height = units::metres(2.0);
    drawn.plan.fixtures = drawn.plan.fixtures.with(wall);
    EXPECT_NEAR(m(elevationOf(drawn).fixtures[0].left), 0.0, 1e-12);
    EXPECT_NEAR(m(elevationOf(drawn).fixtures[0].right), 4.0, 1e-12);
    EXPECT_NEAR(m(elevationOf(drawn).fixtures[0].top), 2.0, 1e-12);
    wall.to = {units::metres(0.0), units::metres(4.0)};
    drawn.plan.fixtures = drawn.plan.fixtures.with(wall);
    EXPECT_NEAR(m(elevationOf(drawn).fixtures[0].left), -0.05, 1e-12);
    EXPECT_NEAR(m(elevationOf(drawn).fixtures[0].right), 0.05, 1e-12);
}

TEST(FrontElevation, TakesWaterLevelsFromTheResultsAndNoneWithoutThem)
{
    const test::SoundPlan sound;
    const auto results = test::assessed(sound.drawn);
    const auto with = report::elevationOf(sound.drawn.plan, &results, results.catalogue.get());
    const auto water = vessel(with, sound.sump).water;
    ASSERT_TRUE(water.most);
    EXPECT_NEAR(m(*water.most), 0.35, 1e-9); // the level entered
    ASSERT_TRUE(water.least && water.stopped && water.freeBoard);
    EXPECT_LT(m(*water.least), 0.35);
    EXPECT_GT(m(*water.stopped), 0.35);
    EXPECT_NEAR(m(*water.freeBoard), 0.606 - 0.35, 1e-9);
    EXPECT_FALSE(vessel(elevationOf(sound.drawn), sound.sump).water.least);
}

TEST(FrontElevation, OfAnEmptyPlanIsEmpty)
{
    const auto elevation = elevationOf(test::DrawnPlan());
    EXPECT_TRUE(elevation.vessels.empty());
    EXPECT_EQ(m(elevation.low.along), 0.0);
    EXPECT_EQ(m(elevation.high.level), 0.0);
}

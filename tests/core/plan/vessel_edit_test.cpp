#include <gtest/gtest.h>

#include "tests/support/edited_plan.hpp"

using namespace sumpwright;
using namespace sumpwright::plan;
using test::at;

TEST(SetShape, KeepsPortsAndPumpsInProportion)
{
    test::SmallSystem system;
    const Point pump = system.plan.pumps.find(system.pump)->offset;
    system.apply(setShape({system.sump}, RectangleShape{units::metres(2.4), units::metres(0.4)}));
    EXPECT_NEAR(units::inMetres(system.plan.pumps.find(system.pump)->offset.x), 2 * units::inMetres(pump.x), 1e-9);
    system.apply(setShape({system.sump, system.bedA}, RoundShape{units::metres(1.1)}));
    EXPECT_EQ(system.vesselOf(system.bedA).shape, Shape(RoundShape{units::metres(1.1)}));
}

TEST(SetShape, CarriesRunsThatMeetItsPorts)
{
    test::SmallSystem system;
    const Point before = system.runOf(system.drainA).vertices.front().at;
    system.apply(setShape({system.bedA}, RectangleShape{units::metres(1.0), units::metres(1.0)}));
    const Point after = system.runOf(system.drainA).vertices.front().at;
    EXPECT_NEAR(units::inMetres(after.x), 4.9, 1e-9);
    EXPECT_NE(before, after);
    EXPECT_EQ(system.runOf(system.drainA).vertices[1].at, after); // the drop under it stays a drop
}

TEST(ResizeVessel, SetsSizeAndCentreInOneStep)
{
    test::SmallSystem system;
    system.apply(resizeVessel(system.tank, RoundShape{units::metres(1.8)}, at(1.7, 7.2)));
    EXPECT_EQ(system.vesselOf(system.tank).centre, at(1.7, 7.2));
    EXPECT_EQ(frameOf(system.vesselOf(system.tank).shape).length, units::metres(1.8));
}

TEST(SizeEdits, RefuseWhatCannotBeBuilt)
{
    const test::SmallSystem system;
    const auto metres = [](double v) { return units::metres(v); };
    EXPECT_EQ(system.refusalOf(setWallHeight({system.tank}, metres(0.7))), "plan.lip-above-rim");
    EXPECT_EQ(system.refusalOf(setWallHeight({system.bedA}, metres(-1))), "plan.out-of-range");
    EXPECT_EQ(system.refusalOf(setWallThickness({system.bedA}, metres(0.5))), "plan.wall-too-thick");
    EXPECT_EQ(system.refusalOf(setWallThickness({system.bedA}, metres(0))), "plan.out-of-range");
    EXPECT_EQ(system.refusalOf(setShape({system.bedA}, RoundShape{metres(0)})), "plan.out-of-range");
    EXPECT_EQ(system.refusalOf(setShape({system.bedA}, RoundShape{metres(std::nan(""))})), "plan.not-finite");
    EXPECT_EQ(system.refusalOf(setBaseLevel({system.bedA}, units::elevationMetres(101))), "plan.out-of-range");
}

TEST(SizeEdits, SayWhereWhatAndHowToMend)
{
    const test::SmallSystem system;
    const auto refusal = setWallThickness({system.bedA}, units::metres(0.5)).apply(system.plan).refusal();
    EXPECT_EQ(refusal.place, "B1, wall thickness");
    EXPECT_NE(refusal.what.find("leaves no inside"), std::string::npos);
    EXPECT_FALSE(refusal.accepts.empty());
}

TEST(VesselKind, DropsWhatOnlyItsOldKindHas)
{
    test::SmallSystem system;
    system.apply(setVesselKind({system.sump, system.bedA}, VesselKind::raftBed));
    EXPECT_FALSE(system.vesselOf(system.sump).runningLevel);
    EXPECT_FALSE(system.vesselOf(system.bedA).medium);
}

TEST(Content, IsSetOnManyAndRefusedWhereItDoesNotBelong)
{
    test::SmallSystem system;
    const Medium gravel{"river-gravel", units::metres(0.28)};
    system.apply(setMedium({system.bedA, system.bedB}, gravel));
    EXPECT_EQ(system.vesselOf(system.bedB).medium, gravel);
    EXPECT_EQ(system.refusalOf(setMedium({system.tank}, gravel)), "plan.not-a-media-bed");
    EXPECT_EQ(system.refusalOf(setMedium({system.bedA}, Medium{"river-gravel", units::metres(0.41)})),
              "plan.medium-above-rim");
    EXPECT_EQ(system.refusalOf(setMedium({system.bedA}, Medium{"", units::metres(0.2)})), "plan.text-missing");
    EXPECT_EQ(system.refusalOf(setRunningLevel({system.tank}, units::elevationMetres(0.3))), "plan.not-a-sump");
    EXPECT_EQ(system.refusalOf(setRunningLevel({system.sump}, units::elevationMetres(0.7))),
              "plan.level-outside-vessel");
    system.apply(setRunningLevel({system.sump}, units::elevationMetres(0.35)));
    system.apply(setMeasuredTare({system.tank}, units::kilograms(61)));
    EXPECT_EQ(system.refusalOf(setMeasuredTare({system.tank}, units::kilograms(-1))), "plan.out-of-range");
    Stand blocks;
    blocks.kind = StandKind::blocks;
    blocks.legCount = 0;
    EXPECT_EQ(system.refusalOf(setStand({system.bedA}, blocks)), "plan.out-of-range");
    system.apply(setStand({system.bedA}, std::nullopt));
}

TEST(Edits, LeaveThePlanTheyWereGivenAsItWas)
{
    const test::SmallSystem system;
    const Plan copy = system.plan;
    ASSERT_TRUE(setWallHeight({system.tank}, units::metres(1)).apply(system.plan).ok());
    ASSERT_FALSE(setWallHeight({system.tank}, units::metres(-1)).apply(system.plan).ok());
    EXPECT_TRUE(copy == system.plan);
    EXPECT_EQ(copy.nextId, system.plan.nextId);
}

TEST(Edits, OfOnePropertyOnManyRefuseAllWhenOneCannot)
{
    const test::SmallSystem system; // beds of 0.4 m could, the tank with its lip at 0.79 m cannot
    EXPECT_EQ(system.refusalOf(setWallHeight({system.bedA, system.tank}, units::metres(0.5))), "plan.lip-above-rim");
}

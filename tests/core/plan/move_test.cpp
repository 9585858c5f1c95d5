#include <gtest/gtest.h>

#include "tests/support/edited_plan.hpp"

using namespace sumpwright;
using namespace sumpwright::plan;
using test::at;
using test::vertex;

namespace
{

// A tank whose overflow drops, runs level and is led to a sump's inlet.
struct Drained : test::EditedPlan {
    base::Id tank = vessel(VesselKind::fishTank, 0, 0);
    base::Id sump = vessel(VesselKind::sump, 5, 0);
    base::Id drain = run(lip(tank), inlet(sump), {vertex(0.56, 0, 0.7), vertex(4.52, 0, 0.7)}, Service::gravity);
    double level(std::size_t i) const { return units::inMetres(runOf(drain).vertices[i].level); }
    Point place(std::size_t i) const { return runOf(drain).vertices[i].at; }
};

} // namespace

TEST(Move, CarriesPumpsAndRunEndsAndKeepsVerticalsVertical)
{
    Drained drawn;
    ASSERT_EQ(drawn.runOf(drawn.drain).vertices.size(), 4u);
    drawn.apply(moveElements({drawn.tank}, at(0.3, 1.0)));
    EXPECT_EQ(drawn.place(0), at(0.86, 1.0));
    EXPECT_EQ(drawn.place(1), at(0.86, 1.0));
    EXPECT_EQ(drawn.place(2), at(4.52, 0));
    test::SmallSystem system;
    system.apply(moveElements({system.sump}, at(0.2, -0.1)));
    EXPECT_NEAR(units::inMetres(anchorOf(system.plan, system.pump).x), 1.5, 1e-12);
}

TEST(Move, OfBothEndsMovesTheRunWhole)
{
    Drained drawn;
    const plan::Run before = drawn.runOf(drawn.drain);
    drawn.apply(moveElements({drawn.tank, drawn.sump}, at(1, 2)));
    for (std::size_t i = 0; i < before.vertices.size(); ++i)
        EXPECT_EQ(drawn.place(i), before.vertices[i].at + at(1, 2));
}

TEST(Move, OfARunLeavesItsHeldEndsAndTakesTheRest)
{
    test::EditedPlan drawn;
    const base::Id tank = drawn.vessel(VesselKind::fishTank, 0, 0);
    const base::Id id =
        drawn.run(drawn.lip(tank), Nowhere{}, {vertex(0.56, 0, 0.5), vertex(3, 0, 0.5), vertex(3, 3, 0.5)});
    const Point end = drawn.runOf(id).vertices[0].at;
    drawn.apply(moveElements({id}, at(0, 1)));
    EXPECT_EQ(drawn.runOf(id).vertices[0].at, end);
    EXPECT_EQ(drawn.runOf(id).vertices[1].at, end);
    EXPECT_EQ(drawn.runOf(id).vertices[2].at, at(3, 1));
    EXPECT_EQ(drawn.runOf(id).vertices[3].at, at(3, 4));
}

TEST(Move, ToItsOwnPlaceChangesNothing)
{
    const Drained drawn;
    const auto after = moveElements({drawn.tank}, at(0, 0)).apply(drawn.plan);
    EXPECT_TRUE(after.value() == drawn.plan);
    EXPECT_EQ(after->vessels.share(drawn.tank), drawn.plan.vessels.share(drawn.tank));
}

TEST(Move, ToAPlacePutsTheAnchorThere)
{
    Drained drawn;
    drawn.apply(moveElementTo(drawn.tank, at(-2, 3)));
    EXPECT_EQ(drawn.vesselOf(drawn.tank).centre, at(-2, 3));
    EXPECT_EQ(drawn.refusalOf(moveElementTo(base::Id{500}, at(0, 0))), "plan.no-such-element");
    EXPECT_EQ(drawn.refusalOf(moveElements({drawn.tank}, at(std::nan(""), 0))), "plan.not-finite");
    EXPECT_EQ(drawn.refusalOf(moveElements({drawn.tank}, at(5000, 0))), "plan.out-of-range");
}

TEST(Move, TakesATeeAlongWhenAllItsRunsGo)
{
    test::SmallSystem system;
    const Plan before = system.plan;
    system.apply(moveElements({system.tank, system.sump, system.bedA, system.bedB}, at(10, 0)));
    for (const auto& tee : before.tees)
        EXPECT_NEAR(units::inMetres(system.plan.tees.find(tee->id)->at.x - tee->at.x), 10.0, 1e-12) << tee->tag;
    test::SmallSystem other;
    other.apply(moveElements({other.tank}, at(10, 0)));
    for (const auto& tee : before.tees)
        EXPECT_EQ(other.plan.tees.find(tee->id)->at, tee->at) << tee->tag;
}

TEST(Raise, IsTakenUpByTheVerticalLeg)
{
    Drained drawn;
    const double top = drawn.level(0);
    drawn.apply(raiseElements({drawn.tank}, units::metres(0.25)));
    EXPECT_NEAR(drawn.level(0), top + 0.25, 1e-12);
    EXPECT_NEAR(drawn.level(1), 0.7, 1e-12);
    EXPECT_NEAR(drawn.level(2), 0.7, 1e-12);
}

TEST(Raise, OverAVerticalLegCarriesItUpWhole)
{
    Drained drawn; // the pipe drops 50 mm into the sump; raising the sump by more must not turn the drop round
    const double drop = drawn.level(2) - drawn.level(3);
    ASSERT_GT(drop, 0.0);
    drawn.apply(raiseElements({drawn.sump}, units::metres(0.08)));
    EXPECT_NEAR(drawn.level(2) - drawn.level(3), drop, 1e-12);
    EXPECT_NEAR(drawn.level(1), 0.78, 1e-12);
}

TEST(BaseLevel, TakesPortsRunningLevelAndPumpAlong)
{
    test::SmallSystem system;
    const Vessel before = system.vesselOf(system.sump);
    const Pump pump = *system.plan.pumps.find(system.pump);
    system.apply(setBaseLevel({system.sump}, units::elevationMetres(-0.4)));
    const Vessel& after = system.vesselOf(system.sump);
    EXPECT_EQ(units::inMetres(after.baseLevel), -0.4);
    EXPECT_NEAR(units::inMetres(*after.runningLevel - *before.runningLevel), -0.4, 1e-12);
    EXPECT_NEAR(units::inMetres(after.ports[0].level - before.ports[0].level), -0.4, 1e-12);
    EXPECT_NEAR(units::inMetres(system.plan.pumps.find(system.pump)->outletLevel - pump.outletLevel), -0.4, 1e-12);
}

TEST(BaseLevel, SetsManyVesselsInOneEdit)
{
    test::SmallSystem system;
    system.apply(setBaseLevel({system.bedA, system.bedB}, units::elevationMetres(0.7)));
    EXPECT_EQ(units::inMetres(system.vesselOf(system.bedA).baseLevel), 0.7);
    EXPECT_EQ(units::inMetres(system.vesselOf(system.bedB).baseLevel), 0.7);
}

TEST(Turn, AboutAPlaceTurnsCentreAndFrame)
{
    Drained drawn;
    drawn.apply(turnElements({drawn.sump}, at(0, 0), units::degrees(90)));
    EXPECT_EQ(drawn.vesselOf(drawn.sump).centre, at(0, 5));
    EXPECT_NEAR(units::inDegrees(drawn.vesselOf(drawn.sump).turn), 90, 1e-12);
    EXPECT_EQ(drawn.place(3), at(0, 4.52));
    EXPECT_EQ(drawn.place(2), at(0, 4.52));
}

TEST(TeeLevel, CarriesTheRunsThatMeetThere)
{
    test::SmallSystem system;
    const base::Id tee = (*system.plan.tees.begin())->id;
    system.apply(setTeeLevel({tee}, units::elevationMetres(1.6)));
    for (const Meeting& meeting : meetingsAt(system.plan, tee)) {
        const plan::Run& run = system.runOf(meeting.run);
        const Vertex& end = meeting.side == RunSide::from ? run.vertices.front() : run.vertices.back();
        EXPECT_EQ(units::inMetres(end.level), 1.6);
    }
}

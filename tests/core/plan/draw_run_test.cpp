#include <gtest/gtest.h>

#include "tests/support/edited_plan.hpp"

using namespace sumpwright;
using namespace sumpwright::plan;
using test::at;
using test::vertex;

TEST(DrawRun, PutsItsEndsAtPortAndPumpWithVerticalLegs)
{
    const test::SmallSystem system;
    const plan::Run& main = system.runOf(system.main);
    EXPECT_TRUE(std::holds_alternative<TeeEnd>(main.from) || std::holds_alternative<PumpEnd>(main.from));
    test::EditedPlan drawn;
    const base::Id sump = drawn.vessel(VesselKind::sump, 0, 0);
    const base::Id pump = drawn.apply(placePump(sump, at(0, 0), "G1000"));
    const base::Id id = drawn.run(AtPump{pump}, Nowhere{}, {vertex(0.01, 0, 1.2), vertex(2, 0, 1.2)});
    const plan::Run& run = drawn.runOf(id);
    ASSERT_EQ(run.vertices.size(), 3u);
    EXPECT_EQ(run.vertices[0].at, at(0, 0));
    EXPECT_EQ(run.vertices[0].level, drawn.plan.pumps.find(pump)->outletLevel);
    EXPECT_EQ(run.vertices[1].at, at(0, 0));
    EXPECT_EQ(units::inMetres(run.vertices[1].level), 1.2);
}

TEST(DrawRun, LeadsTheWaterFromPumpOrLipToInlet)
{
    test::EditedPlan drawn;
    const base::Id sump = drawn.vessel(VesselKind::sump, 0, 0);
    const base::Id tank = drawn.vessel(VesselKind::fishTank, 4, 0);
    const base::Id pump = drawn.apply(placePump(sump, at(0.2, 0), "G1000"));
    const base::Id up = drawn.run(drawn.inlet(tank), AtPump{pump}, {vertex(3, 0, 1.2), vertex(0, 0, 1.2)});
    EXPECT_TRUE(std::holds_alternative<PumpEnd>(drawn.runOf(up).from));
    const base::Id down =
        drawn.run(drawn.inlet(sump), drawn.lip(tank), {vertex(0, 0, 0.7), vertex(4, 0, 0.7)}, Service::gravity);
    EXPECT_EQ(std::get<PortEnd>(drawn.runOf(down).to).vessel, sump);
}

TEST(DrawRun, MakesAPortInTheSameStep)
{
    test::EditedPlan drawn;
    const base::Id sump = drawn.vessel(VesselKind::sump, 0, 0);
    const std::size_t ports = drawn.vesselOf(sump).ports.size();
    const base::Id id = drawn.run(Nowhere{}, NewPort{sump, PortKind::inlet, at(0.3, 0.1), units::elevationMetres(0.4)},
                                  {vertex(-2, 0, 0.5), vertex(0, 0, 0.5)});
    ASSERT_EQ(drawn.vesselOf(sump).ports.size(), ports + 1);
    EXPECT_EQ(drawn.vesselOf(sump).ports.back().tag, "I2");
    EXPECT_EQ(std::get<PortEnd>(drawn.runOf(id).to).port, drawn.vesselOf(sump).ports.back().id);
    EXPECT_EQ(drawn.refusalOf([&] {
        RunWish wish;
        wish.pipeId = "p";
        wish.to = NewPort{sump, PortKind::inlet, at(3, 3), units::elevationMetres(0.4)};
        wish.vertices = {vertex(-2, 0, 0.5), vertex(0, 0, 0.5)};
        return drawRun(wish);
    }()),
              "plan.port-outside");
}

TEST(DrawRun, RefusesASecondRunAtAPortOrPump)
{
    test::SmallSystem system;
    RunWish wish;
    wish.pipeId = "pvcu-pn16-32";
    wish.vertices = {vertex(0, 0, 1), vertex(1, 1, 1)};
    wish.from = AtPump{system.pump};
    EXPECT_EQ(system.refusalOf(drawRun(wish)), "plan.pump-taken");
    wish.from = Nowhere{};
    wish.to = system.inlet(system.tank);
    EXPECT_EQ(system.refusalOf(drawRun(wish)), "plan.port-taken");
    wish.to = AtPort{system.tank, base::Id{9999}};
    EXPECT_EQ(system.refusalOf(drawRun(wish)), "plan.no-such-element");
    wish.to = Nowhere{};
    wish.vertices.pop_back();
    EXPECT_EQ(system.refusalOf(drawRun(wish)), "plan.vertex-count");
    wish.vertices.push_back(wish.vertices.front());
    EXPECT_EQ(system.refusalOf(drawRun(wish)), "plan.zero-leg");
    wish.vertices.back().level = units::elevationMetres(1e6);
    EXPECT_EQ(system.refusalOf(drawRun(wish)), "plan.out-of-range");
}

TEST(DrawRun, MayLeaveAndMeetTheSameRun)
{
    test::EditedPlan drawn;
    const base::Id line = drawn.run(Nowhere{}, Nowhere{}, {vertex(0, 0, 1), vertex(10, 0, 1)});
    const base::Id bypass = drawn.run(OntoRun{line, 0.7}, OntoRun{line, 0.2},
                                      {vertex(7, 0, 1), vertex(7, 1, 1), vertex(2, 1, 1), vertex(2, 0, 1)});
    EXPECT_EQ(drawn.plan.tees.size(), 2u);
    EXPECT_EQ(drawn.plan.runs.size(), 4u);
    EXPECT_EQ(drawn.runOf(bypass).vertices.front().at, at(7, 0));
    EXPECT_EQ(drawn.runOf(bypass).vertices.back().at, at(2, 0));
    drawn.apply(deleteElements({bypass}));
    EXPECT_EQ(drawn.plan.tees.size(), 0u);
    EXPECT_EQ(drawn.plan.runs.size(), 1u);
    EXPECT_EQ(drawn.runOf(line).vertices.size(), 2u);
}

TEST(ConnectEnd, CarriesTheEndAndSplitsTheOther)
{
    test::EditedPlan drawn;
    const base::Id line = drawn.run(Nowhere{}, Nowhere{}, {vertex(0, 0, 1), vertex(10, 0, 1)});
    const base::Id branch = drawn.run(Nowhere{}, Nowhere{}, {vertex(4, 1, 1), vertex(4, 5, 1)});
    drawn.apply(connectEnd(branch, RunSide::from, OntoRun{line, 0.4}));
    EXPECT_EQ(drawn.runOf(branch).vertices.front().at, at(4, 0));
    EXPECT_EQ(drawn.plan.tees.size(), 1u);
    EXPECT_EQ(drawn.refusalOf(connectEnd(branch, RunSide::to, OntoRun{branch, 0.5})), "plan.onto-itself");
    drawn.apply(detachEnd(branch, RunSide::from));
    EXPECT_TRUE(drawn.plan.tees.empty());
    EXPECT_EQ(drawn.plan.runs.size(), 2u);
}

TEST(ConnectEnd, MovesAPumpsRunToThePumpSide)
{
    test::EditedPlan drawn;
    const base::Id sump = drawn.vessel(VesselKind::sump, 0, 0);
    const base::Id pump = drawn.apply(placePump(sump, at(0.2, 0), "G1000"));
    const base::Id id = drawn.run(Nowhere{}, Nowhere{}, {vertex(5, 0, 1), vertex(1, 0, 1)});
    drawn.apply(connectEnd(id, RunSide::to, AtPump{pump}));
    EXPECT_TRUE(std::holds_alternative<PumpEnd>(drawn.runOf(id).from));
    EXPECT_EQ(drawn.runOf(id).vertices.front().at, at(0.2, 0));
}

TEST(PlaceOfTarget, TellsWhereAnEndWouldLie)
{
    const test::SmallSystem system;
    EXPECT_FALSE(placeOf(system.plan, Target(Nowhere{})));
    EXPECT_FALSE(placeOf(system.plan, Target(AtPump{base::Id{999}})));
    const auto pump = placeOf(system.plan, Target(AtPump{system.pump}));
    ASSERT_TRUE(pump);
    EXPECT_EQ(pump->at, at(1.3, 1.5));
    const auto onto = placeOf(system.plan, Target(OntoRun{system.toBed, 1.0}));
    ASSERT_TRUE(onto);
    EXPECT_EQ(onto->at, system.runOf(system.toBed).vertices.back().at);
    const auto made = placeOf(system.plan, Target(NewPort{system.sump, PortKind::inlet, at(0.1, 0.2), {}}));
    EXPECT_EQ(made->at, at(1.6, 1.7));
}

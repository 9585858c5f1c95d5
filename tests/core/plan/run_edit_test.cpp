#include <gtest/gtest.h>

#include "tests/support/edited_plan.hpp"

using namespace sumpwright;
using namespace sumpwright::plan;
using test::at;
using test::vertex;

namespace
{

units::Elevation level(double metres) { return units::elevationMetres(metres); }

struct Line : test::EditedPlan {
    base::Id line = run(Nowhere{}, Nowhere{}, {vertex(0, 0, 1), vertex(6, 0, 1), vertex(6, 4, 1)});
    base::Id first = apply(addValve(line, "ball-valve", 0.3));
    base::Id last = apply(addValve(line, "gate-valve", 0.8));
    double stationOf(base::Id valve) const
    {
        for (const Valve& candidate : runOf(line).valves)
            if (candidate.id == valve)
                return candidate.station;
        return -1;
    }
    Point placeOfValve(base::Id valve) const { return placeAlong(runOf(line), stationOf(valve)).at; }
    void expectAt(base::Id valve, double x, double y) const
    {
        EXPECT_NEAR(units::inMetres(placeOfValve(valve).x), x, 1e-7);
        EXPECT_NEAR(units::inMetres(placeOfValve(valve).y), y, 1e-7);
    }
};

} // namespace

TEST(RunEdits, SetOnePropertyOnMany)
{
    test::SmallSystem system;
    system.apply(setRunPipe({system.main, system.toBed}, "pvcu-pn16-40"));
    EXPECT_EQ(system.runOf(system.toBed).pipeId, "pvcu-pn16-40");
    system.apply(setRunService({system.drainA}, Service::pressure));
    EXPECT_EQ(system.refusalOf(setRunPipe({system.main}, "")), "plan.text-missing");
    EXPECT_EQ(system.refusalOf(setExtraFittings({system.main}, {{"union", 0, {}}})), "plan.out-of-range");
    EXPECT_EQ(system.refusalOf(setExtraFittings({system.main}, {{"union", 1, -0.5}})), "plan.out-of-range");
}

TEST(Reverse, TurnsEndsVerticesAndValvesRound)
{
    Line drawn;
    drawn.apply(reverseRuns({drawn.line}));
    EXPECT_EQ(drawn.runOf(drawn.line).vertices.front().at, at(6, 4));
    EXPECT_NEAR(drawn.stationOf(drawn.first), 0.7, 1e-12);
    EXPECT_EQ(drawn.runOf(drawn.line).valves.front().id, drawn.last);
    const test::SmallSystem system;
    for (const auto& run : system.plan.runs)
        if (std::holds_alternative<PumpEnd>(run->from)) {
            EXPECT_EQ(system.refusalOf(reverseRuns({run->id})), "plan.pump-at-end");
        }
}

TEST(EndLoss, IsForPortsAndTees)
{
    test::SmallSystem system;
    system.apply(setEndLoss(system.toBed, RunSide::from, 1.1));
    system.apply(setEndLoss(system.drainA, RunSide::to, 1.0));
    EXPECT_EQ(std::get<PortEnd>(system.runOf(system.drainA).to).lossCoefficient, 1.0);
    EXPECT_EQ(system.refusalOf(setEndLoss(system.drainB, RunSide::to, 1.0)), "plan.no-end-loss");
    EXPECT_EQ(system.refusalOf(setEndLoss(system.drainA, RunSide::to, -1.0)), "plan.out-of-range");
}

TEST(Vertex, InsertedOnTheRunChangesNothingElse)
{
    Line drawn;
    drawn.apply(insertVertex(drawn.line, 0.5));
    ASSERT_EQ(drawn.runOf(drawn.line).vertices.size(), 4u);
    EXPECT_EQ(drawn.runOf(drawn.line).vertices[1].at, at(5, 0));
    EXPECT_EQ(drawn.stationOf(drawn.first), 0.3);
    EXPECT_EQ(drawn.stationOf(drawn.last), 0.8);
    EXPECT_EQ(drawn.refusalOf(insertVertex(drawn.line, 1.0)), "plan.out-of-range");
    EXPECT_EQ(drawn.refusalOf(insertVertex(drawn.line, 0.5)), "plan.zero-leg");
}

TEST(Vertex, InsertedBesideLeavesValvesOfOtherLegsInPlace)
{
    Line drawn;
    drawn.apply(insertVertexAt(drawn.line, 1, at(3, -4), level(1)));
    drawn.expectAt(drawn.last, 6, 2);
    EXPECT_EQ(drawn.refusalOf(insertVertexAt(drawn.line, 0, at(3, -4), level(1))), "plan.no-such-vertex");
    EXPECT_EQ(drawn.refusalOf(insertVertexAt(drawn.line, 4, at(3, -4), level(1))), "plan.no-such-vertex");
}

TEST(Vertex, MovedKeepsValvesOnTheirLegs)
{
    Line drawn;
    drawn.apply(moveVertex(drawn.line, 2, at(6, 8)));
    drawn.expectAt(drawn.first, 3, 0);
    drawn.expectAt(drawn.last, 6, 4);
    EXPECT_EQ(drawn.refusalOf(moveVertex(drawn.line, 9, at(0, 0))), "plan.no-such-vertex");
    EXPECT_EQ(drawn.refusalOf(moveVertex(drawn.line, 1, at(0, 0))), "plan.zero-leg");
}

TEST(Vertex, MovedTakesThoseStraightAboveAlong)
{
    test::EditedPlan drawn;
    const base::Id id =
        drawn.run(Nowhere{}, Nowhere{}, {vertex(0, 0, 1), vertex(2, 0, 1), vertex(2, 0, 0.2), vertex(4, 0, 0.2)});
    drawn.apply(moveVertex(id, 1, at(2, 1)));
    EXPECT_EQ(drawn.runOf(id).vertices[2].at, at(2, 1));
}

TEST(Vertex, HeldByAPortIsMovedThereOnly)
{
    const test::SmallSystem system;
    EXPECT_EQ(system.refusalOf(moveVertex(system.drainA, 0, at(0, 0))), "plan.end-held");
    EXPECT_EQ(system.refusalOf(removeVertex(system.drainA, 0)), "plan.end-held");
    EXPECT_EQ(system.refusalOf(setVertexLevel(system.drainA, 0, level(0.5))), "plan.end-held");
}

TEST(Vertex, RemovedLeavesAtLeastTwo)
{
    Line drawn;
    drawn.apply(removeVertex(drawn.line, 0));
    EXPECT_NEAR(drawn.stationOf(drawn.first), 0.0, 1e-12); // its piece of pipe went
    drawn.expectAt(drawn.last, 6, 2);
    EXPECT_EQ(drawn.refusalOf(removeVertex(drawn.line, 0)), "plan.vertex-count");
}

TEST(Vertex, LevelIsOfTheCentreLineAndInvertHalfABoreBelow)
{
    Line drawn;
    drawn.apply(setVertexLevel(drawn.line, 1, level(0.8)));
    EXPECT_EQ(drawn.runOf(drawn.line).vertices[1].level, level(0.8));
    drawn.apply(setVertexInvert(drawn.line, 1, level(0.8), units::millimetres(40)));
    EXPECT_EQ(drawn.runOf(drawn.line).vertices[1].level, level(0.82));
    drawn.apply(setBendFitting(drawn.line, 1, "elbow-90-sweep"));
    drawn.apply(setBendLoss(drawn.line, 1, 0.35));
    EXPECT_EQ(drawn.refusalOf(setBendLoss(drawn.line, 1, -0.1)), "plan.out-of-range");
}

TEST(Valve, IsPlacedMovedTurnedAndTakenOut)
{
    Line drawn;
    EXPECT_EQ(drawn.runOf(drawn.line).valves[0].tag, "V1");
    drawn.apply(moveValve({drawn.line, drawn.first}, 0.9));
    EXPECT_EQ(drawn.runOf(drawn.line).valves.back().id, drawn.first);
    drawn.apply(setOpening({{drawn.line, drawn.first}, {drawn.line, drawn.last}}, 0.4));
    EXPECT_EQ(drawn.runOf(drawn.line).valves[0].opening, 0.4);
    drawn.apply(setValveFitting({{drawn.line, drawn.first}}, "globe-valve"));
    drawn.apply(setValveLoss({{drawn.line, drawn.first}}, 7.5));
    EXPECT_EQ(drawn.refusalOf(setOpening({{drawn.line, drawn.first}}, 1.2)), "plan.out-of-range");
    EXPECT_EQ(drawn.refusalOf(addValve(drawn.line, "ball-valve", 1.01)), "plan.out-of-range");
    EXPECT_EQ(drawn.refusalOf(addValve(drawn.line, "", 0.5)), "plan.text-missing");
    drawn.apply(removeValves({{drawn.line, drawn.first}}));
    EXPECT_EQ(drawn.refusalOf(moveValve({drawn.line, drawn.first}, 0.1)), "plan.no-such-element");
}

#include <gtest/gtest.h>

#include "tests/support/edited_plan.hpp"

using namespace sumpwright;
using namespace sumpwright::plan;
using test::at;
using test::vertex;

namespace
{

struct Line : test::EditedPlan {
    base::Id line = run(Nowhere{}, Nowhere{}, {vertex(0, 0, 1), vertex(6, 0, 1), vertex(6, 4, 1)});
    base::Id branchAt(double station)
    {
        return run(OntoRun{line, station}, Nowhere{}, {vertex(0, 0, 1), vertex(-3, -3, 1)});
    }
    base::Id tee() const { return (*plan.tees.begin())->id; }
    const plan::Run& otherHalf(base::Id branch) const
    {
        for (const auto& candidate : plan.runs)
            if (candidate->id != line && candidate->id != branch)
                return *candidate;
        return *plan.runs.find(line);
    }
};

} // namespace

TEST(Tee, SplittingLeavesIdAndTagToTheLongerHalf)
{
    Line drawn;
    const base::Id branch = drawn.branchAt(0.3); // 3 of 10 m
    ASSERT_EQ(drawn.plan.runs.size(), 3u);
    EXPECT_NEAR(units::inMetres(lengthOf(drawn.runOf(drawn.line))), 7.0, 1e-9);
    EXPECT_EQ(tagOf(drawn.plan, drawn.line), "R1");
    EXPECT_EQ(drawn.otherHalf(branch).tag, "R3");
    EXPECT_EQ(drawn.plan.tees.find(drawn.tee())->tag, "J1");
    EXPECT_EQ(drawn.plan.tees.find(drawn.tee())->at, at(3, 0));
}

TEST(Tee, EqualHalvesLeaveIdAndTagToTheFirst)
{
    test::EditedPlan drawn;
    const base::Id line = drawn.run(Nowhere{}, Nowhere{}, {vertex(0, 0, 1), vertex(6, 0, 1)});
    drawn.run(OntoRun{line, 0.5}, Nowhere{}, {vertex(0, 0, 1), vertex(3, 3, 1)});
    EXPECT_TRUE(std::holds_alternative<TeeEnd>(drawn.runOf(line).to));
}

TEST(Tee, ValvesVerticesAndFittingsStayOnTheirHalf)
{
    Line drawn;
    drawn.apply(addValve(drawn.line, "ball-valve", 0.1));
    drawn.apply(addValve(drawn.line, "gate-valve", 0.9));
    drawn.apply(setExtraFittings({drawn.line}, {{"union", 3, 0.06}}));
    const base::Id branch = drawn.branchAt(0.3);
    const plan::Run& longer = drawn.runOf(drawn.line);
    const plan::Run& shorter = drawn.otherHalf(branch);
    ASSERT_EQ(shorter.valves.size(), 1u);
    EXPECT_EQ(shorter.valves[0].fittingId, "ball-valve");
    EXPECT_NEAR(shorter.valves[0].station, 1.0 / 3.0, 1e-9);
    ASSERT_EQ(longer.valves.size(), 1u);
    EXPECT_NEAR(longer.valves[0].station, 6.0 / 7.0, 1e-9);
    EXPECT_EQ(longer.extraFittings.size(), 1u);
    EXPECT_TRUE(shorter.extraFittings.empty());
    EXPECT_EQ(longer.vertices.size(), 3u);
    EXPECT_EQ(shorter.vertices.size(), 2u);
}

TEST(Tee, DeletingTheLastBranchJoinsTheHalvesInTheSameStep)
{
    Line drawn;
    drawn.apply(addValve(drawn.line, "ball-valve", 0.1));
    const Plan before = drawn.plan;
    const base::Id branch = drawn.branchAt(0.3);
    drawn.apply(deleteElements({branch}));
    EXPECT_TRUE(drawn.plan == before);
}

TEST(Tee, WithASecondBranchStaysWhenOneGoes)
{
    Line drawn;
    const base::Id branch = drawn.branchAt(0.3);
    const base::Id second = drawn.run(AtTee{drawn.tee()}, Nowhere{}, {vertex(3, 0, 1), vertex(3, 3, 1)});
    drawn.apply(deleteElements({branch}));
    EXPECT_EQ(drawn.plan.tees.size(), 1u);
    drawn.apply(deleteElements({second}));
    EXPECT_TRUE(drawn.plan.tees.empty());
    EXPECT_EQ(drawn.plan.runs.size(), 1u);
}

TEST(Tee, BetweenTwoPipeSizesStaysWhenTheBranchGoes)
{
    Line drawn;
    const base::Id branch = drawn.branchAt(0.3);
    drawn.apply(setRunPipe({drawn.line}, "pvcu-pn16-50"));
    drawn.apply(deleteElements({branch}));
    EXPECT_EQ(drawn.plan.tees.size(), 1u);
    EXPECT_EQ(drawn.plan.runs.size(), 2u);
}

TEST(Tee, MovedOffTheLineLeavesItsBendWhenTheBranchGoes)
{
    Line drawn;
    const base::Id branch = drawn.branchAt(0.3);
    drawn.apply(moveElements({drawn.tee()}, at(0, 0.5)));
    drawn.apply(deleteElements({branch}));
    ASSERT_EQ(drawn.runOf(drawn.line).vertices.size(), 4u);
    EXPECT_EQ(drawn.runOf(drawn.line).vertices[1].at, at(3, 0.5));
}

TEST(Tee, DeletedJoinsTheStraightestPairAndOpensTheRest)
{
    Line drawn;
    const base::Id branch = drawn.branchAt(0.3);
    drawn.apply(deleteElements({drawn.tee()}));
    EXPECT_TRUE(drawn.plan.tees.empty());
    ASSERT_EQ(drawn.plan.runs.size(), 2u);
    EXPECT_TRUE(std::holds_alternative<OpenEnd>(drawn.runOf(branch).from));
    EXPECT_EQ(drawn.runOf(drawn.line).vertices.size(), 3u);
}

TEST(Tee, LeftWithOneRunOpensItsEnd)
{
    Line drawn;
    const base::Id branch = drawn.branchAt(0.3);
    const base::Id half = drawn.otherHalf(branch).id;
    drawn.apply(deleteElements({branch, half}));
    EXPECT_TRUE(drawn.plan.tees.empty());
    EXPECT_TRUE(std::holds_alternative<OpenEnd>(drawn.runOf(drawn.line).from));
}

TEST(Tee, IsTakenWhereOneAlreadyIs)
{
    Line drawn;
    drawn.branchAt(0.3);
    drawn.run(OntoRun{drawn.line, 0.0005}, Nowhere{}, {vertex(3, 0, 1), vertex(3, 3, 1)}); // 3.5 mm along
    EXPECT_EQ(drawn.plan.tees.size(), 1u);
    RunWish wish;
    wish.pipeId = "pvcu-pn16-32";
    wish.from = OntoRun{drawn.line, 0.9995};
    wish.vertices = {vertex(3, 0, 1), vertex(3, 3, 1)};
    EXPECT_EQ(drawn.refusalOf(drawRun(wish)), "plan.too-close-to-end");
    wish.from = OntoRun{drawn.line, std::nan("")};
    EXPECT_EQ(drawn.refusalOf(drawRun(wish)), "plan.out-of-range");
}

TEST(Tee, JoinsTwoRunsThatBothLedTowardsIt)
{
    Line drawn;
    const base::Id branch = drawn.branchAt(0.3);
    drawn.apply(addValve(drawn.line, "ball-valve", 0.25));
    drawn.apply(reverseRuns({drawn.line})); // now both halves end at the tee
    drawn.apply(deleteElements({branch}));
    const plan::Run& joined = drawn.runOf(drawn.line);
    EXPECT_EQ(joined.vertices.front().at, at(6, 4));
    EXPECT_EQ(joined.vertices.back().at, at(0, 0));
    ASSERT_EQ(joined.valves.size(), 1u);
    EXPECT_NEAR(joined.valves[0].station, (0.75 * 7.0) / 10.0, 1e-9);
}

// The dividing manifolds M1 and M2 drawn as whole plans. Reference values: own case, solved two independent ways
// (marching with bisection, and a global gradient from random starts) that agree in every digit told here.
// Tolerance 0.2 % on flows, 2 mm on heads.
#include <gtest/gtest.h>

#include "core/assessment/stages.hpp"
#include "tests/support/manifolds.hpp"

namespace
{

using namespace sumpwright;
using assessment::RunningState;

struct Told {
    double pump; // L/h
    double tank;
    std::vector<double> beds;
};

assessment::Assessment assess(const test::DrawnPlan& drawn)
{
    return assessment::Stages(catalogue::Catalogue::builtIn()).assess(drawn.plan);
}

double litresPerHour(const assessment::Assessment& result, base::Id run, RunningState state)
{
    return units::inLitresPerHour(assessment::find(result.flow->runs, run)->flow[state]->flow);
}

void expectFlows(const test::ManifoldM1& plan, const Told& told)
{
    const assessment::Assessment result = assess(plan.drawn);
    for (const RunningState state : assessment::allRunningStates) {
        const auto& duty = result.pumps->pumps.front().duty[state];
        ASSERT_TRUE(duty.ok()) << duty.reason().text;
        EXPECT_NEAR(units::inLitresPerHour(duty->flow), told.pump, 0.002 * told.pump);
        EXPECT_NEAR(litresPerHour(result, plan.tankBranch, state), told.tank, 0.002 * told.tank);
        for (std::size_t i = 0; i < told.beds.size(); ++i)
            EXPECT_NEAR(litresPerHour(result, plan.bedBranches[i], state), told.beds[i], 0.002 * told.beds[i]);
    }
}

TEST(ManifoldM1AsPlan, DividesTheFlowBetweenTankAndBeds)
{
    const test::ManifoldM1 plan;
    expectFlows(plan, {3066.69, 860.81, {608.97, 553.87, 525.81, 517.22}});
}

TEST(ManifoldM1AsPlan, HeadsAtPumpAndTeesAreTheReferenceOnes)
{
    const test::ManifoldM1 plan;
    const assessment::Assessment result = assess(plan.drawn);
    EXPECT_NEAR(units::inMetresHead(result.pumps->pumps.front().duty[RunningState::least]->head), 1.53481, 0.002);
    const double grades[] = {1.35888, 1.29910, 1.26529, 1.24927, 1.24453};
    for (std::size_t i = 0; i < plan.tees.size(); ++i)
        EXPECT_NEAR(units::inMetres(*assessment::find(result.flow->tees, plan.tees[i])->grade[RunningState::least]),
                    grades[i], 0.002);
}

TEST(ManifoldM1AsPlan, ThrottlingOneBedGivesItsWaterToTheOthers)
{
    test::ManifoldM1 plan;
    plan.drawn.valve(plan.bedBranches[0], "ball-valve", 1.0, 50.0);
    expectFlows(plan, {3042.61, 1059.27, {232.85, 606.68, 576.51, 567.30}});
}

TEST(ManifoldM1AsPlan, ThrottlingTheTankFeedsTheBeds)
{
    test::ManifoldM1 plan;
    plan.drawn.valve(plan.tankBranch, "gate-valve", 1.0, 20.0);
    expectFlows(plan, {3021.93, 591.88, {669.69, 610.07, 579.77, 570.51}});
}

TEST(ManifoldM1AsPlan, AMouthAboveTheReachOfThePumpGetsNothing)
{
    test::ManifoldM1 plan;
    plan.drawn.changePort(plan.beds[3], plan.bedInlets[3],
                          [](plan::Port& port) { port.level = units::elevationMetres(2.40); });
    expectFlows(plan, {3038.54, 1089.58, {674.89, 642.04, 632.03, 0.0}});
    const auto result = assess(plan.drawn);
    EXPECT_NEAR(units::inMetres(*assessment::find(result.flow->tees, plan.tees[4])->grade[RunningState::least]),
                1.31417, 0.002);
}

TEST(ManifoldM2AsPlan, EqualBedsGetUnequalFlowsFromAThinHeader)
{
    const test::ManifoldM2 plan;
    const auto result = assess(plan.drawn);
    const auto& duty = result.pumps->pumps.front().duty[RunningState::least];
    ASSERT_TRUE(duty.ok()) << duty.reason().text;
    EXPECT_NEAR(units::inLitresPerHour(duty->flow), 3034.81, 0.002 * 3034.81);
    const double flows[] = {908.84, 765.88, 691.55, 668.54}, grades[] = {1.1647, 1.11804, 1.09679, 1.09063};
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_NEAR(litresPerHour(result, plan.bedBranches[i], RunningState::least), flows[i], 0.002 * flows[i]);
        EXPECT_NEAR(units::inMetres(*assessment::find(result.flow->tees, plan.tees[i])->grade[RunningState::least]),
                    grades[i], 0.002);
    }
}

} // namespace

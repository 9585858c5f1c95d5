// How drawn runs become losses: bends by their angle, tees by their geometry, ends, valves, bores, roughness.
#include "core/assessment/working.hpp"
#include "core/hydraulics/fittings.hpp"
#include "tests/core/assessment/assessing.hpp"

namespace
{

using namespace sumpwright;
using namespace sumpwright::test;
using assessment::FittingLoss;
using assessment::FittingPlace;
using assessment::FittingRole;
using assessment::LossBasis;
using plan::Service;

constexpr const char* pipe32 = "pvcu-pn16-32";
constexpr const char* pipe25 = "pvcu-pn16-25";

// A sump with its pump, a tee that the riser reaches from below, and two tanks to lead water to.
struct TeePlan {
    DrawnPlan drawn;
    Id sump, pump, tee, tankA, tankB, inletA, inletB;
    TeePlan()
    {
        sump = drawn.sump({0, 0, 0}, 1, 1, 1, 0.5);
        pump = drawn.pump(sump, "G4500", 0.1);
        tee = drawn.tee({0, 0, 1});
        tankA = drawn.vessel(plan::VesselKind::fishTank, {3, 0, 0}, 1, 1, 1);
        tankB = drawn.vessel(plan::VesselKind::fishTank, {0, 3, 0}, 1, 1, 1);
        inletA = drawn.port(tankA, plan::PortKind::inlet, {3, 0, 1});
        inletB = drawn.port(tankB, plan::PortKind::inlet, {0, 3, 1});
        drawn.port(tankA, plan::PortKind::lip, {3.2, 0, 0.8}, 0.05);
        drawn.port(tankB, plan::PortKind::lip, {0.2, 3, 0.8}, 0.05);
    }
    Id run(plan::RunEnd from, plan::RunEnd to, std::initializer_list<Place> places, const char* pipe = pipe32)
    {
        return drawn.run(Service::pressure, pipe, from, to, places);
    }
    plan::RunEnd toA() const { return plan::PortEnd{tankA, inletA, {}}; }
    plan::RunEnd toB() const { return plan::PortEnd{tankB, inletB, {}}; }
    plan::RunEnd atTee() const { return plan::TeeEnd{tee, {}}; }
};

std::vector<FittingLoss> lossesOf(const TeePlan& plan, base::Id run, FittingRole role)
{
    std::vector<FittingLoss> losses;
    const auto result = assess(plan.drawn);
    for (const FittingLoss& loss : runOf(result, run).fittings)
        if (loss.role == role)
            losses.push_back(loss);
    return losses;
}

TEST(Tee, GivesTheLegInLineTheRunAndTheOtherTheBranch)
{
    TeePlan plan;
    const Id riser =
        plan.run(plan::PumpEnd{plan.pump}, plan.atTee(), {{0, 0, 0.1}, {0, -1, 0.1}, {0, -1, 1}, {0, 0, 1}});
    const Id straight = plan.run(plan.atTee(), plan.toB(), {{0, 0, 1}, {0, 3, 1}});
    const Id branch = plan.run(plan.atTee(), plan.toA(), {{0, 0, 1}, {3, 0, 1}});
    ASSERT_EQ(lossesOf(plan, straight, FittingRole::teeRun).size(), 1U);
    EXPECT_EQ(lossesOf(plan, straight, FittingRole::teeRun)[0].k, 0.4);
    EXPECT_EQ(lossesOf(plan, straight, FittingRole::teeRun)[0].place, FittingPlace::start);
    ASSERT_EQ(lossesOf(plan, branch, FittingRole::teeBranch).size(), 1U);
    EXPECT_EQ(lossesOf(plan, branch, FittingRole::teeBranch)[0].k, 1.3);
    EXPECT_TRUE(lossesOf(plan, riser, FittingRole::teeRun).empty());
    EXPECT_TRUE(lossesOf(plan, riser, FittingRole::teeBranch).empty());
}

TEST(Tee, IsABranchBothWaysWhenWaterComesInAtItsSide)
{
    TeePlan plan;
    plan.run(plan::PumpEnd{plan.pump}, plan.atTee(), {{0, 0, 0.1}, {0, 0, 1}}); // from below
    const Id left = plan.run(plan.atTee(), plan.toA(), {{0, 0, 1}, {3, 0, 1}});
    const Id right = plan.run(plan.atTee(), plan.toB(), {{0, 0, 1}, {-1, 0, 1}, {-1, 3, 1}, {0, 3, 1}});
    EXPECT_EQ(lossesOf(plan, left, FittingRole::teeBranch).size(), 1U);
    EXPECT_EQ(lossesOf(plan, right, FittingRole::teeBranch).size(), 1U);
}

TEST(Tee, FollowsTheWayFromThePumpHoweverRunsAreDrawn)
{
    TeePlan plan;
    plan.run(plan::PumpEnd{plan.pump}, plan.atTee(), {{0, 0, 0.1}, {0, -1, 0.1}, {0, -1, 1}, {0, 0, 1}});
    const Id straight = plan.run(plan.toB(), plan.atTee(), {{0, 3, 1}, {0, 0, 1}}); // drawn backwards
    const Id branch = plan.run(plan.toA(), plan.atTee(), {{3, 0, 1}, {0, 0, 1}});
    EXPECT_EQ(lossesOf(plan, straight, FittingRole::teeRun).size(), 1U);
    EXPECT_EQ(lossesOf(plan, branch, FittingRole::teeBranch).size(), 1U);
    const auto result = assess(plan.drawn);
    EXPECT_LT(flowOf(result, branch, RunningState::least), 0.0); // against the drawing
}

TEST(Tee, AddsTheChangeOfBoreToTheSmallerLeg)
{
    TeePlan plan;
    plan.run(plan::PumpEnd{plan.pump}, plan.atTee(), {{0, 0, 0.1}, {0, -1, 0.1}, {0, -1, 1}, {0, 0, 1}});
    plan.run(plan.atTee(), plan.toB(), {{0, 0, 1}, {0, 3, 1}});
    const Id branch = plan.run(plan.atTee(), plan.toA(), {{0, 0, 1}, {3, 0, 1}}, pipe25);
    ASSERT_EQ(lossesOf(plan, branch, FittingRole::boreChange).size(), 1U);
    EXPECT_DOUBLE_EQ(lossesOf(plan, branch, FittingRole::boreChange)[0].k,
                     hydraulics::contractionCoefficient(units::metres(0.0272), units::metres(0.0212)));
}

TEST(Tee, YieldsToTheGivenCoefficientWithEverythingInIt)
{
    TeePlan plan;
    plan.run(plan::PumpEnd{plan.pump}, plan.atTee(), {{0, 0, 0.1}, {0, -1, 0.1}, {0, -1, 1}, {0, 0, 1}});
    plan.run(plan.atTee(), plan.toB(), {{0, 0, 1}, {0, 3, 1}});
    const Id branch = plan.run(plan::TeeEnd{plan.tee, 2.5}, plan.toA(), {{0, 0, 1}, {3, 0, 1}}, pipe25);
    const auto assessed = assess(plan.drawn);
    const auto& run = runOf(assessed, branch);
    EXPECT_DOUBLE_EQ(run.sumK, 2.5 + 1.0); // and the exit
    EXPECT_EQ(run.fittings.front().basis, LossBasis::overridden);
    EXPECT_TRUE(run.fittings.front().source.empty());
}

TEST(Tee, OfTwoLegsIsAPlainJoint)
{
    TeePlan plan;
    plan.run(plan::PumpEnd{plan.pump}, plan.atTee(), {{0, 0, 0.1}, {0, -1, 0.1}, {0, -1, 1}, {0, 0, 1}});
    const Id straight = plan.run(plan.atTee(), plan.toB(), {{0, 0, 1}, {0, 3, 1}});
    EXPECT_DOUBLE_EQ(runOf(assess(plan.drawn), straight).sumK, 1.0); // the exit alone
}

TEST(Bend, TakesItsCoefficientFromTheDrawnAngleInPlanAndLevel)
{
    TeePlan plan;
    const Id run = plan.run(plan::PumpEnd{plan.pump}, plan.toA(),
                            {{0, 0, 0.1}, {0, 0, 1}, {1, 0, 1}, {2, 1, 1}, {2, 2, 1}, {3, 0, 1}});
    const auto bends = lossesOf(plan, run, FittingRole::bend);
    ASSERT_EQ(bends.size(), 4U);
    EXPECT_DOUBLE_EQ(bends[0].k, 0.9); // upright to level
    EXPECT_DOUBLE_EQ(bends[1].k, 0.4); // 45 degrees
    EXPECT_EQ(bends[1].fittingId, "elbow-45");
    EXPECT_DOUBLE_EQ(bends[2].k, 0.4);
    EXPECT_GT(bends[3].k, 0.9); // beyond a right angle
    EXPECT_EQ(bends[3].vertex, 4U);
}

TEST(Bend, OfAChosenFittingKeepsItsShapeAndItsRow)
{
    TeePlan plan;
    const Id run = plan.run(plan::PumpEnd{plan.pump}, plan.toA(), {{0, 0, 0.1}, {0, 0, 1}, {3, 0, 1}});
    plan.drawn.changeRun(run, [](plan::Run& r) { r.vertices[1].bendFittingId = "elbow-90-sweep"; });
    EXPECT_DOUBLE_EQ(lossesOf(plan, run, FittingRole::bend)[0].k, 0.4);
    plan.drawn.changeRun(run, [](plan::Run& r) { r.vertices[1].lossCoefficient = 0.33; });
    EXPECT_DOUBLE_EQ(lossesOf(plan, run, FittingRole::bend)[0].k, 0.33);
    plan.drawn.changeRun(run, [](plan::Run& r) {
        r.vertices[1].lossCoefficient.reset();
        r.vertices[1].bendFittingId = "no-such-elbow";
    });
    EXPECT_EQ(lossesOf(plan, run, FittingRole::bend)[0].basis, LossBasis::none);
}

TEST(Hose, CorrugatedKeepsItsFrictionFactorAndItsWorkingSaysSo)
{
    TeePlan plan;
    const Id run = plan.run(plan::PumpEnd{plan.pump}, plan.toA(), {{0, 0, 0.1}, {0, 0, 1}, {3, 0, 1}}, "corrugated-25");
    const auto result = assess(plan.drawn);
    EXPECT_DOUBLE_EQ(runOf(result, run).corrugatedFactor, 0.08);
    const auto& flow = runOf(result, run).flow[RunningState::least];
    ASSERT_TRUE(flow);
    ASSERT_TRUE(flow->losses.has_value());
    EXPECT_DOUBLE_EQ(flow->losses->frictionFactor, 0.08);
    const double hand =
        0.08 * units::inMetres(runOf(result, run).length) / 0.025 * units::inMetresHead(flow->losses->velocityHead);
    EXPECT_NEAR(units::inMetresHead(flow->losses->friction) / hand, 1.0, 1e-9);
    const auto working = assessment::workingOfRunLoss(result, run, RunningState::least);
    ASSERT_TRUE(working.has_value());
    EXPECT_TRUE(std::any_of(working->inputs.begin(), working->inputs.end(), [](const assessment::WorkingInput& input) {
        return input.name == "corrugated_factor" && input.value == "0.08";
    }));
}

TEST(Valve, OfEveryKindThatThrottlesFollowsItsTable)
{
    TeePlan plan;
    const Id run = plan.run(plan::PumpEnd{plan.pump}, plan.toA(), {{0, 0, 0.1}, {0, 0, 1}, {3, 0, 1}});
    const auto kOf = [&](const char* fitting, double opening) {
        plan.drawn.changeRun(run, [&](plan::Run& r) {
            r.valves.resize(1);
            r.valves[0].id = {901};
            r.valves[0].tag = "V9";
            r.valves[0].fittingId = fitting;
            r.valves[0].opening = opening;
        });
        return lossesOf(plan, run, FittingRole::valve).front().k;
    };
    EXPECT_NEAR(kOf("butterfly-valve", 1.0 - 40.0 / 90.0), 0.8 + 10.8, 1e-9);
    EXPECT_NEAR(kOf("ball-valve-reduced", 0.5), 0.35 + 31.2, 1e-9);
    EXPECT_NEAR(kOf("angle-valve", 0.5), 3.5, 1e-12); // no table: counts as open
}

TEST(RunEnds, LoseTheExitAtAVesselAndNothingAtThePump)
{
    TeePlan plan;
    const Id run = plan.run(plan::PumpEnd{plan.pump}, plan.toA(), {{0, 0, 0.1}, {3, 0, 1}});
    const auto assessed = assess(plan.drawn);
    const auto& result = runOf(assessed, run);
    ASSERT_EQ(result.fittings.size(), 1U);
    EXPECT_EQ(result.fittings[0].role, FittingRole::exit);
    EXPECT_DOUBLE_EQ(result.sumK, 1.0);
}

TEST(Valve, AddsWhatItsOpeningCosts)
{
    TeePlan plan;
    const Id run = plan.run(plan::PumpEnd{plan.pump}, plan.toA(), {{0, 0, 0.1}, {3, 0, 1}});
    const Id valve = plan.drawn.valve(run, "ball-valve", 0.5);
    EXPECT_NEAR(lossesOf(plan, run, FittingRole::valve)[0].k, 31.2 + 0.1, 1e-9); // Weisbach, 45 degrees
    EXPECT_EQ(lossesOf(plan, run, FittingRole::valve)[0].element, valve);
    const double throttled = flowOf(assess(plan.drawn), run, RunningState::least);
    plan.drawn.changeRun(run, [](plan::Run& r) { r.valves[0].opening = 1.0; });
    EXPECT_GT(flowOf(assess(plan.drawn), run, RunningState::least), throttled);
    plan.drawn.changeRun(run, [](plan::Run& r) { r.valves[0].opening = 0.05; });
    EXPECT_TRUE(lossesOf(plan, run, FittingRole::valve)[0].shut);
    EXPECT_EQ(flowOf(assess(plan.drawn), run, RunningState::least), 0.0);
}

TEST(Valve, NonReturnLetsNothingBack)
{
    TeePlan plan;
    const Id run = plan.run(plan.toA(), plan::PumpEnd{plan.pump}, {{3, 0, 1}, {0, 0, 0.1}}); // drawn towards the pump
    plan.drawn.valve(run, "swing-check", 1.0);
    EXPECT_EQ(flowOf(assess(plan.drawn), run, RunningState::least), 0.0);
}

TEST(Pipework, IsRougherTheLongerItServes)
{
    TeePlan plan;
    const Id run = plan.run(plan::PumpEnd{plan.pump}, plan.toA(), {{0, 0, 0.1}, {3, 0, 1}});
    double last = 1e9;
    for (const auto condition :
         {plan::PipeCondition::asNew, plan::PipeCondition::inService, plan::PipeCondition::fouled}) {
        plan.drawn.changeSite([condition](plan::Site& site) { site.pipeCondition = condition; });
        const double flow = flowOf(assess(plan.drawn), run, RunningState::least);
        EXPECT_LT(flow, last);
        last = flow;
    }
    EXPECT_DOUBLE_EQ(units::inMillimetres(runOf(assess(plan.drawn), run).roughness), 0.1);
}

TEST(Pipework, SaysWhichRunHasNoPipe)
{
    TeePlan plan;
    const Id run = plan.run(plan::PumpEnd{plan.pump}, plan.toA(), {{0, 0, 0.1}, {3, 0, 1}}, "no-such-pipe");
    const auto result = assess(plan.drawn);
    const auto& flow = runOf(result, run).flow[RunningState::least];
    ASSERT_FALSE(flow.ok());
    EXPECT_EQ(flow.reason().id, "pipe-unknown");
    EXPECT_EQ(flow.reason().element, run);
}

TEST(Pipework, KeepsWhatStandsAboveALevelApart)
{
    assessment::DrawnRun run;
    run.bore = units::millimetres(20.0);
    run.stretches = {{units::metres(2.0), units::elevationMetres(0.0), units::elevationMetres(1.0)},
                     {units::metres(3.0), units::elevationMetres(1.0), units::elevationMetres(1.0)}};
    const double perMetre = units::pi / 4.0 * 0.02 * 0.02;
    EXPECT_NEAR(units::inCubicMetres(assessment::contentAbove(run, units::elevationMetres(-1.0))), 5.0 * perMetre,
                1e-15);
    EXPECT_NEAR(units::inCubicMetres(assessment::contentAbove(run, units::elevationMetres(0.25))), 4.5 * perMetre,
                1e-15);
    EXPECT_EQ(units::inCubicMetres(assessment::contentAbove(run, units::elevationMetres(1.5))), 0.0);
}

} // namespace

// Who holds how much water at which level while the pump runs.
#include "core/hydraulics/overflow.hpp"
#include "tests/core/assessment/assessing.hpp"
#include "tests/support/manifolds.hpp"
#include "tests/support/sound_plan.hpp"

namespace
{

using namespace sumpwright;
using namespace sumpwright::test;

double allLitres(const assessment::Assessment& result, WaterState state)
{
    const auto& total = result.water->totals[state];
    EXPECT_TRUE(total.ok()) << (total.ok() ? "" : total.reason().text);
    return total.ok() ? units::inLitres(total->all()) : -1.0;
}

TEST(RunningStates, HoldTheSameWaterInEveryState)
{
    for (const double entry : {0.30, 0.35, 0.45}) {
        SoundPlan plan;
        plan.drawn.changeVessel(plan.sump,
                                [entry](plan::Vessel& sump) { sump.runningLevel = units::elevationMetres(entry); });
        const auto result = assess(plan.drawn);
        const double most = allLitres(result, WaterState::runningMost);
        EXPECT_NEAR(allLitres(result, WaterState::runningLeast), most, 1e-9 * most);
        EXPECT_NEAR(allLitres(result, WaterState::pumpStopped), most, 1e-9 * most);
        EXPECT_GT(allLitres(result, WaterState::toRim), most);
    }
}

// Near the speed where an outlet is only just reached, one state may feed it and the other not.
TEST(RunningStates, HoldTheSameWaterHoweverWeakThePump)
{
    int fedInOneStateOnly = 0;
    for (int permille = 550; permille <= 800; permille += 2) {
        SoundPlan plan;
        plan.drawn.changePump(plan.pump, [permille](plan::Pump& pump) { pump.speed = permille / 1000.0; });
        const auto result = assess(plan.drawn);
        const double most = allLitres(result, WaterState::runningMost);
        EXPECT_NEAR(allLitres(result, WaterState::runningLeast), most, 1e-9 * most) << permille;
        EXPECT_NEAR(allLitres(result, WaterState::pumpStopped), most, 1e-9 * most) << permille;
        for (const base::Id drain : {plan.tankDrain, plan.drain1, plan.drain2}) {
            const auto& flow = assessment::find(result.flow->runs, drain)->flow;
            const auto feeds = [&flow](RunningState state) {
                return flow[state].ok() && flow[state]->flow > units::Flow();
            };
            fedInOneStateOnly += feeds(RunningState::least) != feeds(RunningState::most) ? 1 : 0;
        }
    }
    EXPECT_GT(fedInOneStateOnly, 0) << "the sweep meets the case it is for";
}

TEST(RunningStates, CarryNothingOverAHeightThatNoPumpReaches)
{
    SoundPlan plan;
    plan.drawn.changeRun(plan.tankBranch, [](plan::Run& run) {
        run.vertices.insert(run.vertices.begin() + 1, run.vertices.front());
        run.vertices[1].level = run.vertices[2].level = units::elevationMetres(3.4);
    });
    const auto flowTo = [&plan](base::Id run) {
        return units::inLitresPerHour(
            assessment::find(assess(plan.drawn).flow->runs, run)->flow[RunningState::most]->flow);
    };
    EXPECT_GT(flowTo(plan.tankBranch), 0.0) << "3.2 m over water at 0.35 m are 3.55 m";
    plan.drawn.changeRun(plan.tankBranch, [](plan::Run& run) {
        run.vertices[1].level = run.vertices[2].level = units::elevationMetres(3.6);
    });
    EXPECT_EQ(flowTo(plan.tankBranch), 0.0);
    EXPECT_GT(flowTo(plan.branch1), 0.0);
}

TEST(RunningStates, TakeTheEntryForTheSumpWithEveryBedDrained)
{
    const SoundPlan plan;
    const auto result = assess(plan.drawn);
    EXPECT_EQ(levelOf(result, plan.sump, WaterState::runningMost), 0.35);
    EXPECT_EQ(levelOf(result, plan.bed1, WaterState::runningMost), 0.736);
    EXPECT_EQ(waterOf(result, plan.sump, WaterState::runningMost)->heldBy, assessment::HeldBy::entry);
    EXPECT_EQ(waterOf(result, plan.bed1, WaterState::runningMost)->heldBy, assessment::HeldBy::drainLevel);
}

// Hand arithmetic: what the beds take up when they flood, and the little that the tank's lip holds less, leaves the
// sump.
TEST(RunningStates, LowerTheSumpByWhatTheBedsTakeUp)
{
    const SoundPlan plan;
    const auto result = assess(plan.drawn);
    double taken = 0.0;
    for (const base::Id id : {plan.bed1, plan.bed2}) {
        const auto& inflow = assessment::find(result.water->vessels, id)->inflow[RunningState::least];
        const double overLip = units::inMetres(hydraulics::overflowLevel({units::metres(0.0266)}, *inflow)->predicted);
        EXPECT_NEAR(levelOf(result, id, WaterState::runningLeast), 0.956 + overLip, 1e-12);
        taken += 1.2 * 0.8 * 0.415 * (0.956 + overLip - 0.736); // gravel, typical porosity 0.415
    }
    const double tank =
        (levelOf(result, plan.tank, WaterState::runningLeast) - levelOf(result, plan.tank, WaterState::runningMost)) *
        1.2 * 1.2;
    const double fall =
        levelOf(result, plan.sump, WaterState::runningMost) - levelOf(result, plan.sump, WaterState::runningLeast);
    EXPECT_NEAR(fall, (taken + tank) / (1.0 * 0.8), 1e-9);
    EXPECT_LT(tank, 0.0); // less flow at the lower sump level
}

TEST(RunningStates, PumpLessAtTheLowestLevel)
{
    const SoundPlan plan;
    const auto result = assess(plan.drawn);
    const auto& duty = result.pumps->pumps.front().duty;
    EXPECT_LT(duty[RunningState::least]->flow, duty[RunningState::most]->flow);
}

TEST(RunningStates, SettleTheLevelOverASubmergedInletTogetherWithTheFlow)
{
    SoundPlan plan;
    plan.drawn.changePort(plan.tank, plan.tankInlet,
                          [](plan::Port& port) { port.level = units::elevationMetres(0.5); });
    const auto result = assess(plan.drawn);
    for (const RunningState state : assessment::allRunningStates) {
        const WaterState water = state == RunningState::least ? WaterState::runningLeast : WaterState::runningMost;
        const auto& inflow = assessment::find(result.water->vessels, plan.tank)->inflow[state];
        const double over = units::inMetres(hydraulics::overflowLevel({units::metres(0.0638)}, *inflow)->predicted);
        EXPECT_NEAR(levelOf(result, plan.tank, water), 0.8 + over, 1e-10);
    }
    SoundPlan free; // the same mouth in the air, at the level of that water: the same flow
    free.drawn.changePort(free.tank, free.tankInlet, [&](plan::Port& port) {
        port.level = units::elevationMetres(levelOf(result, plan.tank, WaterState::runningLeast));
    });
    EXPECT_NEAR(flowOf(assess(free.drawn), free.tankBranch, RunningState::least),
                flowOf(result, plan.tankBranch, RunningState::least), 1e-5);
}

TEST(RunningStates, SayThatTheSumpRunsDry)
{
    SoundPlan plan;
    plan.drawn.changeVessel(plan.sump, [](plan::Vessel& sump) { sump.runningLevel = units::elevationMetres(0.10); });
    const auto result = assess(plan.drawn);
    const auto& least = waterOf(result, plan.sump, WaterState::runningLeast);
    ASSERT_FALSE(least.ok());
    EXPECT_EQ(least.status(), assessment::Status::notSolved);
    EXPECT_EQ(least.reason().id, "sump-runs-dry");
    EXPECT_EQ(least.reason().element, plan.sump);
    EXPECT_TRUE(waterOf(result, plan.sump, WaterState::runningMost).ok());
}

TEST(RunningStates, AskForTheSumpLevel)
{
    SoundPlan plan;
    plan.drawn.changeVessel(plan.sump, [](plan::Vessel& sump) { sump.runningLevel.reset(); });
    const auto result = assess(plan.drawn);
    for (const WaterState state : {WaterState::runningLeast, WaterState::runningMost, WaterState::pumpStopped}) {
        const auto& water = waterOf(result, plan.tank, state);
        ASSERT_FALSE(water.ok());
        EXPECT_EQ(water.status(), assessment::Status::notComputed);
        EXPECT_EQ(water.reason().id, "sump-level-missing");
        EXPECT_EQ(result.water->totals[state].reason().id, "sump-level-missing");
    }
    EXPECT_TRUE(waterOf(result, plan.tank, WaterState::toRim).ok());
}

TEST(RunningStates, DoNotShareWaterOutBetweenTwoSumps)
{
    SoundPlan plan;
    const base::Id second = plan.drawn.sump({5.0, 1.0, 0.0}, 0.5, 0.5, 0.5, 0.3);
    const base::Id inlet = plan.drawn.port(second, plan::PortKind::inlet, {5.0, 1.0, 0.4});
    plan.drawn.changeRun(plan.drain1, [&](plan::Run& run) { run.to = plan::PortEnd{second, inlet, {}}; });
    const auto result = assess(plan.drawn);
    EXPECT_TRUE(waterOf(result, plan.sump, WaterState::runningMost).ok());
    ASSERT_FALSE(waterOf(result, plan.sump, WaterState::runningLeast).ok());
    EXPECT_EQ(waterOf(result, plan.sump, WaterState::runningLeast).reason().id, "several-sumps");
    EXPECT_FALSE(waterOf(result, plan.sump, WaterState::pumpStopped).ok());
}

TEST(RunningStates, KeepTwoCircuitsApart)
{
    SoundPlan alone;
    SoundPlan plan;
    const base::Id sump = plan.drawn.sump({5.0, 1.0, 0.0}, 0.5, 0.5, 0.5, 0.3);
    const base::Id pump = plan.drawn.pump(sump, "G1000", 0.1);
    const base::Id back = plan.drawn.port(sump, plan::PortKind::inlet, {5.2, 1.0, 0.45});
    const base::Id run = plan.drawn.run(plan::Service::pressure, "pvcu-pn16-20", plan::PumpEnd{pump},
                                        plan::PortEnd{sump, back, {}}, {{5, 1, 0.1}, {5, 1, 0.6}, {5.2, 1, 0.45}});
    const auto result = assess(plan.drawn);
    EXPECT_GT(flowOf(result, run, RunningState::least), 100.0);
    EXPECT_EQ(flowOf(result, plan.riser, RunningState::least),
              flowOf(assess(alone.drawn), alone.riser, RunningState::least));
    EXPECT_EQ(levelOf(result, sump, WaterState::runningLeast), 0.3);
}

TEST(RunningStates, LetAVesselAloneStandAtItsLip)
{
    DrawnPlan drawn;
    const base::Id tank = drawn.vessel(plan::VesselKind::fishTank, {0, 0, 0}, 1.0, 1.0, 1.0);
    auto result = assess(drawn);
    EXPECT_EQ(waterOf(result, tank, WaterState::runningLeast).reason().id, "level-unknown");
    EXPECT_EQ(result.water->totals[WaterState::runningLeast]->leftOut, std::vector<base::Id>{tank});
    drawn.port(tank, plan::PortKind::lip, {0, 0, 0.8}, 0.05);
    result = assess(drawn);
    EXPECT_NEAR(litresIn(result, tank, WaterState::runningLeast), 800.0, 1e-9);
    EXPECT_NEAR(litresIn(result, tank, WaterState::pumpStopped), 800.0, 1e-9);
    EXPECT_NEAR(litresIn(result, tank, WaterState::toRim), 1000.0, 1e-9);
}

TEST(RunningStates, AreTheSameWhenNoBedMoves)
{
    const ManifoldM1 plan;
    const auto result = assess(plan.drawn);
    EXPECT_NEAR(levelOf(result, plan.sump, WaterState::runningLeast), 0.20, 1e-12);
    EXPECT_NEAR(flowOf(result, plan.riser, RunningState::least), flowOf(result, plan.riser, RunningState::most), 1e-6);
}

TEST(RunningStates, StandStillWhenThePumpIsOff)
{
    SoundPlan plan;
    plan.drawn.changePump(plan.pump, [](plan::Pump& pump) { pump.running = false; });
    const auto result = assess(plan.drawn);
    EXPECT_EQ(flowOf(result, plan.riser, RunningState::most), 0.0);
    EXPECT_EQ(levelOf(result, plan.tank, WaterState::runningMost), 0.8);
    EXPECT_EQ(result.pumps->pumps.front().duty[RunningState::most].reason().id, "pump-off");
}

TEST(RunningStates, SurviveAPlanWithNothingInIt)
{
    const DrawnPlan drawn;
    const auto result = assess(drawn);
    EXPECT_TRUE(result.water->vessels.empty());
    EXPECT_EQ(allLitres(result, WaterState::runningLeast), 0.0);
}

} // namespace

// How water runs on by itself from vessel to vessel.
#include "tests/core/assessment/assessing.hpp"
#include "tests/support/sound_plan.hpp"

namespace
{

using namespace sumpwright;
using namespace sumpwright::test;
using plan::PortKind;
using plan::Service;

constexpr const char* pipe = "pvcu-pn16-63";

TEST(Gravity, LeadsOnWhatAVesselReceives)
{
    const SoundPlan plan;
    const auto result = assess(plan.drawn);
    EXPECT_NEAR(flowOf(result, plan.tankDrain, RunningState::least),
                flowOf(result, plan.tankBranch, RunningState::least), 1e-9);
    const auto& drain = runOf(result, plan.drain1).flow[RunningState::least];
    EXPECT_TRUE(drain->meanOfTide);
    EXPECT_FALSE(drain->losses.has_value());
    EXPECT_FALSE(runOf(result, plan.tankDrain).flow[RunningState::least]->meanOfTide);
    const auto* sump = assessment::find(result.water->vessels, plan.sump);
    const double back = flowOf(result, plan.tankDrain, RunningState::least) +
                        flowOf(result, plan.drain1, RunningState::least) +
                        flowOf(result, plan.drain2, RunningState::least);
    EXPECT_NEAR(units::inLitresPerHour(*sump->inflow[RunningState::least]), back, 1e-9 * back);
    EXPECT_NEAR(units::inLitresPerHour(*sump->pumpedOut[RunningState::least]), back, 1e-6 * back);
    EXPECT_EQ(*sump->leftOver(RunningState::least), units::Flow());
    EXPECT_EQ(*assessment::find(result.water->vessels, plan.tank)->pumpedOut[RunningState::least], units::Flow());
}

// The tank's overflow feeds a settler, and that the sump.
TEST(Gravity, CascadesThroughVessels)
{
    SoundPlan plan;
    const Id settler = plan.drawn.vessel(plan::VesselKind::settler, {2.0, 4.4, 0.0}, 0.4, 0.4, 0.75);
    const Id in = plan.drawn.port(settler, PortKind::inlet, {2.0, 4.4, 0.72});
    plan.drawn.drain(settler, plan.sump, {2.0, 4.5, 0.65}, 0.06, {0.9, 0.9, 0.55});
    plan.drawn.changeRun(plan.tankDrain, [&](plan::Run& run) { run.to = plan::PortEnd{settler, in, {}}; });
    const auto result = assess(plan.drawn);
    EXPECT_GT(levelOf(result, settler, WaterState::runningLeast), 0.66);
    EXPECT_NEAR(units::inLitresPerHour(*assessment::find(result.water->vessels, settler)->inflow[RunningState::most]),
                flowOf(result, plan.tankBranch, RunningState::most), 1e-9);
}

TEST(Gravity, RunsAgainstTheDrawingWhereItWasDrawnUphill)
{
    SoundPlan plan;
    plan.drawn.changeRun(plan.tankDrain, [](plan::Run& run) {
        std::swap(run.from, run.to);
        std::reverse(run.vertices.begin(), run.vertices.end());
    });
    const SoundPlan asDrawn;
    const auto result = assess(plan.drawn), other = assess(asDrawn.drawn);
    EXPECT_EQ(flowOf(result, plan.tankDrain, RunningState::least),
              -flowOf(other, asDrawn.tankDrain, RunningState::least));
    EXPECT_EQ(levelOf(result, plan.tank, WaterState::runningLeast),
              levelOf(other, asDrawn.tank, WaterState::runningLeast));
}

TEST(Gravity, JoinsAtATeeAndRefusesToDivideThere)
{
    SoundPlan plan;
    const Id tee = plan.drawn.tee({2.0, 1.0, 0.58});
    const Id in = plan.drawn.port(plan.sump, PortKind::inlet, {1.1, 1.0, 0.5});
    for (const Id drain : {plan.drain1, plan.drain2})
        plan.drawn.changeRun(drain, [&](plan::Run& run) { run.to = plan::TeeEnd{tee, {}}; });
    const Id main = plan.drawn.run(Service::gravity, pipe, plan::TeeEnd{tee, {}}, plan::PortEnd{plan.sump, in, {}},
                                   {{2.0, 1.0, 0.58}, {1.1, 1.0, 0.5}});
    auto result = assess(plan.drawn);
    EXPECT_NEAR(flowOf(result, main, RunningState::least),
                flowOf(result, plan.drain1, RunningState::least) + flowOf(result, plan.drain2, RunningState::least),
                1e-9);
    EXPECT_TRUE(runOf(result, main).flow[RunningState::least]->meanOfTide);

    const Id second = plan.drawn.port(plan.sump, PortKind::inlet, {1.2, 1.0, 0.5});
    plan.drawn.run(Service::gravity, pipe, plan::TeeEnd{tee, {}}, plan::PortEnd{plan.sump, second, {}},
                   {{2.0, 1.0, 0.58}, {1.2, 1.0, 0.5}});
    result = assess(plan.drawn);
    EXPECT_EQ(runOf(result, main).flow[RunningState::least].reason().id, "gravity-tee-divides");
    EXPECT_TRUE(waterOf(result, plan.sump, WaterState::runningLeast).ok()); // its level does not hang on it
}

TEST(Gravity, SaysWhereRunsLeadInACircle)
{
    SoundPlan plan;
    const Id a = plan.drawn.vessel(plan::VesselKind::settler, {4.5, 1, 0}, 0.4, 0.4, 0.6);
    const Id b = plan.drawn.vessel(plan::VesselKind::settler, {4.5, 3, 0}, 0.4, 0.4, 0.6);
    plan.drawn.drain(a, b, {4.5, 1, 0.5}, 0.05, {4.5, 3, 0.4});
    plan.drawn.drain(b, a, {4.5, 3.1, 0.5}, 0.05, {4.5, 1.1, 0.4});
    const auto result = assess(plan.drawn);
    EXPECT_EQ(waterOf(result, a, WaterState::runningLeast).reason().id, "gravity-loop");
    EXPECT_TRUE(waterOf(result, plan.tank, WaterState::runningLeast).ok()); // another circuit
}

TEST(Gravity, ARunThatIsShutLetsTheVesselSpill)
{
    SoundPlan plan;
    plan.drawn.valve(plan.tankDrain, "gate-valve", 0.0);
    const auto result = assess(plan.drawn);
    EXPECT_EQ(waterOf(result, plan.tank, WaterState::runningMost).reason().id, "no-way-out");
    EXPECT_EQ(flowOf(result, plan.tankDrain, RunningState::most), 0.0);
}

TEST(Gravity, HoldsAVesselAsHighAsItsWallOutletsRunRises)
{
    SoundPlan plan;
    const Id settler = plan.drawn.vessel(plan::VesselKind::settler, {4.5, 2.2, 0.0}, 0.5, 0.5, 1.2);
    const Id in = plan.drawn.port(settler, PortKind::inlet, {4.5, 2.2, 1.1});
    const Id out = plan.drawn.port(settler, PortKind::sideOutlet, {4.25, 2.2, 0.2});
    const Id back = plan.drawn.port(plan.sump, PortKind::inlet, {1.1, 0.8, 0.5});
    plan.drawn.run(Service::pressure, "pvcu-pn16-25", plan::TeeEnd{plan.tee2, {}}, plan::PortEnd{settler, in, {}},
                   {{3.0, 2.2, 1.2}, {4.5, 2.2, 1.2}, {4.5, 2.2, 1.1}});
    plan.drawn.run(Service::gravity, pipe, plan::PortEnd{settler, out, {}}, plan::PortEnd{plan.sump, back, {}},
                   {{4.25, 2.2, 0.2}, {4.1, 2.2, 0.2}, {4.1, 2.2, 0.9}, {1.1, 0.8, 0.5}});
    const auto result = assess(plan.drawn);
    EXPECT_NEAR(levelOf(result, settler, WaterState::runningLeast), 0.9 + 0.0536 / 2, 1e-12); // top of the bore there
    EXPECT_NEAR(levelOf(result, settler, WaterState::pumpStopped), 0.9 - 0.0536 / 2, 1e-12);  // its invert
}

} // namespace

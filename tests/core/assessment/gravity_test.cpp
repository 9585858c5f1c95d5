// How water runs on by itself from vessel to vessel.
#include "core/hydraulics/round_channel.hpp"
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

TEST(Gravity, JoinsAtATeeAndDividesThere)
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
    const double together = flowOf(result, main, RunningState::least);
    result = assess(plan.drawn);
    const double first = flowOf(result, main, RunningState::least);
    const double other = flowOf(result, Id{second.number + 1}, RunningState::least);
    EXPECT_NEAR(first + other, together, 1e-9 * together);
    EXPECT_GT(first, 0.3 * together);
    EXPECT_GT(other, 0.3 * together);
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
    const double crest = 0.9 - 0.0536 / 2, level = levelOf(result, settler, WaterState::runningLeast);
    const auto flow = units::litresPerHour(flowOf(result, Id{back.number + 2}, RunningState::least));
    EXPECT_GT(level, crest + units::inMetres(hydraulics::criticalDepth(units::millimetres(53.6), flow)));
    EXPECT_LT(level, crest + 0.0536);
    EXPECT_NEAR(levelOf(result, settler, WaterState::pumpStopped), 0.9 - 0.0536 / 2, 1e-12); // its invert
}

// A tank that is fed by the pump and overflows into a header, from which two settlers are fed.
struct GravityHeader {
    DrawnPlan drawn;
    Id sump, tank, overflow, riser, header, left, right, toLeft, toRight;

    explicit GravityHeader(double leftMouth = 0.6, double rightMouth = 0.6)
    {
        sump = drawn.sump({1, 1, -0.5}, 2.0, 1.0, 0.7, -0.1);
        tank = drawn.vessel(plan::VesselKind::fishTank, {4, 1, 0}, 1.2, 1.2, 1.0);
        const Id in = drawn.port(tank, PortKind::inlet, {4, 1, 1.1});
        overflow = drawn.port(tank, PortKind::lip, {4.5, 1, 0.85});
        const Id pump = drawn.pump(sump, "G4500", -0.3);
        riser = drawn.run(Service::pressure, "pvcu-pn16-32", plan::PumpEnd{pump, {}}, plan::PortEnd{tank, in, {}},
                          {{1, 1, -0.3}, {1, 1, 1.2}, {4, 1, 1.2}, {4, 1, 1.1}});
        const Id tee = drawn.tee({5.5, 1, 0.75});
        header = drawn.run(Service::gravity, pipe, plan::PortEnd{tank, overflow, {}}, plan::TeeEnd{tee, {}},
                           {{4.5, 1, 0.85}, {4.5, 1, 0.76}, {5.5, 1, 0.75}});
        const auto branch = [&](double y, double mouth, Id& vessel) {
            vessel = drawn.vessel(plan::VesselKind::settler, {7, y, 0}, 0.6, 0.6, 0.7);
            const Id inlet = drawn.port(vessel, PortKind::inlet, {7, y, mouth});
            drawn.drain(vessel, sump, {7.2, y, 0.4}, 0.0536, {1.2, 1, 0.1});
            return drawn.run(Service::gravity, "pvcu-pn16-32", plan::TeeEnd{tee, {}}, plan::PortEnd{vessel, inlet, {}},
                             {{5.5, 1, 0.75}, {5.5, y, 0.74}, {7, y, mouth}});
        };
        toLeft = branch(2.5, leftMouth, left);
        toRight = branch(-0.5, rightMouth, right);
    }
};

TEST(Gravity, AHeaderFeedsTwinsAlike)
{
    const GravityHeader plan;
    const auto result = assess(plan.drawn);
    for (const RunningState state : assessment::allRunningStates) {
        const double all = flowOf(result, plan.header, state);
        EXPECT_GT(all, 1000.0);
        EXPECT_NEAR(flowOf(result, plan.toLeft, state), 0.5 * all, 1e-6 * all);
        EXPECT_NEAR(flowOf(result, plan.toLeft, state) + flowOf(result, plan.toRight, state), all, 1e-12 * all);
    }
}

TEST(Gravity, AHeaderGivesLessToTheBranchThatIsFlooded)
{
    GravityHeader plan;
    plan.drawn.changeVessel(plan.right, [](plan::Vessel& vessel) { // its overflow stands above the header
        vessel.wallHeight = units::metres(1.2);
        for (plan::Port& port : vessel.ports)
            if (port.kind == PortKind::lip)
                port.level = units::elevationMetres(0.765);
    });
    plan.drawn.changeRun(Id{plan.toRight.number - 1},
                         [](plan::Run& run) { run.vertices.front().level = units::elevationMetres(0.765); });
    const auto result = assess(plan.drawn);
    const double all = flowOf(result, plan.header, RunningState::least);
    EXPECT_LT(flowOf(result, plan.toRight, RunningState::least), 0.45 * all);
    EXPECT_NEAR(flowOf(result, plan.toLeft, RunningState::least) + flowOf(result, plan.toRight, RunningState::least),
                all, 1e-12 * all);
    EXPECT_TRUE(runOf(result, plan.toRight).flow[RunningState::least]->open->backedUp);
    EXPECT_FALSE(runOf(result, plan.toLeft).flow[RunningState::least]->open->backedUp);
}

TEST(Gravity, AHeaderTooThinHoldsTheTankUpAndSaysItIsFull)
{
    GravityHeader plan;
    const double lipHeld = levelOf(assess(plan.drawn), plan.tank, WaterState::runningLeast);
    EXPECT_NEAR(lipHeld, 0.865, 0.01);
    plan.drawn.changeRun(plan.header, [](plan::Run& run) { run.pipeId = "pvcu-pn16-32"; });
    plan.drawn.changePort(plan.tank, plan.overflow, [](plan::Port& port) { port.bore = units::metres(0.0536); });
    const auto result = assess(plan.drawn);
    EXPECT_GT(levelOf(result, plan.tank, WaterState::runningLeast), lipHeld + 0.02);
    const auto& open = runOf(result, plan.header).flow[RunningState::least]->open;
    ASSERT_TRUE(open);
    EXPECT_TRUE(open->surcharged);
    EXPECT_EQ(open->fullest, 1.0);
    ASSERT_TRUE(open->flattest);
    EXPECT_FALSE(open->flattest->depth); // more than its fall carries
}

// What the header takes at the rim hangs on the level at its tee, and that on what the header takes.
TEST(Gravity, ATankAtItsRimSendsWhatItsHeaderTakesAndNoMore)
{
    GravityHeader plan;
    plan.drawn.changeRun(plan.header, [](plan::Run& run) { run.pipeId = "pvcu-pn16-25"; });
    plan.drawn.changePort(plan.tank, plan.overflow, [](plan::Port& port) { port.bore = units::metres(0.0536); });
    for (const Id branch : {plan.toLeft, plan.toRight})
        plan.drawn.changeRun(branch, [](plan::Run& run) { run.pipeId = "pvcu-pn16-20"; });
    const auto result = assess(plan.drawn);
    const auto& tank = waterOf(result, plan.tank, WaterState::runningLeast);
    ASSERT_TRUE(tank.ok());
    ASSERT_EQ(tank->heldBy, assessment::HeldBy::rim);
    const double all = flowOf(result, plan.header, RunningState::least);
    EXPECT_GT(all, 100.0);
    EXPECT_LT(all, flowOf(result, plan.riser, RunningState::least));
    EXPECT_NEAR(units::inMetres(runOf(result, plan.header).flow[RunningState::least]->open->levelNeeded), 1.0, 1e-9);
    EXPECT_NEAR(flowOf(result, plan.toLeft, RunningState::least) + flowOf(result, plan.toRight, RunningState::least),
                all, 1e-9 * all);
}

TEST(Gravity, TellsDepthVelocityAndCapacityOfARun)
{
    const GravityHeader plan;
    const auto result = assess(plan.drawn);
    const auto& open = runOf(result, plan.header).flow[RunningState::least]->open;
    ASSERT_TRUE(open && open->flattest && open->slowest);
    EXPECT_EQ(open->flattest->stretch, 1U);
    EXPECT_NEAR(units::inSi(open->flattest->fall), 0.01, 1e-6);
    EXPECT_GT(open->fullest, 0.3);
    EXPECT_EQ(open->stretches.size(), 2U);
    EXPECT_LT(open->stretches[1].endGrade, open->stretches[1].startGrade);
}

} // namespace

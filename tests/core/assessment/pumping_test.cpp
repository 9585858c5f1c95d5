// Duty points, curves and where the head goes.
#include "core/hydraulics/duty_point.hpp"
#include "core/hydraulics/energy.hpp"
#include "core/nature/water.hpp"
#include "tests/core/assessment/assessing.hpp"
#include "tests/support/manifolds.hpp"
#include "tests/support/sound_plan.hpp"

namespace
{

using namespace sumpwright;
using namespace sumpwright::test;
using assessment::HeadStepKind;

// One pump, one pipe into a tank above: the network and the single-line duty point of the core agree.
struct OneLine {
    DrawnPlan drawn;
    Id sump, pump, tank, run;
    OneLine()
    {
        sump = drawn.sump({0, 0, 0}, 1, 1, 0.6, 0.3);
        pump = drawn.pump(sump, "G2500", 0.1);
        tank = drawn.vessel(plan::VesselKind::fishTank, {3, 0, 0}, 1, 1, 1);
        const Id inlet = drawn.port(tank, plan::PortKind::inlet, {3, 0, 1.1});
        drawn.drain(tank, sump, {3.3, 0, 0.9}, 0.0536, {0.3, 0, 0.5});
        run = drawn.run(plan::Service::pressure, "pvcu-pn16-25", plan::PumpEnd{pump}, plan::PortEnd{tank, inlet, {}},
                        {{0, 0, 0.1}, {0, 0, 1.1}, {3, 0, 1.1}});
    }
};

TEST(DutyPoint, OfOneLineIsThatOfTheSinglePipeFormula)
{
    const OneLine line;
    const auto result = assess(line.drawn);
    const auto& duty = result.pumps->pumps.front().duty[RunningState::least];
    std::vector<hydraulics::PumpPoint> points;
    for (const auto& point : (*result.catalogue->pump("G2500"))->points)
        points.push_back({point.flow, point.head});
    const auto curve = hydraulics::PumpCurve::fromPoints(points);
    const hydraulics::PipeSystem system{
        units::metresHead(1.1 - 0.3), {units::metres(0.0212), units::metres(4.0), units::metres(1.5e-6)}, 0.9 + 1.0};
    const auto expected = hydraulics::dutyPoint(*curve, 1.0, system, *nature::waterAt(units::celsius(20.0)));
    ASSERT_TRUE(expected.ok());
    EXPECT_NEAR(units::inLitresPerHour(duty->flow), units::inLitresPerHour(expected->flow), 1e-5);
    EXPECT_NEAR(units::inMetresHead(duty->head), units::inMetresHead(expected->head), 1e-8);
}

TEST(DutyPoint, TellsPowerEnergyAndCost)
{
    const SoundPlan plan;
    const auto result = assess(plan.drawn);
    const auto& duty = result.pumps->pumps.front().duty[RunningState::least];
    ASSERT_TRUE(duty->power.ok());
    const auto& power = *duty->power;
    const double hydraulic = units::inKilogramsPerCubicMetre(*result.site->density) * units::standardGravity *
                             units::inCubicMetresPerSecond(duty->flow) * units::inMetresHead(duty->head);
    EXPECT_NEAR(units::inWatts(power.hydraulic), hydraulic, 1e-9);
    EXPECT_NEAR(power.wireToWater, hydraulic / units::inWatts(power.electrical), 1e-12);
    EXPECT_NEAR(units::inKilowattHours(power.energyPerYear), units::inWatts(power.electrical) * 8.76, 1e-9);
    EXPECT_NEAR(units::inCurrency(*power.costPerYear), 0.30 * units::inWatts(power.electrical) * 8.76, 1e-9);
    EXPECT_NEAR(assessment::inLitresPerHourPerWatt(power.flowPerPower),
                units::inLitresPerHour(duty->flow) / units::inWatts(power.electrical), 1e-9);
    EXPECT_NEAR(duty->shareOfBoxFigure, units::inLitresPerHour(duty->flow) / 4500.0, 1e-12);
}

TEST(DutyPoint, WithoutAPriceHasNoCostAndWithoutAPowerNoEnergy)
{
    SoundPlan plan;
    plan.drawn.changeSite([](plan::Site& site) { site.powerPrice.reset(); });
    EXPECT_FALSE(assess(plan.drawn).pumps->pumps.front().duty[RunningState::least]->power->costPerYear.has_value());
    plan.drawn.changePump(plan.pump, [](plan::Pump& pump) {
        pump.modelId.clear();
        pump.ownCurve = {{units::litresPerHour(0), units::metresHead(3.0)},
                         {units::litresPerHour(4000), units::metresHead(0.5)}};
    });
    const auto result = assess(plan.drawn);
    const auto& power = result.pumps->pumps.front().duty[RunningState::least]->power;
    EXPECT_EQ(power.reason().id, "pump-power-missing");
}

TEST(PumpFault, IsToldAndStopsNothingElse)
{
    SoundPlan plan;
    plan.drawn.changePump(plan.pump, [](plan::Pump& pump) {
        pump.modelId.clear();
        pump.ownCurve = {{units::litresPerHour(0), units::metresHead(1.0)},
                         {units::litresPerHour(4000), units::metresHead(2.0)}};
    });
    const auto result = assess(plan.drawn);
    const auto& pump = result.pumps->pumps.front();
    EXPECT_EQ(pump.duty[RunningState::least].reason().id, "pump-curve-bad");
    EXPECT_EQ(pump.duty[RunningState::least].reason().element, plan.pump);
    EXPECT_TRUE(pump.pumpCurve.empty());
    EXPECT_EQ(levelOf(result, plan.tank, WaterState::runningMost), 0.8);
}

// The sample on either side agrees with a chord through the duty point, so the solved samples are of the same network.
TEST(Curves, OfTheSystemAreSolvedWithTheSplitOfEachFlow)
{
    const ManifoldM1 plan;
    const auto result = assess(plan.drawn);
    const auto& samples = *result.pumps->pumps.front().systemCurve;
    const auto& duty = *result.pumps->pumps.front().duty[RunningState::least];
    for (std::size_t i = 1; i + 1 < samples.size(); ++i) {
        if (!(samples[i].flow == duty.flow))
            continue;
        const double q0 = units::inLitresPerHour(samples[i - 1].flow), q1 = units::inLitresPerHour(samples[i + 1].flow);
        const double h0 = units::inMetresHead(samples[i - 1].head), h1 = units::inMetresHead(samples[i + 1].head);
        const double share = (units::inLitresPerHour(duty.flow) - q0) / (q1 - q0);
        EXPECT_NEAR(h0 + share * (h1 - h0), units::inMetresHead(duty.head), 0.03);
    }
}

TEST(Curves, CrossAtTheDutyPoint)
{
    const ManifoldM1 plan;
    const auto result = assess(plan.drawn);
    const auto& pump = result.pumps->pumps.front();
    ASSERT_TRUE(pump.systemCurve.ok());
    const auto& samples = *pump.systemCurve;
    const auto& duty = *pump.duty[RunningState::least];
    int onDuty = 0;
    for (std::size_t i = 1; i < samples.size(); ++i) {
        EXPECT_GT(samples[i].flow, samples[i - 1].flow);
        EXPECT_GT(samples[i].head, samples[i - 1].head);
        onDuty += samples[i].flow == duty.flow && samples[i].head == duty.head ? 1 : 0;
    }
    EXPECT_EQ(onDuty, 1);
    EXPECT_NEAR(units::inMetresHead(samples.front().head), 0.9, 0.01); // to the lowest mouth, 1.10 over 0.20
    EXPECT_EQ(pump.pumpCurve.front().flow, units::litresPerHour(0.0));
    EXPECT_NEAR(units::inMetresHead(pump.pumpCurve.back().head), 0.0, 1e-12);
}

double sumOf(const assessment::HeadPath& path)
{
    double sum = 0.0;
    for (const auto& step : path.steps)
        sum += units::inMetresHead(step.head);
    return sum;
}

TEST(HeadPath, AddsUpToTheHeadOfThePump)
{
    const ManifoldM1 manifold;
    const SoundPlan sound;
    for (const DrawnPlan* drawn : {&manifold.drawn, &sound.drawn}) {
        const auto result = assess(*drawn);
        const auto& path = result.headPaths->pumps.front().path;
        ASSERT_TRUE(path.ok()) << path.reason().text;
        EXPECT_NEAR(sumOf(*path), units::inMetresHead(path->pumpHead), 1e-9);
        EXPECT_EQ(path->steps.front().kind, HeadStepKind::lift);
        EXPECT_EQ(path->steps.back().kind, HeadStepKind::exit);
    }
}

TEST(HeadPath, LeadsToTheOutletWithTheLeastHeadToSpare)
{
    const ManifoldM1 plan; // the tank: 1.35888 at its tee against 1.30; the beds have 0.14 m and more
    const auto result = assess(plan.drawn);
    const auto& path = result.headPaths->pumps.front().path;
    EXPECT_EQ(path->vessel, plan.tank);
    EXPECT_EQ(path->runs, (std::vector<Id>{plan.riser, plan.tankBranch}));
    EXPECT_NEAR(units::inMetresHead(path->toSpare), 0.05888, 0.002);
    EXPECT_NEAR(units::inMetresHead(path->steps.front().head), 1.30 - 0.20, 1e-12);
}

TEST(HeadPath, IsNotThereWhenNoWaterLeaves)
{
    SoundPlan plan;
    for (const Id run : {plan.tankBranch, plan.header})
        plan.drawn.valve(run, "ball-valve", 0.0);
    const auto result = assess(plan.drawn);
    const auto& path = result.headPaths->pumps.front().path;
    ASSERT_FALSE(path.ok());
    EXPECT_EQ(path.reason().id, "no-path");
}

} // namespace

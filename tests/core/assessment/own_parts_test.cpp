// Own parts and pumps that stand together, counted wherever a row of the catalogue would be.
#include <algorithm>

#include "core/assessment/own_catalogue.hpp"
#include "core/assessment/working.hpp"
#include "core/hydraulics/fittings.hpp"
#include "tests/core/assessment/assessing.hpp"

namespace
{

using namespace sumpwright;
using namespace sumpwright::test;
using assessment::FittingLoss;
using assessment::RunningState;
using units::inLitresPerHour;

// A sump, its pump and one tank fed by one run.
struct OwnPlan {
    DrawnPlan drawn;
    Id sump, pump, tank, inlet, run;
    OwnPlan()
    {
        sump = drawn.sump({0, 0, 0}, 1, 1, 1, 0.5);
        pump = drawn.pump(sump, "G4500", 0.1);
        tank = drawn.vessel(plan::VesselKind::fishTank, {3, 0, 0}, 1, 1, 1);
        inlet = drawn.port(tank, plan::PortKind::inlet, {3, 0, 1});
        drawn.port(tank, plan::PortKind::lip, {3.2, 0, 0.8}, 0.05);
        run = drawn.run(plan::Service::pressure, "pvcu-pn16-32", plan::PumpEnd{pump}, plan::PortEnd{tank, inlet, {}},
                        {{0, 0, 0.1}, {0, 0, 1}, {3, 0, 1}});
    }
    void keep(plan::OwnParts parts) { drawn.plan.ownParts = std::make_shared<const plan::OwnParts>(std::move(parts)); }
    void valve(const std::string& fitting, double opening = 1.0)
    {
        drawn.changeRun(run, [&](plan::Run& r) {
            r.valves.resize(1);
            r.valves[0].id = {901};
            r.valves[0].tag = "V9";
            r.valves[0].fittingId = fitting;
            r.valves[0].opening = opening;
        });
    }
    FittingLoss valveLoss()
    {
        const auto result = assess(drawn);
        for (const FittingLoss& loss : runOf(result, run).fittings)
            if (loss.role == assessment::FittingRole::valve)
                return loss;
        return {};
    }
    assessment::DutyPoint duty(RunningState state = RunningState::least)
    {
        const auto result = assess(drawn);
        return *assessment::find(result.pumps->pumps, pump)->duty[state];
    }
};

plan::OwnPipe pipe(double bore)
{
    plan::OwnPipe own;
    own.id = "own-hose";
    own.name = "Hose";
    own.outsideDiameter = units::millimetres(40);
    own.bore = units::millimetres(bore);
    return own;
}

plan::OwnFitting fitting(plan::OwnFittingKind kind)
{
    plan::OwnFitting own;
    own.id = "own-valve";
    own.name = "Valve";
    own.kind = kind;
    own.k = 0.7;
    return own;
}

TEST(OwnCatalogue, IsTheCatalogueItselfWhereThereAreNoOwnParts)
{
    const auto tables = catalogue::Catalogue::builtIn();
    EXPECT_EQ(assessment::withOwnParts(tables, {}), tables);
    plan::OwnParts parts;
    parts.pipes = {pipe(27.2)};
    const auto more = assessment::withOwnParts(tables, parts);
    EXPECT_EQ(more->pipes().size(), tables->pipes().size() + 1);
    const auto row = more->pipe("own-hose");
    ASSERT_TRUE(row.ok());
    EXPECT_EQ((*row)->provenance.basis, catalogue::Basis::Own);
    EXPECT_TRUE(more->source((*row)->provenance.source).ok());
}

TEST(OwnPipe, CarriesWaterAsThePipeOfThatBore)
{
    OwnPlan plan;
    const double before = inLitresPerHour(plan.duty().flow);
    plan.keep({{pipe(27.2)}, {}, {}, {}});
    plan.drawn.changeRun(plan.run, [](plan::Run& run) { run.pipeId = "own-hose"; });
    EXPECT_NEAR(inLitresPerHour(plan.duty().flow), before, 1e-9 * before);
    plan.keep({{pipe(20.0)}, {}, {}, {}});
    EXPECT_LT(inLitresPerHour(plan.duty().flow), 0.9 * before);
    plan.keep({});
    const auto result = assess(plan.drawn);
    EXPECT_FALSE(runOf(result, plan.run).flow[RunningState::least]); // unknown again, as any id
}

TEST(OwnFitting, CountsItsOwnKAndClosesAsItsKindDoes)
{
    OwnPlan plan;
    plan.keep({{}, {fitting(plan::OwnFittingKind::ballValve)}, {}, {}});
    plan.valve("own-valve");
    EXPECT_DOUBLE_EQ(plan.valveLoss().k, 0.7);
    EXPECT_EQ(plan.valveLoss().source, "own-part");
    plan.valve("own-valve", 0.5);
    EXPECT_NEAR(plan.valveLoss().k, 0.7 + 31.2, 1e-9);
    plan.valve("own-valve", 0.05);
    EXPECT_TRUE(plan.valveLoss().shut);
}

TEST(OwnFitting, ByKvIsAKInTheBoreOfItsRun)
{
    OwnPlan plan;
    plan::OwnFitting own = fitting(plan::OwnFittingKind::globeValve);
    own.k.reset();
    own.flowFactor = units::litresPerHour(10'000);
    plan.keep({{}, {own}, {}, {}});
    plan.valve("own-valve");
    EXPECT_NEAR(plan.valveLoss().k,
                hydraulics::coefficientOfFlowFactor(units::litresPerHour(10'000), units::millimetres(27.2)), 1e-9);
}

TEST(OwnFitting, NonReturnValveLetsWaterOneWayAndTakesItsOpeningHead)
{
    OwnPlan plan;
    const double free = inLitresPerHour(plan.duty().flow);
    plan::OwnFitting own = fitting(plan::OwnFittingKind::nonReturnValve);
    own.k = 0.0;
    own.cracking = units::metresHead(0.4);
    plan.keep({{}, {own}, {}, {}});
    plan.valve("own-valve");
    EXPECT_TRUE(plan.valveLoss().oneWay);
    EXPECT_LT(inLitresPerHour(plan.duty().flow), 0.95 * free);
    const auto result = assess(plan.drawn);
    const auto working = assessment::workingOfRunLoss(result, plan.run, RunningState::least);
    ASSERT_TRUE(working.has_value());
    EXPECT_TRUE(std::any_of(working->inputs.begin(), working->inputs.end(),
                            [](const auto& input) { return input.name == "opening_head" && input.value == "0.4 m"; }));
}

TEST(OwnPump, RunsAsThePumpWithThosePoints)
{
    OwnPlan plan;
    const double before = inLitresPerHour(plan.duty().flow);
    const auto row = catalogue::Catalogue::builtIn()->pump("G4500");
    plan::OwnPump own;
    own.id = "own-pump";
    own.name = "Mine";
    for (const auto& point : (*row)->points)
        own.curve.push_back({point.flow, point.head});
    plan.keep({{}, {}, {own}, {}});
    plan.drawn.changePump(plan.pump, [](plan::Pump& p) { p.modelId = "own-pump"; });
    EXPECT_NEAR(inLitresPerHour(plan.duty().flow), before, 1e-9 * before);
    const auto result = assess(plan.drawn);
    const auto working = assessment::workingOfDutyPoint(result, plan.pump, RunningState::least);
    ASSERT_TRUE(working.has_value());
    EXPECT_EQ(working->inputs.front().name, "points"); // holds without the plan
}

TEST(PumpsTogether, GiveMoreThanOneAndDrawTwiceThePower)
{
    OwnPlan plan;
    const auto one = plan.duty();
    for (const auto arrangement : {plan::PumpArrangement::twoParallel, plan::PumpArrangement::twoInSeries}) {
        plan.drawn.changePump(plan.pump, [&](plan::Pump& p) { p.arrangement = arrangement; });
        const auto two = plan.duty();
        EXPECT_GT(two.flow, one.flow);
        EXPECT_GT(two.head, one.head);
        ASSERT_TRUE(two.power);
        EXPECT_NEAR(units::inWatts(two.power->electrical), 2.0 * units::inWatts(one.power->electrical), 1e-9);
    }
}

TEST(PumpsTogether, AreInTheWorkingOfTheDutyPoint)
{
    OwnPlan plan;
    plan.drawn.changePump(plan.pump, [](plan::Pump& p) {
        p.modelId.clear();
        p.ownCurve = {{units::Flow(), units::metresHead(3.2)}, {units::litresPerHour(4500), units::Head()}};
        p.twoNumbers = true;
        p.arrangement = plan::PumpArrangement::twoInSeries;
    });
    const auto result = assess(plan.drawn);
    const auto working = assessment::workingOfDutyPoint(result, plan.pump, RunningState::least);
    ASSERT_TRUE(working.has_value());
    const auto value = [&](const char* name) {
        for (const auto& input : working->inputs)
            if (input.name == name)
                return input.value;
        return std::string();
    };
    EXPECT_EQ(value("shut_off_head"), "3.2 m");
    EXPECT_EQ(value("greatest_flow"), "4500 L/h");
    EXPECT_EQ(value("arrangement"), "two-in-series");
}

} // namespace

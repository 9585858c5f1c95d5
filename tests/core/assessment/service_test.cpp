// How beds, pumps and runs are shut off, and how much water comes out first. Volumes by hand: pi/4 d^2 L of the pipe
// above the place where it is opened.
#include "core/assessment/service.hpp"

#include <gtest/gtest.h>

#include "core/assessment/service_zones.hpp"
#include "core/assessment/stages.hpp"
#include "core/assessment/working.hpp"
#include "tests/support/sound_plan.hpp"

namespace
{

using namespace sumpwright;
using namespace sumpwright::test;

assessment::Service serviceOf(const SoundPlan& plan, Id element)
{
    const auto result = assessment::Stages(catalogue::Catalogue::builtIn()).assess(plan.drawn.plan);
    const auto* service = assessment::find(result.service->elements, element);
    EXPECT_NE(service, nullptr);
    return service ? *service : assessment::Service();
}

void unionOn(SoundPlan& plan, Id run)
{
    plan.drawn.changeRun(run, [](plan::Run& r) { r.extraFittings.push_back({"union", 1, {}}); });
}

double litres(double bore, double length) { return units::pi / 4.0 * bore * bore * length * 1000.0; }

TEST(Service, OfABedWithoutAValveTakesTheWholePressureSideAlong)
{
    const SoundPlan plan;
    const auto bed = serviceOf(plan, plan.bed1);
    EXPECT_FALSE(bed.shutOff);
    EXPECT_TRUE(bed.valves.empty());
    // Opened at its mouth, 1.1 m: all that stands above: the last 0.1 m of the riser and its level leg, the tank's
    // branch above 1.1 m, the header, both bed branches down to their mouths.
    const double above = litres(0.034, 0.1 + 1.2) + litres(0.0272, 1.3 + 0.1) + litres(0.0272, 2.0) +
                         litres(0.0212, 0.8 + 0.1) + litres(0.0212, 0.9 + 0.1);
    EXPECT_NEAR(units::inLitres(bed.comesOut), above, 1e-6);
}

TEST(Service, OfABedBehindAValveGivesOffOnlyWhatStandsBetween)
{
    SoundPlan plan;
    const Id valve = plan.drawn.valve(plan.branch1, "ball-valve", 1.0); // half-way along 0.9 m, at 1.2 m
    auto bed = serviceOf(plan, plan.bed1);
    EXPECT_TRUE(bed.shutOff);
    EXPECT_EQ(bed.valves, std::vector<Id>{valve});
    EXPECT_FALSE(bed.comesApart);
    EXPECT_NEAR(units::inMetres(bed.openedAt), 1.2, 1e-12);
    EXPECT_NEAR(units::inLitres(bed.comesOut), litres(0.0212, 0.35), 1e-9) << "the rest of the level pipe";
    unionOn(plan, plan.branch1);
    bed = serviceOf(plan, plan.bed1);
    EXPECT_TRUE(bed.comesApart);
    EXPECT_FALSE(serviceOf(plan, plan.bed2).shutOff) << "the other bed has none";
}

TEST(Service, CountsNoNonReturnValveAsClosed)
{
    SoundPlan plan;
    plan.drawn.valve(plan.branch1, "swing-check", 1.0);
    EXPECT_FALSE(serviceOf(plan, plan.bed1).shutOff);
}

TEST(Service, OfAPumpTellsWhatRunsBackThroughItsRiser)
{
    SoundPlan plan;
    auto pump = serviceOf(plan, plan.pump);
    EXPECT_TRUE(pump.shutOff) << "no other pump, and every mouth is above the water";
    const double all = litres(0.034, 1.1 + 1.2) + litres(0.0272, 1.3 + 0.2) + litres(0.0272, 2.0) +
                       litres(0.0212, 0.8 + 0.1) + litres(0.0212, 0.9 + 0.1);
    EXPECT_NEAR(units::inLitres(pump.comesOut), all, 1e-6);
    plan.drawn.valve(plan.riser, "ball-valve", 1.0);
    plan.drawn.changeRun(plan.riser, [](plan::Run& run) { run.valves[0].station = 0.5 / 2.3; }); // at 0.6 m
    pump = serviceOf(plan, plan.pump);
    EXPECT_NEAR(units::inMetres(pump.openedAt), 0.6, 1e-9);
    EXPECT_NEAR(units::inLitres(pump.comesOut), 0.0, 1e-9);
}

// With a valve before every mouth but none on the riser, what stands above its outlet still runs back.
TEST(Service, OfAPumpBehindTheValvesOfItsOutletsIsOpenedAtItsOwnConnection)
{
    SoundPlan plan;
    for (const Id run : {plan.tankBranch, plan.branch1, plan.branch2})
        plan.drawn.valve(run, "ball-valve", 1.0);
    const auto pump = serviceOf(plan, plan.pump);
    EXPECT_TRUE(pump.shutOff);
    EXPECT_NEAR(units::inMetres(pump.openedAt), 0.1, 1e-12);
    const double upToTheValves = litres(0.034, 1.1 + 1.2) + litres(0.0272, 0.75) + litres(0.0272, 2.0) +
                                 litres(0.0212, 0.45) + litres(0.0212, 0.5);
    EXPECT_NEAR(units::inLitres(pump.comesOut), upToTheValves, 1e-6);
}

// A mouth under the tank's water lets the tank out, down to a vent or to where the pipe is opened.
TEST(Service, CountsWhatSiphonsOutOfAVesselNoValveStandsBefore)
{
    SoundPlan plan;
    const double before = units::inLitres(serviceOf(plan, plan.bed1).comesOut);
    plan.drawn.changePort(plan.tank, plan.tankInlet,
                          [](plan::Port& port) { port.level = units::elevationMetres(0.5); });
    plan.drawn.changeRun(plan.tankBranch,
                         [](plan::Run& run) { run.vertices.back().level = units::elevationMetres(0.5); });
    const auto submerged = serviceOf(plan, plan.bed1);
    EXPECT_NEAR(units::inLitres(submerged.comesOut), before, 1e-6) << "the bed's mouth lies above the tank's water";
    // Opened at 0.6 m, on the riser, the tank runs out from its lip at 0.8 m down to there: 1.2 m square.
    plan.drawn.valve(plan.riser, "ball-valve", 1.0);
    plan.drawn.changeRun(plan.riser, [](plan::Run& run) { run.valves[0].station = 0.5 / 2.3; });
    const auto bed = serviceOf(plan, plan.bed1);
    EXPECT_FALSE(bed.shutOff) << "the tank's water reaches it";
    const auto pump = serviceOf(plan, plan.pump);
    EXPECT_TRUE(pump.shutOff);
}

TEST(Service, ToldOfLongPressureRunsOnly)
{
    SoundPlan plan;
    const auto result = assessment::Stages(catalogue::Catalogue::builtIn()).assess(plan.drawn.plan);
    EXPECT_EQ(assessment::find(result.service->elements, plan.header), nullptr);
    plan.drawn.changeRun(plan.header, [](plan::Run& run) {
        run.vertices.insert(run.vertices.begin() + 1, run.vertices.front());
        run.vertices[1].at.y = units::metres(4.0); // a detour: longer than 3 m
    });
    const auto longer = serviceOf(plan, plan.header);
    EXPECT_FALSE(longer.shutOff);
    EXPECT_GT(units::inLitres(longer.comesOut), 1.0);
}

TEST(Service, TellsItsPartsAsAWorking)
{
    const SoundPlan plan;
    const auto result = assessment::Stages(catalogue::Catalogue::builtIn()).assess(plan.drawn.plan);
    const auto* pump = assessment::find(result.service->elements, plan.pump);
    ASSERT_NE(pump, nullptr);
    units::Volume sum;
    for (const std::size_t index : pump->pipes)
        for (const auto& part : result.service->pipeWaters[index])
            sum += part.volume;
    for (const auto& part : pump->vessels)
        sum += part.volume;
    EXPECT_NEAR(units::inLitres(sum), units::inLitres(pump->comesOut), 1e-9);
    const auto working = assessment::workingOfService(result, plan.pump);
    ASSERT_TRUE(working);
    EXPECT_EQ(working->worksheet, "water-total");
    EXPECT_FALSE(assessment::workingOfService(result, plan.tank));
}

TEST(ServiceZones, TellLevelsAndContentsAlongARun)
{
    assessment::DrawnRun run;
    run.bore = units::metres(0.1);
    run.stretches = {{units::metres(2.0), units::elevationMetres(0.0), units::elevationMetres(2.0)},
                     {units::metres(1.0), units::elevationMetres(2.0), units::elevationMetres(2.0)}};
    run.length = units::metres(3.0);
    EXPECT_NEAR(units::inMetres(assessment::levelAlong(run, units::metres(0.5))), 0.5, 1e-12);
    EXPECT_NEAR(units::inMetres(assessment::levelAlong(run, units::metres(2.5))), 2.0, 1e-12);
    const auto content = [&](double from, double to, double level) {
        return units::inLitres(
            assessment::contentAbove(run, units::metres(from), units::metres(to), units::elevationMetres(level)));
    };
    EXPECT_NEAR(content(0.0, 3.0, -1.0), litres(0.1, 3.0), 1e-9);
    EXPECT_NEAR(content(0.0, 3.0, 0.5), litres(0.1, 2.5), 1e-9);
    EXPECT_NEAR(content(0.0, 1.0, 0.5), litres(0.1, 0.5), 1e-9);
    EXPECT_NEAR(content(2.0, 3.0, 2.0), litres(0.1, 1.0), 1e-9) << "a level pipe runs empty where it is opened";
    EXPECT_NEAR(content(0.0, 3.0, 2.1), 0.0, 1e-12);
    EXPECT_NEAR(content(2.5, 3.0, 1.9), litres(0.1, 0.5), 1e-9);
}

} // namespace

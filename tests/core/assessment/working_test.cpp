// Every result can be asked why: the worksheet it names, with the inputs it names, gives the result again.
#include "core/assessment/working.hpp"

#include <cmath>

#include "core/worksheets/worksheet.hpp"
#include "tests/core/assessment/assessing.hpp"
#include "tests/support/sound_plan.hpp"

namespace
{

using namespace sumpwright;
using namespace sumpwright::test;

double answerOf(const std::optional<assessment::Working>& working, const char* output)
{
    EXPECT_TRUE(working.has_value());
    if (!working)
        return -1e9;
    std::vector<worksheets::InputText> inputs;
    for (const auto& input : working->inputs)
        inputs.push_back({input.name, input.value});
    const auto sheet = worksheets::findWorksheet(working->worksheet);
    EXPECT_TRUE(sheet.ok());
    const auto answer = worksheets::answer(**sheet, inputs, *catalogue::Catalogue::builtIn());
    EXPECT_TRUE(answer.ok()) << (answer.ok() ? "" : base::oneLine(answer.refusal()));
    const auto* value = answer.ok() ? answer->output(output) : nullptr;
    EXPECT_NE(value, nullptr) << output;
    return value ? worksheets::numberOf(value->value) : -1e9;
}

TEST(Working, OfARunGivesItsLosses)
{
    const SoundPlan plan;
    const auto result = assess(plan.drawn);
    for (const Id run : {plan.riser, plan.header, plan.branch1}) {
        const auto working = assessment::workingOfRunLoss(result, run, RunningState::least);
        const auto& losses = *runOf(result, run).flow[RunningState::least]->losses;
        EXPECT_NEAR(answerOf(working, "friction_loss"), units::inMetresHead(losses.friction), 1e-9);
        EXPECT_NEAR(answerOf(working, "fitting_loss"), units::inMetresHead(losses.fittings), 1e-9);
        EXPECT_NEAR(answerOf(working, "velocity"), units::inMetresPerSecond(losses.velocity), 1e-12);
    }
    EXPECT_FALSE(assessment::workingOfRunLoss(result, plan.tankDrain, RunningState::least).has_value());
}

TEST(Working, OfAFittingGivesItsK)
{
    const SoundPlan plan;
    const auto result = assess(plan.drawn);
    int shown = 0;
    for (const auto& run : result.flow->runs)
        for (const auto& loss : run.fittings)
            if (const auto working = assessment::workingOfFitting(result, run.id, loss, RunningState::least)) {
                ++shown;
                EXPECT_NEAR(answerOf(working, working->output.c_str()), loss.k, 1e-9) << loss.fittingId;
                auto own = loss;
                own.basis = assessment::LossBasis::overridden;
                EXPECT_FALSE(assessment::workingOfFitting(result, run.id, own, RunningState::least).has_value());
            }
    EXPECT_GT(shown, 0);
}

TEST(Working, OfAHalfOpenValveGivesTheKOfThatOpening)
{
    SoundPlan plan;
    plan.drawn.valve(plan.branch2, "ball-valve", 0.5);
    const auto result = assess(plan.drawn);
    const auto& valve = plan.drawn.plan.runs.find(plan.branch2)->valves.front();
    int shown = 0;
    for (const auto& run : result.flow->runs)
        for (const auto& loss : run.fittings)
            if (run.id == plan.branch2 && loss.element == valve.id) {
                const auto working = assessment::workingOfFitting(result, run.id, loss, RunningState::least);
                EXPECT_NEAR(answerOf(working, "k"), loss.k, 1e-9);
                EXPECT_GT(loss.k, 1.0) << "far more than the open valve's";
                ++shown;
            }
    EXPECT_EQ(shown, 1);
}

TEST(Working, OfTheDutyPointGivesItAsOnePipe)
{
    const SoundPlan plan;
    const auto result = assess(plan.drawn);
    for (const RunningState state : assessment::allRunningStates) {
        const auto working = assessment::workingOfDutyPoint(result, plan.pump, state);
        const auto& duty = result.pumps->pumps.front().duty[state];
        EXPECT_NEAR(answerOf(working, "flow"), units::inCubicMetresPerSecond(duty->flow), 1e-9);
        EXPECT_NEAR(answerOf(working, "head"), units::inMetresHead(duty->head), 1e-6);
        EXPECT_EQ(working->note, "network-as-one-pipe");
    }
}

TEST(Working, OfTheEnergyGivesTheCostAtTheWatersOwnTemperature)
{
    SoundPlan plan;
    plan.drawn.changeSite([](plan::Site& site) { site.designWater = units::celsius(30.0); });
    const auto result = assess(plan.drawn);
    const auto working = assessment::workingOfEnergy(result, plan.pump);
    const auto& power = *result.pumps->pumps.front().duty[RunningState::least]->power;
    EXPECT_NEAR(answerOf(working, "energy_per_year"), units::inKilowattHours(power.energyPerYear), 1e-6);
    EXPECT_NEAR(answerOf(working, "cost_per_year"), units::inCurrency(*power.costPerYear), 1e-6);
}

TEST(Working, OfAnOverflowGivesTheHeadOverTheLip)
{
    const SoundPlan plan;
    const auto result = assess(plan.drawn);
    const auto working = assessment::workingOfOverflow(result, plan.tank, RunningState::most);
    EXPECT_NEAR(answerOf(working, "level_over_lip"),
                units::inMetres(waterOf(result, plan.tank, WaterState::runningMost)->overLip), 1e-12);
    EXPECT_FALSE(assessment::workingOfOverflow(result, plan.sump, RunningState::most).has_value());
}

TEST(Working, OfAVesselGivesItsLevelAndVolumeByTheFlowOverItsLip)
{
    const SoundPlan plan;
    const auto result = assess(plan.drawn);
    const auto working = assessment::workingOfWater(result, plan.tank, RunningState::most);
    const auto& water = *waterOf(result, plan.tank, WaterState::runningMost);
    EXPECT_NEAR(answerOf(working, "over_lip"), units::inMetres(water.overLip), 1e-12);
    EXPECT_EQ(answerOf(working, "level"), units::inMetres(water.level));
    EXPECT_EQ(answerOf(working, "volume"), units::inCubicMetres(water.volume));
    EXPECT_EQ(answerOf(working, "free_board"), units::inMetres(water.freeBoard));
    for (const Id bed : {plan.bed1, plan.bed2})
        for (const RunningState state : assessment::allRunningStates) {
            const auto& inBed = *waterOf(
                result, bed, state == RunningState::least ? WaterState::runningLeast : WaterState::runningMost);
            EXPECT_EQ(answerOf(assessment::workingOfWater(result, bed, state), "volume"),
                      units::inCubicMetres(inBed.volume));
        }
}

TEST(Working, OfASumpGivesItsLevelWithTheBedsFlooded)
{
    const SoundPlan plan;
    const auto result = assess(plan.drawn);
    const auto working = assessment::workingOfWater(result, plan.sump, RunningState::least);
    EXPECT_EQ(working->worksheet, "sump-level");
    const auto& water = *waterOf(result, plan.sump, WaterState::runningLeast);
    EXPECT_NEAR(answerOf(working, "level"), units::inMetres(water.level), 1e-9);
    EXPECT_NEAR(answerOf(working, "volume"), units::inCubicMetres(water.volume), 1e-9);
    const auto most = assessment::workingOfWater(result, plan.sump, RunningState::most);
    EXPECT_EQ(answerOf(most, "level"), units::inMetres(waterOf(result, plan.sump, WaterState::runningMost)->level));
}

TEST(Working, OfTheOtherSumpsCircuitIsLeftOut)
{
    SoundPlan plan;
    plan.drawn.vessel(plan::VesselKind::fishTank, {5.0, 4.0, 0.006}, 0.8, 0.8, 0.5); // stands alone
    const auto result = assess(plan.drawn);
    const auto working = assessment::workingOfWater(result, plan.sump, RunningState::least);
    EXPECT_NEAR(answerOf(working, "level"),
                units::inMetres(waterOf(result, plan.sump, WaterState::runningLeast)->level), 1e-9);
}

TEST(Working, OfPumpStopGivesTheRoomThatIsLeft)
{
    SoundPlan plan;
    for (const double rim : {0.6, 0.5, 0.42}) { // the last does not hold what comes down
        plan.drawn.changeVessel(plan.sump, [rim](plan::Vessel& v) { v.wallHeight = units::metres(rim - 0.006); });
        const auto result = assess(plan.drawn);
        const auto working = assessment::workingOfPumpStop(result, plan.sump);
        const auto& stop = *assessment::find(result.sumps->sumps, plan.sump)->pumpStop;
        EXPECT_NEAR(answerOf(working, "room_left"), units::inCubicMetres(stop.roomLeft), 1e-12);
        EXPECT_NEAR(answerOf(working, "level"), units::inMetres(stop.level), 1e-12);
        EXPECT_NEAR(answerOf(working, "spilled"), units::inCubicMetres(stop.spilled), 1e-12);
    }
}

TEST(Working, OfTotalsGivesTheTotals)
{
    const SoundPlan plan;
    const auto result = assess(plan.drawn);
    for (const WaterState state : assessment::allWaterStates) {
        const auto working = assessment::workingOfWaterTotal(result, state);
        const auto& total = *result.water->totals[state];
        EXPECT_NEAR(answerOf(working, "total"), units::inCubicMetres(total.all()), 1e-12);
        EXPECT_NEAR(answerOf(working, "in_pipes"), units::inCubicMetres(total.inPipes), 1e-12);
    }
    for (const auto which : assessment::allLoadCases) {
        const auto working = assessment::workingOfLoadTotal(result, which);
        const auto& total = *result.floor->in(which);
        EXPECT_EQ(answerOf(working, "weight"), units::inNewtons(total.weight));
        EXPECT_EQ(answerOf(working, "worst_pressure"), units::inSi(total.worstFootprint));
        EXPECT_EQ(answerOf(working, "mean_pressure"), units::inSi(*total.meanOverFloor));
    }
}

TEST(Working, OfTheLiveLoadGivesTheRatio)
{
    SoundPlan plan;
    plan.drawn.changeSite(
        [](plan::Site& site) { site.floorUse = catalogue::Catalogue::builtIn()->liveLoads().front().id; });
    const auto result = assess(plan.drawn);
    const auto working = assessment::workingOfLiveLoad(result);
    EXPECT_EQ(answerOf(working, "ratio"), result.floor->comparison->worstFootprintRatio);
    EXPECT_EQ(answerOf(working, "mean_ratio"), *result.floor->comparison->meanRatio);
    EXPECT_FALSE(assessment::workingOfLiveLoad(assess(SoundPlan().drawn)).has_value());
}

TEST(Working, OfTheAirGivesItsPressure)
{
    SoundPlan plan;
    const auto result = assess(plan.drawn);
    EXPECT_EQ(answerOf(assessment::workingOfAirPressure(result), "pressure"),
              units::inPascals(*result.site->airPressure));
    plan.drawn.changeSite([](plan::Site& site) { site.altitude.reset(); });
    EXPECT_FALSE(assessment::workingOfAirPressure(assess(plan.drawn)).has_value());
}

TEST(Working, OfARunGivesItsFlowContentAndSumOfK)
{
    SoundPlan plan;
    plan.drawn.changeRun(plan.header, [](plan::Run& run) { run.extraFittings = {{"union", 3, std::nullopt}}; });
    const auto result = assess(plan.drawn);
    for (const Id id : {plan.riser, plan.header, plan.branch1, plan.tankBranch, plan.tankDrain, plan.drain1}) {
        const auto& run = runOf(result, id);
        EXPECT_EQ(answerOf(assessment::workingOfContent(result, id), "volume"), units::inCubicMetres(run.content));
        EXPECT_NEAR(answerOf(assessment::workingOfSumK(result, id), "sum_k"), run.sumK, 1e-12);
        for (const RunningState state : assessment::allRunningStates) {
            const auto working = assessment::workingOfRunFlow(result, id, state);
            const double flow = units::inCubicMetresPerSecond(run.flow[state]->flow);
            EXPECT_NEAR(answerOf(working, working && working->worksheet == "pipe-flow" ? "flow" : "balance"),
                        std::abs(flow), 1e-6 * std::abs(flow));
        }
    }
}

TEST(Working, OfAnInflowGivesIt)
{
    const SoundPlan plan;
    const auto result = assess(plan.drawn);
    for (const Id vessel : {plan.tank, plan.sump, plan.bed1})
        for (const RunningState state : assessment::allRunningStates) {
            const auto& inflow = *assessment::find(result.water->vessels, vessel)->inflow[state];
            const auto working = assessment::workingOfInflow(result, vessel, state);
            ASSERT_TRUE(working);
            EXPECT_EQ(working->output, "comes_in");
            EXPECT_NEAR(answerOf(working, "comes_in"), units::inCubicMetresPerSecond(inflow), 1e-12);
            EXPECT_NEAR(
                answerOf(working, "taken_out"),
                units::inCubicMetresPerSecond(*assessment::find(result.water->vessels, vessel)->pumpedOut[state]),
                1e-12);
        }
}

TEST(Working, OfATeeGivesItsGrade)
{
    const SoundPlan plan;
    const auto result = assess(plan.drawn);
    for (const Id tee : {plan.tee1, plan.tee2})
        for (const RunningState state : assessment::allRunningStates)
            EXPECT_NEAR(answerOf(assessment::workingOfGrade(result, tee, state), "grade"),
                        units::inMetres(*assessment::find(result.flow->tees, tee)->grade[state]), 1e-7);
}

TEST(Working, OfThePumpsLiftAndCurveGivesTheirHeads)
{
    const SoundPlan plan;
    const auto result = assess(plan.drawn);
    const auto& path = *result.headPaths->pumps.front().path;
    EXPECT_NEAR(answerOf(assessment::workingOfLift(result, plan.pump), "lift"),
                units::inMetresHead(path.steps.front().head), 1e-9);
    for (const auto& sample : result.pumps->pumps.front().pumpCurve)
        EXPECT_NEAR(answerOf(assessment::workingOfPumpHead(result, plan.pump, sample.flow), "head"),
                    units::inMetresHead(sample.head), 1e-12);
}

TEST(Working, OfABendGivesTheKOfItsAngleAndOfAChangeOfBoreThatOfItsSide)
{
    SoundPlan plan;
    plan.drawn.changeRun(plan.tankBranch, [](plan::Run& run) {
        run.vertices[1].at = {units::metres(1.6), units::metres(3.0)}; // bends of no round angle
    });
    const auto result = assess(plan.drawn);
    int bends = 0, changes = 0;
    for (const auto& run : result.flow->runs)
        for (const auto& loss : run.fittings) {
            const auto working = assessment::workingOfFitting(result, run.id, loss, RunningState::least);
            if (loss.role == assessment::FittingRole::bend) {
                EXPECT_EQ(answerOf(working, "k"), loss.k) << units::inDegrees(loss.angle);
                bends += loss.angle > units::degrees(1.0) && std::abs(units::inDegrees(loss.angle) - 90.0) > 1.0;
            } else if (loss.role == assessment::FittingRole::boreChange) {
                EXPECT_EQ(answerOf(working, working->output.c_str()), loss.k);
                ++changes;
            }
        }
    EXPECT_GT(bends, 0);
    EXPECT_GT(changes, 0);
}

TEST(Working, OfARunWithASpringCountsTheHeadThatHoldsItShut)
{
    SoundPlan plan;
    plan.drawn.valve(plan.riser, "spring-check", 1.0);
    const auto result = assess(plan.drawn);
    const auto& losses = *runOf(result, plan.riser).flow[RunningState::least]->losses;
    const auto working = assessment::workingOfRunLoss(result, plan.riser, RunningState::least);
    EXPECT_NEAR(answerOf(working, "fitting_loss"), units::inMetresHead(losses.fittings), 1e-9);
    EXPECT_GT(units::inMetresHead(losses.fittings), 0.1);
    EXPECT_NEAR(answerOf(assessment::workingOfRunFlow(result, plan.riser, RunningState::least), "flow"),
                units::inCubicMetresPerSecond(runOf(result, plan.riser).flow[RunningState::least]->flow), 1e-9);
}

TEST(Working, OfAMassGivesTheMassAndThePressureUnderItsFootprint)
{
    SoundPlan plan;
    plan.drawn.changeVessel(plan.tank, [](plan::Vessel& v) { v.shape = plan::RoundShape{units::metres(1.3)}; });
    const auto result = assess(plan.drawn);
    for (const Id vessel : {plan.tank, plan.sump, plan.bed1})
        for (const auto which : assessment::allLoadCases) {
            const auto working = assessment::workingOfMass(result, vessel, which);
            const auto& load = *assessment::find(result.floor->vessels, vessel)->in(which);
            EXPECT_NEAR(answerOf(working, "mass"), units::inKilograms(load.total), 1e-9);
            EXPECT_NEAR(answerOf(working, "pressure"), units::inKilopascals(load.underFootprint) * 1e3, 1e-6);
            if (load.perLeg) {
                EXPECT_NEAR(answerOf(working, "leg_weight"), units::inNewtons(*load.perLeg), 1e-6);
            }
        }
}

} // namespace

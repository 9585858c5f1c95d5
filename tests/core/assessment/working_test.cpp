// Every result can be asked why: the worksheet it names, with the inputs it names, gives the result again.
#include "core/assessment/working.hpp"

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
                EXPECT_NEAR(answerOf(working, "k"), loss.k, 1e-9) << loss.fittingId;
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

TEST(Working, OfTheEnergyGivesTheCost)
{
    const SoundPlan plan;
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

TEST(Working, OfAMassGivesTheMass)
{
    SoundPlan plan;
    plan.drawn.changeVessel(plan.tank, [](plan::Vessel& v) { v.shape = plan::RoundShape{units::metres(1.3)}; });
    const auto result = assess(plan.drawn);
    for (const Id vessel : {plan.tank, plan.sump, plan.bed1})
        for (const auto which : assessment::allLoadCases) {
            const auto working = assessment::workingOfMass(result, vessel, which);
            EXPECT_NEAR(answerOf(working, "mass"),
                        units::inKilograms(assessment::find(result.floor->vessels, vessel)->in(which)->total), 1e-6);
        }
}

} // namespace

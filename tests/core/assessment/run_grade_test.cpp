// The hydraulic grade at the ends of runs: from pump to mouth it falls by each run's own losses.
#include "core/assessment/run_grade.hpp"

#include <gtest/gtest.h>

#include "core/assessment/stages.hpp"
#include "tests/support/sound_plan.hpp"

namespace
{

using namespace sumpwright;
using namespace sumpwright::test;
using assessment::RunningState;

TEST(RunGrade, FallsByTheLossesOfTheRun)
{
    const SoundPlan plan;
    const auto results = assessment::Stages(catalogue::Catalogue::builtIn()).assess(plan.drawn.plan);
    for (const Id id : {plan.riser, plan.header, plan.tankBranch, plan.branch1})
        for (const RunningState state : assessment::allRunningStates) {
            const auto grade = assessment::gradeOf(results, *plan.drawn.plan.runs.find(id), state);
            ASSERT_TRUE(grade) << id.number;
            const auto& losses = *assessment::find(results.flow->runs, id)->flow[state]->losses;
            EXPECT_NEAR(units::inMetres(grade->start - grade->end),
                        units::inMetresHead(losses.friction + losses.fittings), 1e-6)
                << id.number;
        }
}

TEST(RunGrade, EndsAtTheMouthInTheAirOrAtTheWaterOverIt)
{
    const SoundPlan plan;
    const auto results = assessment::Stages(catalogue::Catalogue::builtIn()).assess(plan.drawn.plan);
    const auto grade = assessment::gradeOf(results, *plan.drawn.plan.runs.find(plan.tankBranch), RunningState::least);
    ASSERT_TRUE(grade);
    EXPECT_NEAR(units::inMetres(grade->end), 1.0, 1e-12);
}

TEST(RunGrade, IsNotTold)
{
    SoundPlan plan;
    const auto results = assessment::Stages(catalogue::Catalogue::builtIn()).assess(plan.drawn.plan);
    EXPECT_FALSE(assessment::gradeOf(results, *plan.drawn.plan.runs.find(plan.drain1), RunningState::least))
        << "gravity";
    plan.drawn.changeRun(plan.branch1, [](plan::Run& run) { run.to = plan::OpenEnd{}; });
    const auto open = assessment::Stages(catalogue::Catalogue::builtIn()).assess(plan.drawn.plan);
    EXPECT_FALSE(assessment::gradeOf(open, *plan.drawn.plan.runs.find(plan.branch1), RunningState::least));
}

} // namespace

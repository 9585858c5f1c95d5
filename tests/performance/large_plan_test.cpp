// What does not depend on the machine: the size of the large plan, how much work an edit sets off, how many Newton
// steps a solve takes. The times themselves are the benchmarks'.
#include <gtest/gtest.h>

#include "core/engine/pipeline.hpp"
#include "core/plan/check.hpp"
#include "core/storage/plan_text.hpp"
#include "tests/performance/measured_plan.hpp"
#include "tests/support/large_plan.hpp"

namespace sumpwright::performance
{
namespace
{

using assessment::RunningState;

std::shared_ptr<const assessment::Assessment> assessed(Size size)
{
    return engine::Pipeline(catalogue::Catalogue::builtIn()).assess(measuredPlan(size).plan, 1);
}

std::uint64_t hydraulicRuns(const engine::Pipeline& pipeline)
{
    return pipeline.runsOf(assessment::StageName::circuits) + pipeline.runsOf(assessment::StageName::water) +
           pipeline.runsOf(assessment::StageName::flow);
}

TEST(LargePlan, HasTwelveTanksHundredBedsAndThousandRuns)
{
    const test::LargePlan large = test::largePlan();
    EXPECT_EQ(large.tanks.size(), 12U);
    EXPECT_EQ(large.beds.size(), 100U);
    EXPECT_EQ(large.plan.vessels.size(), 113U); // and the sump
    EXPECT_EQ(large.plan.runs.size(), 1000U);
}

TEST(LargePlan, IsSound)
{
    for (const plan::Fault& fault : plan::check(test::largePlan().plan))
        ADD_FAILURE() << base::oneLine(fault.refusal);
}

// An edit settles the ends of runs onto what they meet; ends that are off by a rounding would count as changed.
TEST(LargePlan, HasEveryEndExactlyInPlace)
{
    const MeasuredPlan from = measuredPlan(Size::large);
    EXPECT_EQ(edited(from, EditKind::rename).runs, from.plan.runs);
}

TEST(LargePlan, IsSolvedInEveryRun)
{
    const auto result = assessed(Size::large);
    ASSERT_EQ(result->flow->runs.size(), 1000U);
    std::size_t solved = 0;
    for (const auto& run : result->flow->runs)
        for (const auto& flow : run.flow.values)
            solved += flow.ok() ? 1U : 0U;
    EXPECT_EQ(solved, 2000U); // in both running states
}

TEST(LargePlan, RaisesNoErrors)
{
    const auto result = assessed(Size::large);
    ASSERT_FALSE(result->findings->list.empty());
    for (const auto& finding : result->findings->list)
        EXPECT_NE(finding.severity, assessment::Severity::error) << finding.id;
}

TEST(LargePlan, ComesBackFromItsText)
{
    const plan::Plan plan = measuredPlan(Size::large).plan;
    const auto loaded = storage::loadText(storage::saveText(plan));
    ASSERT_TRUE(loaded.ok());
    EXPECT_EQ(loaded->plan, plan);
}

class EditWork : public testing::TestWithParam<Size>
{
};

TEST_P(EditWork, RenamingComputesNoWater)
{
    const MeasuredPlan from = measuredPlan(GetParam());
    engine::Pipeline pipeline(catalogue::Catalogue::builtIn());
    pipeline.assess(from.plan, 1);
    const std::uint64_t before = hydraulicRuns(pipeline);
    pipeline.assess(edited(from, EditKind::rename), 2);
    EXPECT_EQ(hydraulicRuns(pipeline), before);
}

TEST_P(EditWork, TurningAValveSolvesTheWaterAnew)
{
    const MeasuredPlan from = measuredPlan(GetParam());
    engine::Pipeline pipeline(catalogue::Catalogue::builtIn());
    const auto before = pipeline.assess(from.plan, 1);
    const auto after = pipeline.assess(edited(from, EditKind::valve), 2);
    EXPECT_NE(*before->flow, *after->flow);
}

INSTANTIATE_TEST_SUITE_P(Sizes, EditWork, testing::Values(Size::typical, Size::large),
                         [](const auto& size) { return std::string(nameOf(size.param)); });

} // namespace
} // namespace sumpwright::performance

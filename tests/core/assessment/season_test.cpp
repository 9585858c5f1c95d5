// The ends of the year are those of a plan drawn for them: fouled pipes with the coldest water, new with the warmest.
#include "core/assessment/working.hpp"
#include "core/worksheets/worksheet.hpp"
#include "tests/core/assessment/assessing.hpp"
#include "tests/support/sound_plan.hpp"

namespace
{

using namespace sumpwright;
using namespace sumpwright::test;
using assessment::YearEnd;

SoundPlan withYear(double coldest, double warmest)
{
    SoundPlan plan;
    plan.drawn.changeSite([&](plan::Site& site) {
        site.coldestWater = units::celsius(coldest);
        site.warmestWater = units::celsius(warmest);
    });
    return plan;
}

const assessment::PumpSeason& pumpIn(const assessment::Assessment& result, base::Id pump)
{
    return *assessment::find(result.season->pumps, pump);
}

void expectSame(const assessment::Assessment& year, const assessment::Assessment& drawnForIt, YearEnd end)
{
    for (const auto& season : year.season->pumps) {
        const auto& duty = assessment::find(drawnForIt.pumps->pumps, season.id)->duty[RunningState::least];
        ASSERT_TRUE(season.duty[end] && duty);
        EXPECT_EQ(season.duty[end]->flow, duty->flow);
        EXPECT_EQ(season.duty[end]->head, duty->head);
    }
    ASSERT_EQ(year.season->runs.size(), 5u); // gravity runs are none of these
    for (const auto& season : year.season->runs) {
        ASSERT_TRUE(season.flow[end].ok());
        EXPECT_EQ(units::inLitresPerHour(*season.flow[end]), flowOf(drawnForIt, season.id, RunningState::least));
        EXPECT_EQ(season.roughness[end], runOf(drawnForIt, season.id).roughness);
    }
}

} // namespace

TEST(Season, IsThatOfPlansDrawnForItBitForBit)
{
    const auto year = assess(withYear(4.0, 31.0).drawn);
    SoundPlan winter, summer;
    winter.drawn.changeSite([](plan::Site& site) {
        site.designWater = units::celsius(4.0);
        site.pipeCondition = plan::PipeCondition::fouled;
    });
    summer.drawn.changeSite([](plan::Site& site) {
        site.designWater = units::celsius(31.0);
        site.pipeCondition = plan::PipeCondition::asNew;
    });
    expectSame(year, assess(winter.drawn), YearEnd::fouledCold);
    expectSame(year, assess(summer.drawn), YearEnd::newWarm);
}

TEST(Season, LeavesTodayBetweenItsEnds)
{
    const SoundPlan plan = withYear(4.0, 31.0);
    const auto year = assess(plan.drawn);
    const auto& pump = pumpIn(year, plan.pump);
    const units::Flow today = assessment::find(year.pumps->pumps, plan.pump)->duty[RunningState::least]->flow;
    EXPECT_LT(pump.duty[YearEnd::fouledCold]->flow, 0.99 * today);
    EXPECT_GT(pump.duty[YearEnd::newWarm]->flow, 1.001 * today);
    EXPECT_GT(pump.duty[YearEnd::fouledCold]->head, pump.duty[YearEnd::newWarm]->head);
}

TEST(Season, WithoutARangeTheDesignTemperatureHoldsAllYear)
{
    const auto result = assess(SoundPlan().drawn);
    for (const YearEnd end : assessment::bothYearEnds)
        EXPECT_EQ(result.season->water[end], units::celsius(20.0));
    const SoundPlan cool = withYear(25.0, 28.0); // the water designed for is part of the year
    EXPECT_EQ(assess(cool.drawn).season->water[YearEnd::fouledCold], units::celsius(20.0));
    const SoundPlan warm = withYear(3.0, 10.0);
    EXPECT_EQ(assess(warm.drawn).season->water[YearEnd::newWarm], units::celsius(20.0));
}

TEST(Season, SaysWhyItIsMissing)
{
    SoundPlan plan = withYear(4.0, 31.0);
    plan.drawn.changePump(plan.pump, [](plan::Pump& pump) { pump.running = false; });
    const auto off = assess(plan.drawn);
    ASSERT_FALSE(pumpIn(off, plan.pump).duty[YearEnd::newWarm].ok());
    EXPECT_EQ(pumpIn(off, plan.pump).duty[YearEnd::newWarm].reason().id, "pump-off");

    SoundPlan dry = withYear(4.0, 31.0);
    dry.drawn.changeVessel(dry.sump, [](plan::Vessel& v) { v.runningLevel.reset(); });
    const auto unknown = assess(dry.drawn);
    EXPECT_EQ(pumpIn(unknown, dry.pump).duty[YearEnd::fouledCold].reason().id, "sump-level-missing");
    EXPECT_FALSE(unknown.season->runs.front().flow[YearEnd::fouledCold].ok());
}

TEST(Season, ItsWorkingGivesTheSameDuty)
{
    const SoundPlan plan = withYear(4.0, 31.0);
    const auto result = assess(plan.drawn);
    for (const YearEnd end : assessment::bothYearEnds) {
        const auto working = assessment::workingOfSeason(result, plan.pump, end);
        ASSERT_TRUE(working.has_value());
        std::vector<worksheets::InputText> texts;
        for (const auto& input : working->inputs)
            texts.push_back({input.name, input.value});
        const auto answer = worksheets::answer(**worksheets::findWorksheet(working->worksheet), texts,
                                               *catalogue::Catalogue::builtIn());
        ASSERT_TRUE(answer.ok()) << base::oneLine(answer.refusal());
        const auto& duty = *pumpIn(result, plan.pump).duty[end];
        EXPECT_NEAR(worksheets::numberOf(answer->output("flow")->value) / units::inCubicMetresPerSecond(duty.flow), 1.0,
                    1e-8);
        EXPECT_NEAR(worksheets::numberOf(answer->output("head")->value) / units::inMetresHead(duty.head), 1.0, 1e-8);
    }
    EXPECT_FALSE(assessment::workingOfSeason(result, plan.tank, YearEnd::newWarm));
}

#include <algorithm>

#include "core/design/pump_choice.hpp"
#include "tests/core/design/designing.hpp"

using namespace sumpwright;
using design::PumpVerdict;
using test::ValvedM1;

namespace
{

design::PumpRanking choosePump(const plan::Plan& plan, design::PumpQuestion question = {})
{
    const auto outcome = design::choosePump(plan, test::builtIn(), question);
    EXPECT_TRUE(outcome.ok()) << (outcome.ok() ? "" : base::oneLine(outcome.refusal()));
    return outcome.ok() ? *outcome : design::PumpRanking();
}

const design::PumpChoice& choiceOf(const design::PumpRanking& ranking, const std::string& model)
{
    return *std::find_if(ranking.choices.begin(), ranking.choices.end(),
                         [&](const design::PumpChoice& choice) { return choice.modelId == model; });
}

const assessment::PumpResult& pumpIn(const assessment::Assessment& results, base::Id pump)
{
    return *assessment::find(results.pumps->pumps, pump);
}

std::string refusedFor(const plan::Plan& plan, design::PumpQuestion question = {})
{
    const auto outcome = design::choosePump(plan, test::builtIn(), question);
    return outcome.ok() ? "" : outcome.refusal().id;
}

design::PumpQuestion wanting(double litresPerHour, bool slower = false)
{
    return {{}, units::litresPerHour(litresPerHour), slower};
}

} // namespace

TEST(ChoosePump, PutsFirstWhatDoesItWithTheLeastEnergy)
{
    const ValvedM1 m;
    const auto ranking = choosePump(m.drawn.plan, wanting(2500));
    ASSERT_EQ(ranking.choices.size(), 5U);
    EXPECT_EQ(ranking.choices[0].modelId, "G4500"); // 70 W; the larger ones draw more, the smaller ones cannot
    EXPECT_EQ(ranking.choices[0].verdict, PumpVerdict::does);
    EXPECT_TRUE(ranking.choices[0].present);
    EXPECT_EQ(choiceOf(ranking, "G2500").verdict, PumpVerdict::tooWeak);
    EXPECT_EQ(choiceOf(ranking, "G1000").verdict, PumpVerdict::tooWeak);
    double last = 0.0;
    for (const auto& choice : ranking.choices)
        if (choice.verdict == PumpVerdict::does) {
            EXPECT_GE(units::inKilowattHours(*choice.energyPerYear), last);
            last = units::inKilowattHours(*choice.energyPerYear);
        }
}

TEST(ChoosePump, TellsTheDutyPointOfAFreshAssessment)
{
    const ValvedM1 m;
    const auto ranking = choosePump(m.drawn.plan, wanting(2500));
    for (const auto& choice : ranking.choices) {
        if (choice.present)
            continue;
        const auto results = test::assess(test::applied(m.drawn.plan, choice.edit));
        const auto& pump = pumpIn(results, m.pump);
        const auto& duty = *pump.duty[test::RunningState::least];
        EXPECT_EQ(choice.flow, duty.flow) << choice.modelId;
        EXPECT_EQ(choice.head, duty.head);
        EXPECT_EQ(choice.toShutOff, pump.shutOff - duty.head);
        EXPECT_EQ(choice.toRunOut, pump.boxFigure - duty.flow);
        EXPECT_EQ(*choice.energyPerYear, duty.power->energyPerYear);
    }
}

// A pump stronger by just the head said to be missing brings just the wanted flow.
TEST(ChoosePump, SaysHowMuchHeadIsMissing)
{
    ValvedM1 m;
    const auto weak = choiceOf(choosePump(m.drawn.plan, wanting(2200)), "G2500");
    ASSERT_EQ(weak.verdict, PumpVerdict::tooWeak);
    EXPECT_NEAR(units::inLitresPerHour(weak.flow + weak.missingFlow), 2200, 1e-6);
    m.drawn.changePump(m.pump, [&](plan::Pump& pump) {
        for (const auto& point : (*test::builtIn()->pump("G2500"))->points)
            pump.ownCurve.push_back({point.flow, point.head + weak.missingHead});
        pump.modelId.clear();
    });
    const auto results = test::assess(m.drawn.plan);
    const auto& duty = *pumpIn(results, m.pump).duty[test::RunningState::least];
    EXPECT_NEAR(units::inLitresPerHour(duty.flow), 2200, 10);
}

TEST(ChoosePump, JudgesByTargetsWithTheValvesSetForThem)
{
    const ValvedM1 m({450, 300, 500, 400});
    const auto ranking = choosePump(m.drawn.plan);
    EXPECT_TRUE(ranking.byTargets);
    EXPECT_NEAR(units::inLitresPerHour(ranking.wanted), 1650, 1e-6);
    const auto& large = choiceOf(ranking, "G8000");
    const plan::Plan after = test::applied(m.drawn.plan, large.edit);
    EXPECT_EQ(after.pumps.find(m.pump)->modelId, "G8000");
    const double wanted[] = {450, 300, 500, 400};
    for (std::size_t i = 0; i < 4; ++i)
        EXPECT_NEAR(test::flowOf(after, m.bedBranches[i]), wanted[i], 0.005 * wanted[i]);
    const auto& small = choiceOf(ranking, "G1000");
    EXPECT_EQ(small.verdict, PumpVerdict::tooWeak);
    EXPECT_GT(small.missingFlow, units::litresPerHour(300));
}

TEST(ChoosePump, FindsTheSpeedThatGivesTheWantedFlow)
{
    const ValvedM1 m;
    const auto ranking = choosePump(m.drawn.plan, wanting(2500, true));
    const auto& large = choiceOf(ranking, "G8000");
    EXPECT_LT(large.speed, 0.8);
    EXPECT_NEAR(units::inLitresPerHour(large.flow), 2500, 15);
    const plan::Plan after = test::applied(m.drawn.plan, large.edit);
    EXPECT_EQ(after.pumps.find(m.pump)->speed, large.speed);
    // P falls with the cube of the speed: affinity laws.
    EXPECT_NEAR(units::inWatts(*large.power) / 130.0, std::pow(large.speed, 3), 1e-9);
}

TEST(ChoosePump, RanksTheClientsOwnCurvesToo)
{
    ValvedM1 m;
    const base::Id own = m.drawn.pump(m.sump, "", 0.1);
    m.drawn.changePump(own, [](plan::Pump& pump) {
        pump.running = false;
        pump.ownCurve = {{units::litresPerHour(0), units::metresHead(3.4)},
                         {units::litresPerHour(4800), units::metresHead(0)}};
        pump.ownPower = units::watts(40);
    });
    const auto ranking = choosePump(m.drawn.plan, {m.pump, units::litresPerHour(2500), false});
    EXPECT_EQ(ranking.choices[0].owner, own);
    const plan::Plan after = test::applied(m.drawn.plan, ranking.choices[0].edit);
    EXPECT_EQ(after.pumps.find(m.pump)->ownCurve, after.pumps.find(own)->ownCurve);
    EXPECT_TRUE(after.pumps.find(m.pump)->modelId.empty());
}

TEST(ChoosePump, MarksAPumpTheSumpIsTooShallowFor)
{
    ValvedM1 m;
    m.drawn.changeVessel(m.sump, [](plan::Vessel& sump) { sump.runningLevel = units::elevationMetres(0.50); });
    EXPECT_NE(choiceOf(choosePump(m.drawn.plan, wanting(2500)), "G8000").verdict, PumpVerdict::uncovered);
    m.drawn.changeVessel(m.sump, [](plan::Vessel& sump) { sump.runningLevel = units::elevationMetres(0.085); });
    const auto large = choiceOf(choosePump(m.drawn.plan, wanting(2500)), "G8000");
    EXPECT_EQ(large.verdict, PumpVerdict::uncovered);
    EXPECT_LT(*large.depth, *large.neededDepth);
}

TEST(ChoosePump, TakesWhatFlowsNowWhereNothingElseIsAsked)
{
    const ValvedM1 m;
    const auto ranking = choosePump(m.drawn.plan);
    EXPECT_FALSE(ranking.byTargets);
    EXPECT_EQ(ranking.wanted, pumpIn(test::assess(m.drawn.plan), m.pump).duty[test::RunningState::least]->flow);
    EXPECT_NE(choiceOf(ranking, "G4500").verdict, PumpVerdict::tooWeak);
}

TEST(ChoosePump, SaysWhatIsMissingBeforeItCanBegin)
{
    EXPECT_EQ(refusedFor(test::DrawnPlan().plan), "design.no-pump");
    test::DrawnPlan bare;
    bare.pump(bare.sump({0, 0, 0}, 1, 1, 0.5, 0.3), "G1000", 0.1);
    EXPECT_EQ(refusedFor(bare.plan), "design.no-pressure-outlet");
    EXPECT_EQ(refusedFor(ValvedM1().drawn.plan, wanting(0)), "design.wanted-out-of-range");
    EXPECT_EQ(refusedFor(ValvedM1().drawn.plan, {base::Id{999}, {}, false}), "design.no-pump");
    ValvedM1 off;
    off.drawn.changePump(off.pump, [](plan::Pump& pump) { pump.running = false; });
    EXPECT_EQ(refusedFor(off.drawn.plan), "design.not-solved");
    EXPECT_EQ(refusedFor(off.drawn.plan, wanting(2500)), ""); // it is asked which would do
}

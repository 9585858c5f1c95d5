// What the worksheets of overflows, outlets, drains and emptying tanks add to the functions they call: choices between
// inputs, notes, estimates and refusals.
#include <algorithm>

#include "core/hydraulics/side_outlet.hpp"
#include "core/hydraulics/sloping_drain.hpp"
#include "core/units/measures.hpp"
#include "tests/core/worksheets/asking.hpp"

using namespace sumpwright;
using tests::ask;
using tests::numberOf;

namespace
{

bool says(const worksheets::Answer& answer, const std::string& note)
{
    return std::find(answer.notes.begin(), answer.notes.end(), note) != answer.notes.end();
}

std::string refusalOf(const std::string& id, const tests::Texts& texts)
{
    const auto answer = ask(id, texts);
    return answer.ok() ? std::string() : answer.refusal().id + " " + answer.refusal().place;
}

} // namespace

TEST(SlopingDrainQuestion, TakesTheFlowOrTheFillAndAnswersTheOther)
{
    const tests::Texts drain{{"bore", "57 mm"}, {"fall", "1.5 %"}};
    const auto with = [&](const char* name, const std::string& text) {
        tests::Texts texts = drain;
        texts.push_back({name, text});
        return ask("sloping-drain", texts);
    };
    const auto byFlow = with("flow", "1800 L/h");
    ASSERT_TRUE(byFlow.ok());
    const auto byFill = with("fill", std::to_string(numberOf(*byFlow, "fill")));
    ASSERT_TRUE(byFill.ok());
    EXPECT_NEAR(numberOf(*byFill, "flow") * 3.6e6, 1800.0, 0.02);
    EXPECT_NEAR(numberOf(*byFlow, "depth") / 0.057, numberOf(*byFlow, "fill"), 1e-12);
    EXPECT_EQ(refusalOf("sloping-drain", drain), "worksheets.needs-one flow");
    tests::Texts both = drain;
    both.push_back({"flow", "1800 L/h"});
    both.push_back({"fill", "0.5"});
    EXPECT_EQ(refusalOf("sloping-drain", both), "worksheets.one-of flow");
}

TEST(SlopingDrainQuestion, RefusesMoreThanTheFullBoreAndSaysHowMuchFits)
{
    const auto answer = ask("sloping-drain", {{"bore", "47.3 mm"}, {"fall", "1 %"}, {"flow", "9000 L/h"}});
    ASSERT_FALSE(answer.ok());
    EXPECT_EQ(answer.refusal().id, "worksheets.drain-overfull");
    const double full = units::inLitresPerHour(
        hydraulics::fullFlow(units::millimetres(47.3), units::metresPerMetre(0.01), hydraulics::smoothPlasticManning));
    EXPECT_NE(answer.refusal().accepts.find(std::to_string(static_cast<int>(full) % 1000)), std::string::npos)
        << answer.refusal().accepts << " " << full;
    EXPECT_EQ(refusalOf("sloping-drain", {{"bore", "47.3 mm"}, {"fall", "0 %"}, {"fill", "0.5"}}),
              "worksheets.out-of-range fall");
}

TEST(SlopingDrainQuestion, SaysWhereItSettlesAndWhereItRunsTooFull)
{
    const auto notes = [](const char* fall, const char* fill) {
        const auto answer = ask("sloping-drain", {{"bore", "57 mm"}, {"fall", fall}, {"fill", fill}});
        std::string all;
        for (const std::string& note : answer->notes)
            all += note + " ";
        return all;
    };
    EXPECT_EQ(notes("2 %", "0.5"), "drain-long ");
    EXPECT_EQ(notes("2 %", "0.8"), "drain-high drain-long ");
    EXPECT_EQ(notes("2 %", "0.95"), "drain-surcharged drain-long ");
    EXPECT_EQ(notes("0.1 %", "0.5"), "drain-settles drain-long ");
    EXPECT_EQ(notes("0.3 %", "0.5"), "drain-doubtful drain-long ");
}

TEST(SlopingDrainQuestion, TellsTheFallThatWouldRunHalfFull)
{
    const auto answer = ask("sloping-drain", {{"bore", "57 mm"}, {"fall", "3 %"}, {"fill", "0.5"}});
    ASSERT_TRUE(answer.ok());
    EXPECT_NEAR(numberOf(*answer, "fall_for_half_full"), 0.03, 1e-12);
}

TEST(SideOutletQuestion, IsTheFunctionOfThePlanAndWarnsOfAFullBore)
{
    const auto free = ask("side-outlet", {{"flow", "1500 L/h"}, {"bore", "57 mm"}, {"entry_k", "0.8"}});
    ASSERT_TRUE(free.ok());
    EXPECT_EQ(
        numberOf(*free, "level_over_invert"),
        units::inMetres(
            hydraulics::sideOutletFlow(units::millimetres(57.0), units::litresPerHour(1500.0), 0.8).levelOverInvert));
    EXPECT_FALSE(says(*free, "outlet-runs-full"));
    EXPECT_FALSE(free->output("level_over_invert")->estimate);
    const auto full = ask("side-outlet", {{"flow", "9000 L/h"}, {"bore", "57 mm"}});
    ASSERT_TRUE(full.ok());
    EXPECT_TRUE(says(*full, "outlet-runs-full"));
    EXPECT_TRUE(full->output("level_over_invert")->estimate);
    EXPECT_EQ(refusalOf("side-outlet", {{"flow", "0 L/h"}, {"bore", "57 mm"}}), "worksheets.out-of-range flow");
}

TEST(OverflowCapacityQuestion, SaysWhatTheFormulaAndThePipeCannotDo)
{
    const auto quiet = ask("overflow-capacity", {{"bore", "57 mm"}, {"head", "5 mm"}});
    ASSERT_TRUE(quiet.ok());
    EXPECT_TRUE(quiet->notes.empty());
    const auto pressed = ask("overflow-capacity", {{"bore", "27.2 mm"}, {"head", "60 mm"}, {"open_fraction", "0.9"}});
    ASSERT_TRUE(pressed.ok());
    for (const char* note : {"overflow-too-deep", "screen-clogs", "standpipe-less", "standpipe-small"})
        EXPECT_TRUE(says(*pressed, note)) << note;
    EXPECT_TRUE(pressed->output("design_capacity")->estimate);
    EXPECT_EQ(refusalOf("overflow-capacity", {{"bore", "57 mm"}, {"head", "5 mm"}, {"open_fraction", "0"}}),
              "worksheets.out-of-range open_fraction");
}

TEST(TankEmptyingQuestion, RefusesALevelItNeverReaches)
{
    const tests::Texts tank{{"area", "1.2 m2"}, {"hole", "20 mm"}, {"level_from", "0.8 m"}};
    const auto with = [&](tests::Texts more) {
        more.insert(more.begin(), tank.begin(), tank.end());
        return more;
    };
    EXPECT_EQ(refusalOf("tank-emptying", with({{"level_to", "0.9 m"}})), "worksheets.level-not-falling level_to");
    EXPECT_EQ(refusalOf("tank-emptying", with({{"level_to", "0.1 m"}, {"inflow", "1200 L/h"}})),
              "worksheets.inflow-holds-level inflow");
    const auto slow = ask("tank-emptying", with({{"level_to", "0 m"}}));
    ASSERT_TRUE(slow.ok());
    EXPECT_TRUE(slow->output("time")->estimate);
    EXPECT_TRUE(says(*slow, "emptying-low"));
    const auto high = ask("tank-emptying", with({{"level_to", "0.2 m"}}));
    ASSERT_TRUE(high.ok());
    EXPECT_FALSE(high->output("time")->estimate);
}

// Every finding has its sentence, every advice its words; names and amounts fill them.
#include "core/report/words.hpp"

#include <gtest/gtest.h>

#include <set>

#include "core/report/sentences.hpp"
#include "core/report/text_table.hpp"
#include "tests/core/report/assessed.hpp"

namespace
{

using namespace sumpwright;
using test::assessed;
using test::SoundPlan;

std::set<std::string> idsOf(std::span<const report::Sentence> sentences)
{
    std::set<std::string> ids;
    for (const report::Sentence& sentence : sentences)
        EXPECT_TRUE(ids.insert(std::string(sentence.id)).second) << sentence.id << " is there twice";
    return ids;
}

TEST(Sentences, CoverEveryRuleAndNoOther)
{
    std::set<std::string> rules{"program.fault"}, mends{"report-fault"};
    for (const findings::Rule* rule : findings::allRules()) {
        rules.insert(std::string(rule->id));
        if (!rule->mend.empty())
            mends.insert(std::string(rule->mend));
    }
    EXPECT_EQ(idsOf(report::findingSentences()), rules);
    EXPECT_EQ(idsOf(report::adviceSentences()), mends);
}

TEST(Sentences, HoldOnlyKnownPlaces)
{
    const std::set<std::string> known{"1", "2", "all", "value", "limit", "subject", "plain value", "plain limit"};
    for (const report::Sentence& sentence : report::findingSentences())
        for (const std::string_view text : {sentence.text, sentence.withoutValue}) {
            std::string_view rest = text;
            for (std::size_t open = rest.find('{'); open != std::string_view::npos; open = rest.find('{')) {
                const std::size_t close = rest.find('}', open);
                ASSERT_NE(close, std::string_view::npos) << sentence.id;
                EXPECT_TRUE(known.count(std::string(rest.substr(open + 1, close - open - 1)))) << sentence.id;
                rest.remove_prefix(close + 1);
            }
        }
}

TEST(Words, FillASentenceWithNamesAndAmounts)
{
    SoundPlan plan;
    plan.drawn.changeVessel(plan.sump, [](plan::Vessel& v) { v.tag = "S1"; });
    const auto result = assessed(plan.drawn);
    assessment::Finding finding;
    finding.id = "sump.spills";
    finding.elements = {plan.sump};
    finding.value = units::litres(37.5);
    finding.source = "en-12056-3";
    finding.mend = "larger-sump";
    const auto words = report::wordsOf(finding, result);
    EXPECT_EQ(words.message, "When the pump stops 37.5 L of water spill at sump S1.");
    EXPECT_FALSE(words.advice.empty());
    EXPECT_NE(words.source.find("EN 12056-3"), std::string::npos);
    EXPECT_NE(words.source.find("from memory"), std::string::npos);
}

TEST(Words, WriteInTheStyleAsked)
{
    const auto german = units::NumberStyle::ofDesktop(",", ".");
    EXPECT_EQ(report::textOf(units::metresPerSecond(1.5), {units::UnitSystem::metric, german}).find("1,5"), 0U);
    EXPECT_NE(report::textOf(units::metresPerSecond(1.5), {units::UnitSystem::us, {}}).find("ft/s"), std::string::npos);
    EXPECT_EQ(report::textOf(assessment::Amount(0.3)), report::textOf(assessment::Amount(0.3)));
    EXPECT_TRUE(report::textOf(assessment::Amount()).empty());
}

TEST(Words, NameWhatIsGoneWithoutAFault)
{
    const SoundPlan plan;
    EXPECT_EQ(report::nameOf(plan.drawn.plan, base::Id{9999}), "an element that is gone");
    EXPECT_EQ(report::nameOf(plan.drawn.plan, plan.tankLip),
              "lip O" + std::to_string(plan.tankLip.number) + " of fish tank V" + std::to_string(plan.tank.number));
}

TEST(Words, ShortenLongLists)
{
    test::DrawnPlan drawn;
    assessment::Finding finding;
    finding.id = "run.transition";
    for (int i = 0; i < 12; ++i)
        finding.elements.push_back(drawn.vessel(plan::VesselKind::settler, {i * 2.0, 0, 0}, 1, 1, 1));
    const std::string message = report::wordsOf(finding, assessed(drawn)).message;
    EXPECT_NE(message.find("and 6 more"), std::string::npos) << message;
}

TEST(TextTable, AlignsByCharactersNotBytes)
{
    report::TextTable table({"", "volume"});
    table.add({"a", "1 m³"});
    table.add({"bc", "12 m"});
    EXPECT_EQ(table.lines(), "      volume\n  a     1 m³\n  bc    12 m\n");
}

} // namespace

// Every finding has its sentence, every advice its words; names and amounts fill them.
#include "core/report/words.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "core/report/sentences.hpp"
#include "core/report/tag_spans.hpp"
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
    const std::set<std::string> known{"1",      "2",       "all",         "value",      "limit",
                                      "beside", "subject", "plain value", "plain limit"};
    for (const report::Sentence& sentence : report::findingSentences())
        for (const std::string_view text : {sentence.text, sentence.withoutValue}) {
            std::string_view rest = text;
            for (std::size_t open = rest.find('{'); open != std::string_view::npos; open = rest.find('{')) {
                const std::size_t close = rest.find('}', open);
                ASSERT_NE(close, std::string_view::npos) << sentence.id;
                const std::string_view key = rest.substr(open + 1, close - open - 1);
                const auto halves = std::count(key.begin(), key.end(), '|'); // {is|are}
                EXPECT_TRUE(halves == 1 || known.count(std::string(key))) << sentence.id << ": " << key;
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
    for (std::size_t i = 0; i < 12; ++i) // none follows another
        drawn.changeVessel(finding.elements[i], [i](plan::Vessel& v) { v.tag = "SE" + std::to_string(2 * i + 1); });
    const std::string message = report::wordsOf(finding, assessed(drawn)).message;
    EXPECT_NE(message.find("settlers SE1, SE3, SE5, SE7, SE9, SE11 and 6 more"), std::string::npos) << message;
}

TEST(Words, NameSeveralOfAKindBySpansOfTheirTags)
{
    SoundPlan plan;
    std::vector<base::Id> beds;
    for (int i = 1; i <= 6; ++i) {
        beds.push_back(plan.drawn.vessel(plan::VesselKind::mediaBed, {i * 1.0, 0, 0}, 0.5, 0.5, 0.3));
        plan.drawn.changeVessel(beds.back(), [i](plan::Vessel& v) { v.tag = "B" + std::to_string(i + 6); });
    }
    EXPECT_EQ(report::namesOf(plan.drawn.plan, beds), "media beds B7 to B12");
    beds.erase(beds.begin() + 3);
    EXPECT_EQ(report::namesOf(plan.drawn.plan, beds), "media beds B7 to B9, B11 and B12");
    EXPECT_EQ(report::namesOf(plan.drawn.plan, {beds[0]}), "media bed B7");
    plan.drawn.changeVessel(plan.sump, [](plan::Vessel& v) { v.tag = "S1"; });
    EXPECT_EQ(report::namesOf(plan.drawn.plan, {beds[0], plan.sump}), "media bed B7 and sump S1");
    EXPECT_EQ(report::namesOf(plan.drawn.plan, {base::Id{9999}, beds[0]}), "an element that is gone and media bed B7");
}

TEST(Words, SpeakOfSeveralInThePlural)
{
    SoundPlan plan;
    assessment::Finding finding;
    finding.id = "floor.stand-missing";
    finding.mend = "add-stand";
    finding.elements = {plan.bed1, plan.bed2};
    finding.value = units::millimetres(300);
    int number = 1;
    for (const auto bed : finding.elements)
        plan.drawn.changeVessel(bed, [&](plan::Vessel& v) { v.tag = "B" + std::to_string(number++); });
    const auto result = assessed(plan.drawn);
    EXPECT_EQ(report::wordsOf(finding, result).message,
              "Media bed B1 is drawn 300 mm above the floor, but nothing is said to carry it.");
    finding.alike = 2;
    const auto words = report::wordsOf(finding, result);
    EXPECT_EQ(words.message,
              "Media beds B1 and B2 are drawn 300 mm above the floor, but nothing is said to carry them.");
    EXPECT_EQ(words.advice.find("Say what carries them"), 0U) << words.advice;
}

TEST(TagSpans, CountInNaturalOrderAndLeaveOddTagsAlone)
{
    const auto read = [](const std::vector<std::string>& tags) {
        std::string text;
        for (const report::TagSpan& span : report::spansOf(tags))
            text += span.first + (span.count > 1 ? "-" + span.last : "") + " ";
        return text;
    };
    EXPECT_EQ(read({"B10", "B2", "B9", "B11", "B1"}), "B1 B2 B9-B11 ");
    EXPECT_EQ(read({"B1", "C2", "B2", "C3", "B3", "C4"}), "B1-B3 C2-C4 ");
    EXPECT_EQ(read({"B01", "B02", "B03"}), "B01 B02 B03 ");
    EXPECT_EQ(read({"east", "west", "99999999999999999999", "7", "8", "9"}), "7-9 99999999999999999999 east west ");
    EXPECT_EQ(read({}), "");
}

TEST(TextTable, AlignsByCharactersNotBytes)
{
    report::TextTable table({"", "volume"});
    table.add({"a", "1 m³"});
    table.add({"bc", "12 m"});
    EXPECT_EQ(table.lines(), "      volume\n  a     1 m³\n  bc    12 m\n");
}

} // namespace

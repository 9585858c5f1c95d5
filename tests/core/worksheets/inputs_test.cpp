#include <algorithm>

#include "core/worksheets/inputs.hpp"
#include "core/worksheets/lists.hpp"
#include "tests/core/worksheets/asking.hpp"

using namespace sumpwright;
using tests::ask;
using tests::Texts;

namespace
{

const Texts pipeRun = {{"flow", "1000 L/h"}, {"bore", "27.2 mm"}, {"length", "10 m"}};

// The question about a pipe with one input added or put in place of another.
base::Refusal refusalWith(const std::string& name, const std::string& text)
{
    Texts texts = pipeRun;
    std::erase_if(texts, [&name](const worksheets::InputText& input) { return input.name == name; });
    texts.push_back({name, text});
    const auto answer = ask("pipe-friction", texts);
    EXPECT_FALSE(answer.ok()) << name << "=" << text;
    return answer.ok() ? base::Refusal{} : answer.refusal();
}

} // namespace

TEST(WorksheetInputs, DefaultsStandInForWhatIsNotGiven)
{
    const auto answer = ask("pipe-friction", pipeRun);
    ASSERT_TRUE(answer.ok()) << base::oneLine(answer.refusal());
    ASSERT_EQ(answer->inputs.size(), 8u);
    EXPECT_EQ(answer->inputs[3].name, "roughness");
    EXPECT_DOUBLE_EQ(worksheets::numberOf(answer->inputs[3].value), 1.5e-6);
    EXPECT_EQ(answer->inputs[4].unit, "degC");
    EXPECT_EQ(worksheets::numberOf(answer->inputs[4].value), 20.0);
}

TEST(WorksheetInputs, ADefaultMayBeAnotherInput)
{
    const auto answer = ask("fitting-loss", {{"fitting", "elbow-90"}, {"bore", "27.2 mm"}, {"flow", "1000 L/h"}});
    ASSERT_TRUE(answer.ok());
    EXPECT_EQ(answer->inputs[3].name, "nominal");
    EXPECT_DOUBLE_EQ(worksheets::numberOf(answer->inputs[3].value), 0.0272);
}

TEST(WorksheetInputs, AMissingOneIsNamedWithWhatItAccepts)
{
    const auto answer = ask("pipe-friction", {{"flow", "1000 L/h"}, {"length", "10 m"}});
    ASSERT_FALSE(answer.ok());
    EXPECT_EQ(answer.refusal().id, "worksheets.missing-input");
    EXPECT_EQ(answer.refusal().place, "bore");
    EXPECT_EQ(answer.refusal().accepts.rfind("a length, at least 1 mm, at most 1 m (m, cm, mm", 0), 0u)
        << answer.refusal().accepts;
}

TEST(WorksheetInputs, AnUnknownNameListsTheKnownOnes)
{
    const base::Refusal refusal = refusalWith("diameter", "27 mm");
    EXPECT_EQ(refusal.id, "worksheets.unknown-input");
    EXPECT_EQ(refusal.place, "diameter");
    EXPECT_EQ(refusal.accepts,
              "its inputs are flow, bore, length, roughness, temperature, sum_k, opening_head, corrugated_factor");
}

TEST(WorksheetInputs, ANumberWithoutUnitOrOfAnotherKindIsRefusedAtItsInput)
{
    EXPECT_EQ(refusalWith("flow", "1000").id, "units.missing-unit");
    EXPECT_EQ(refusalWith("flow", "1000 kg").id, "units.wrong-kind");
    EXPECT_EQ(refusalWith("flow", "1000 kg").place.rfind("flow, character", 0), 0u);
    EXPECT_EQ(refusalWith("sum_k", "3 m").place.rfind("sum_k", 0), 0u);
}

TEST(WorksheetInputs, LimitsAreTakenAtTheirWord)
{
    EXPECT_EQ(refusalWith("flow", "0 L/h").id, "worksheets.out-of-range"); // more than 0
    EXPECT_TRUE(ask("pipe-friction", {{"flow", "1 L/h"}, {"bore", "1 mm"}, {"length", "0 m"}}).ok());
    EXPECT_EQ(refusalWith("bore", "0.99 mm").id, "worksheets.out-of-range");
    EXPECT_EQ(refusalWith("temperature", "40.01 degC").id, "worksheets.out-of-range");
    EXPECT_EQ(refusalWith("length", "-1 m").id, "worksheets.out-of-range");
    EXPECT_EQ(refusalWith("roughness", "14 mm").place, "roughness");
}

TEST(WorksheetInputs, TheSameNameTwiceIsRefused)
{
    Texts twice = pipeRun;
    twice.push_back({"flow", "2000 L/h"});
    const auto answer = ask("pipe-friction", twice);
    ASSERT_FALSE(answer.ok());
    EXPECT_EQ(answer.refusal().id, "worksheets.given-twice");
}

TEST(WorksheetInputs, ANumberStyleChangesTheReadingAndNothingElse)
{
    const units::NumberStyle comma = units::NumberStyle::ofDesktop(",", ".");
    const auto there = ask("pipe-friction", {{"flow", "1000 L/h"}, {"bore", "27,2 mm"}, {"length", "10 m"}}, comma);
    const auto here = ask("pipe-friction", pipeRun);
    ASSERT_TRUE(there.ok()) << base::oneLine(there.refusal());
    EXPECT_EQ(tests::numberOf(*there, "head_loss"), tests::numberOf(*here, "head_loss"));
    EXPECT_NE(there->working.front().find("27,2 mm"), std::string::npos) << there->working.front();
    EXPECT_FALSE(ask("pipe-friction", {{"flow", "1000 L/h"}, {"bore", "27,2 mm"}, {"length", "10 m"}}).ok());
}

TEST(WorksheetInputs, APumpIsNamedOrDrawnButNotBoth)
{
    const Texts place = {{"static_head", "1 m"}, {"bore", "27.2 mm"}, {"length", "6 m"}};
    EXPECT_EQ(ask("pump-duty", place).refusal().id, "worksheets.needs-one");
    Texts both = place;
    both.push_back({"pump", "G4500"});
    both.push_back({"points", "0 L/h: 3 m; 1000 L/h: 0 m"});
    EXPECT_EQ(ask("pump-duty", both).refusal().id, "worksheets.one-of");
}

TEST(WorksheetInputs, PointsSayWhichOneIsWrong)
{
    const auto refusal = [](const std::string& points) {
        const auto answer =
            ask("pump-duty", {{"points", points}, {"static_head", "1 m"}, {"bore", "27.2 mm"}, {"length", "6 m"}});
        EXPECT_FALSE(answer.ok()) << points;
        return answer.ok() ? std::string() : answer.refusal().place;
    };
    EXPECT_EQ(refusal("0 L/h: 3 m; 500: 2 m"), "points, point 2");
    EXPECT_EQ(refusal("0 L/h: 3 m; 500 L/h"), "points, point 2");
    EXPECT_EQ(refusal("0 L/h: 3 kg; 500 L/h: 1 m"), "points, point 1");
    EXPECT_EQ(refusal("0 L/h: 1 m; 500 L/h: 2 m"), "points, point 2");
    EXPECT_EQ(refusal("; ;"), "points, point 1");
    EXPECT_EQ(refusal("0 L/h: 3 m"), "points");
}

TEST(WorksheetInputs, AVesselIsRoundOrRectangularAndHoldsWaterOrMedium)
{
    const auto place = [](const Texts& texts) {
        const auto answer = ask("vessel-mass", texts);
        return answer.ok() ? std::string("answered") : answer.refusal().place;
    };
    EXPECT_EQ(place({{"shape", "round"}, {"water_depth", "1 m"}}), "diameter");
    EXPECT_EQ(place({{"shape", "round"}, {"diameter", "1 m"}, {"width", "1 m"}, {"water_depth", "1 m"}}), "width");
    EXPECT_EQ(place({{"shape", "rectangle"}, {"length", "1 m"}, {"water_depth", "1 m"}}), "width");
    EXPECT_EQ(place({{"shape", "round"}, {"diameter", "1 m"}}), "water_depth");
    EXPECT_EQ(place({{"shape", "round"}, {"diameter", "1 m"}, {"medium", "gravel"}}), "medium_depth");
    EXPECT_EQ(place({{"shape", "round"}, {"diameter", "1 m"}, {"water_depth", "1 m"}, {"flood_depth", "1 m"}}),
              "flood_depth");
    EXPECT_EQ(place({{"shape", "round"}, {"diameter", "1 m"}, {"water_depth", "1 m"}}), "answered");
}

TEST(WorksheetInputs, AListHasNamesOrNoneAndSaysWhichEntryIsWrong)
{
    const auto total = [](const std::string& vessels) { return ask("water-total", {{"vessels", vessels}}); };
    EXPECT_NEAR(tests::numberOf(*total("T1: 1000 L; 0.5 m3; B1 : 2*110 L;"), "total"), 1.72, 1e-12);
    const auto place = [&](const std::string& vessels) {
        const auto answer = total(vessels);
        return answer.ok() ? std::string("answered") : answer.refusal().place + ": " + answer.refusal().id;
    };
    EXPECT_EQ(place("T1: 5 L; B1: 5 kg"), "vessels, entry 2: units.wrong-kind");
    EXPECT_EQ(place("T1: 5 L; B1: -5 L"), "vessels, entry 2: worksheets.out-of-range");
    EXPECT_EQ(place("T1: 5 L; ; B1: 5 L"), "vessels, entry 2: worksheets.empty-entry");
    EXPECT_EQ(place("T1:"), "vessels, entry 1: worksheets.empty-entry");
    EXPECT_EQ(place(std::string(100, 'x') + ": 5 L"), "vessels, entry 1: worksheets.long-name");
    EXPECT_EQ(place("a\tb: 5 L"), "vessels, entry 1: worksheets.bad-name");
    std::string many;
    for (int i = 0; i < 5001; ++i)
        many += "1 L;";
    EXPECT_EQ(place(many), "vessels: worksheets.too-many-entries");
}

TEST(WorksheetInputs, ALoadListAsksForTheFootprintOfEachMass)
{
    const auto place = [](const std::string& loads) {
        const auto answer = ask("load-total", {{"loads", loads}});
        return answer.ok() ? std::string("answered") : answer.refusal().place + ": " + answer.refusal().id;
    };
    EXPECT_EQ(place("T1: 1060 kg on 1.2 m2; 5 kg on 300 cm2"), "answered");
    EXPECT_EQ(place("T1: 1060 kg"), "loads, entry 1: worksheets.no-footprint");
    EXPECT_EQ(place("T1: 1060 kg on 0 m2"), "loads, entry 1: worksheets.out-of-range");
    EXPECT_EQ(place("T1: 1060 kg on 1.2 m"), "loads, entry 1: units.wrong-kind");
    EXPECT_EQ(place("T1: 1060 L on 1.2 m2"), "loads, entry 1: units.wrong-kind");
}

TEST(WorksheetInputs, NamesOfAListKeepTheirPointsInEveryNumberStyle)
{
    const units::NumberStyle comma = units::NumberStyle::ofDesktop(",", ".");
    EXPECT_EQ(worksheets::listInStyle("bed 1.2: 0.5 L; 2.5 L", comma), "bed 1.2: 0,5 L; 2,5 L");
    EXPECT_EQ(worksheets::listInStyle("bed 1.2: 0.5 L", units::NumberStyle::point()), "bed 1.2: 0.5 L");
    EXPECT_EQ(worksheets::listName(" a;b:c\n"), "a b c");
    EXPECT_EQ(worksheets::listName(std::string(59, 'x') + "\u00e4"), std::string(59, 'x')) << "half a letter";
    const std::string text = worksheets::listInStyle("bed 1.2: 0.5 L; 2.5 L", comma);
    EXPECT_NEAR(tests::numberOf(*ask("water-total", {{"vessels", text}}, comma), "total"), 0.003, 1e-15);
}

TEST(WorksheetInputs, OneInputIsFaultyByItselfWhateverIsMissing)
{
    const auto& sheet = **worksheets::findWorksheet("pipe-friction");
    const auto& tables = *catalogue::Catalogue::builtIn();
    const auto style = units::NumberStyle::point();
    EXPECT_EQ(worksheets::faultOf(sheet, {"bore", "3 kg"}, tables, style)->id, "units.wrong-kind");
    EXPECT_EQ(worksheets::faultOf(sheet, {"bore", "3 km"}, tables, style)->place, "bore");
    EXPECT_FALSE(worksheets::faultOf(sheet, {"bore", "27.2 mm"}, tables, style));
    EXPECT_EQ(worksheets::missingInputs(sheet, {{"bore", "27.2 mm"}}), (std::vector<std::string>{"flow", "length"}));
    EXPECT_TRUE(worksheets::missingInputs(sheet, pipeRun).empty());
}

// Bad text in every input of every worksheet: an answer or a refusal with a place and a way to mend it, never an
// exception, never a number that is not finite.
TEST(WorksheetInputs, NoTextInAnyInputBreaksAWorksheet)
{
    const std::vector<std::string> texts = {
        "",        " ",       "0",         "-1 m",    "nan",      "inf m", "1e308 m",   "1e-308", "1e400",   "1,5 m",
        "m",       "1 m 2",   "((((((",    "1/0 m",   "\xff\xfe", "G4500", "elbow-90",  "0 m",    "1e6 L/h", "1e3 m",
        "1e-9 mm", "40 degC", "-300 degC", "; : ; :", "=",        "1",     "1e-12 L/h", "1 m3/s"};
    int asked = 0;
    for (const auto& [id, good] : tests::goodQuestions())
        for (const worksheets::InputSpec& spec : (*worksheets::findWorksheet(id))->inputs)
            for (const std::string& text : texts) {
                Texts changed = good;
                std::erase_if(changed, [&spec](const auto& input) { return input.name == spec.name; });
                changed.push_back({spec.name, text});
                const auto answer = ask(id, changed);
                ++asked;
                if (answer.ok())
                    continue;
                EXPECT_FALSE(answer.refusal().place.empty()) << id << " " << spec.name << "=" << text;
                EXPECT_FALSE(answer.refusal().what.empty()) << id << " " << spec.name << "=" << text;
                EXPECT_FALSE(answer.refusal().accepts.empty()) << id << " " << spec.name << "=" << text;
            }
    EXPECT_GT(asked, 1000);
}

TEST(WorksheetInputs, APumpMayHaveTheTwoNumbersOfItsBoxButBothOfThem)
{
    const Texts place = {{"static_head", "1 m"}, {"bore", "27.2 mm"}, {"length", "6 m"}};
    const auto with = [&place](Texts more) {
        more.insert(more.end(), place.begin(), place.end());
        return ask("pump-duty", more);
    };
    const auto alone = with({{"shut_off_head", "3 m"}});
    ASSERT_FALSE(alone.ok());
    EXPECT_EQ(alone.refusal().id + " " + alone.refusal().place, "worksheets.missing-input greatest_flow");
    const auto box = with({{"shut_off_head", "3 m"}, {"greatest_flow", "4000 L/h"}});
    ASSERT_TRUE(box.ok()) << base::oneLine(box.refusal());
    EXPECT_TRUE(box->output("flow")->estimate);
    EXPECT_NE(std::find(box->notes.begin(), box->notes.end(), "pump-two-numbers"), box->notes.end());
    EXPECT_FALSE(with({{"shut_off_head", "3 m"}, {"greatest_flow", "4000 L/h"}, {"pump", "G4500"}}).ok());
    EXPECT_FALSE(with({{"pump", "G4500"}, {"arrangement", "three"}}).ok());
}

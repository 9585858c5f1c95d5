#include "core/worksheets/written_answer.hpp"

#include <cmath>

#include <nlohmann/json.hpp>

#include "core/base/ensure.hpp"
#include "core/worksheets/json_text.hpp"
#include "tests/core/worksheets/asking.hpp"
#include "tests/support/json_schema.hpp"

using namespace sumpwright;
using nlohmann::json;
using worksheets::JsonText;

namespace
{

const tests::JsonSchema& answerSchema()
{
    static const auto schema = tests::JsonSchema::fromFile(SUMPWRIGHT_SOURCE "/resources/schema/worksheet-answer.json");
    return schema;
}

std::string faultsIn(const tests::JsonSchema& schema, const json& document)
{
    std::string all;
    for (const std::string& fault : schema.faultsOf(document))
        all += fault + "\n";
    return all;
}

} // namespace

TEST(WrittenAnswer, OfEveryWorksheetKeepsToItsSchemaAndToTheListedUnits)
{
    for (const auto& [id, texts] : tests::goodQuestions()) {
        const auto answer = tests::ask(id, texts);
        ASSERT_TRUE(answer.ok()) << id;
        const json document = json::parse(worksheets::answerJson(*answer));
        EXPECT_EQ(faultsIn(answerSchema(), document), "") << id;
        const worksheets::Worksheet& sheet = **worksheets::findWorksheet(id);
        EXPECT_EQ(document.at("outputs").size(), sheet.outputs.size()) << id;
        for (const worksheets::OutputSpec& spec : sheet.outputs) {
            const std::string unit = document.at("outputs").at(spec.name).at("unit").get<std::string>();
            EXPECT_EQ(unit, spec.unit == "currency" ? "EUR" : spec.unit) << id << " " << spec.name;
        }
        EXPECT_FALSE(answer->working.empty()) << id;
    }
}

TEST(WrittenAnswer, TheSchemaWouldNoticeAMistake)
{
    const auto answer = tests::ask("water-properties", {{"temperature", "20 degC"}});
    ASSERT_TRUE(answer.ok());
    const json good = json::parse(worksheets::answerJson(*answer));
    json bad = good;
    bad["outputs"]["density"].erase("unit");
    EXPECT_NE(faultsIn(answerSchema(), bad), "");
    bad = good;
    bad["outputs"]["density"]["value"] = nullptr;
    EXPECT_NE(faultsIn(answerSchema(), bad), "");
    bad = good;
    bad["extra"] = 1;
    EXPECT_NE(faultsIn(answerSchema(), bad), "");
    bad = good;
    bad["sources"] = json::array();
    EXPECT_NE(faultsIn(answerSchema(), bad), "");
}

TEST(WrittenAnswer, NumbersKeepTheirBits)
{
    const auto answer = tests::ask("pipe-friction", {{"flow", "1000 L/h"}, {"bore", "27.2 mm"}, {"length", "10 m"}});
    ASSERT_TRUE(answer.ok());
    const json document = json::parse(worksheets::answerJson(*answer));
    EXPECT_EQ(document.at("outputs").at("head_loss").at("value").get<double>(), tests::numberOf(*answer, "head_loss"));
    EXPECT_EQ(document.at("inputs").at("temperature").at("value").get<double>(), 20.0);
}

TEST(WrittenAnswer, LinesShowInputsOutputsWorkingNotesAndSources)
{
    const auto answer = tests::ask(
        "fitting-loss", {{"fitting", "ball-valve"}, {"bore", "27.2 mm"}, {"flow", "1000 L/h"}, {"opening", "0.5"}});
    ASSERT_TRUE(answer.ok());
    const auto tables = catalogue::Catalogue::builtIn();
    const std::string lines = worksheets::answerLines(**worksheets::findWorksheet("fitting-loss"), *answer, *tables);
    for (const char* piece : {"27.2 mm", "(estimate)", "K = 0.1 + 31.2 = 31.3 at opening 0.5", "plastic valves differ",
                              "weisbach-valves: ", "(memory)"})
        EXPECT_NE(lines.find(piece), std::string::npos) << piece << "\n" << lines;
}

TEST(WrittenList, KeepsToItsSchemaAndNamesEveryWorksheetWithChoices)
{
    const auto schema = tests::JsonSchema::fromFile(SUMPWRIGHT_SOURCE "/resources/schema/worksheet-list.json");
    const auto tables = catalogue::Catalogue::builtIn();
    const json list = json::parse(worksheets::listJson(worksheets::allWorksheets(), *tables));
    EXPECT_EQ(faultsIn(schema, list), "");
    std::vector<std::string> ids;
    for (const json& sheet : list.at("worksheets"))
        ids.push_back(sheet.at("id").get<std::string>());
    EXPECT_EQ(ids, (std::vector<std::string>{
                       "water-properties", "air-pressure",      "friction-factor", "pipe-friction", "pipe-flow",
                       "fitting-loss",     "flow-factor",       "bore-change",     "sum-k",         "pipe-content",
                       "static-lift",      "pump-head",         "pump-duty",       "pump-energy",   "grade-line",
                       "flow-balance",     "vessel-water",      "sump-level",      "pump-stop",     "water-total",
                       "overflow-level",   "overflow-capacity", "side-outlet",     "sloping-drain", "tank-emptying",
                       "vessel-mass",      "load-total",        "live-load"}));
    const json& pump = list.at("worksheets").at(12).at("inputs").at(0);
    EXPECT_EQ(pump.at("choices").size(), tables->pumps().size());
    const std::string lines = worksheets::listLines(worksheets::allWorksheets(), *tables);
    for (const std::string& id : ids)
        EXPECT_NE(lines.find(id + ": "), std::string::npos) << id;
}

TEST(JsonText, EscapesWhatJsonWantsEscapedAndMendsWhatIsNotUtf8)
{
    EXPECT_EQ(worksheets::quoted("a\"b\\c\nd"), "\"a\\\"b\\\\c\\u000ad\"");
    EXPECT_EQ(worksheets::quoted("m²"), "\"m²\"");
    EXPECT_EQ(worksheets::quoted("a\xff"), "\"a\xEF\xBF\xBD\"");
    EXPECT_EQ(worksheets::quoted("\xe2\x82"), "\"\xEF\xBF\xBD\xEF\xBF\xBD\"");
    for (int byte = 0; byte < 256; ++byte)
        EXPECT_TRUE(json::accept(worksheets::quoted(std::string(2, static_cast<char>(byte))))) << byte;
}

TEST(JsonText, RefusesNumbersThatAreNone)
{
    EXPECT_THROW(JsonText().beginObject().number("x", std::nan("")), base::BrokenPromise);
    const std::string zero = JsonText().beginObject().number("x", -0.0).endObject().text();
    EXPECT_EQ(json::parse(zero), json::parse("{\"x\": 0}"));
    EXPECT_EQ(zero.find('-'), std::string::npos);
}

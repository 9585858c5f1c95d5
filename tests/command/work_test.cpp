// sumpwright work, as a person runs it: exit codes, one line of complaint, JSON by its schema.
#include <algorithm>
#include <clocale>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "tests/support/child.hpp"
#include "tests/support/json_schema.hpp"

using nlohmann::json;
using sumpwright::tests::ChildResult;
using sumpwright::tests::JsonSchema;
using sumpwright::tests::runProgram;

namespace
{

const std::vector<std::string> pipeQuestion = {"work", "pipe-friction", "flow=1000 L/h", "bore=27.2 mm", "length=10 m"};

std::vector<std::string> with(std::vector<std::string> words, const std::string& word)
{
    words.push_back(word);
    return words;
}

// Exit 2, nothing on standard output, exactly one line on standard error that holds each of the pieces.
void expectComplaint(const std::vector<std::string>& words, const std::vector<std::string>& pieces)
{
    const ChildResult result = runProgram(words);
    SCOPED_TRACE(result.errors);
    EXPECT_EQ(result.exitCode, 2);
    EXPECT_EQ(result.out, "");
    EXPECT_EQ(std::count(result.errors.begin(), result.errors.end(), '\n'), 1);
    ASSERT_FALSE(result.errors.empty());
    EXPECT_EQ(result.errors.back(), '\n');
    for (const std::string& piece : pieces)
        EXPECT_NE(result.errors.find(piece), std::string::npos) << piece;
}

json expectJson(const std::vector<std::string>& words, const std::string& schema)
{
    const ChildResult result = runProgram(words);
    EXPECT_EQ(result.exitCode, 0) << result.errors;
    EXPECT_EQ(result.errors, "");
    EXPECT_TRUE(json::accept(result.out)) << result.out;
    const json document = json::parse(result.out, nullptr, false);
    const auto faults = JsonSchema::fromFile(SUMPWRIGHT_SOURCE "/resources/schema/" + schema).faultsOf(document);
    EXPECT_TRUE(faults.empty()) << faults.front();
    return document;
}

} // namespace

TEST(WorkCommand, AnswersInJsonByTheSchema)
{
    const json answer = expectJson(with(pipeQuestion, "--json"), "worksheet-answer.json");
    EXPECT_EQ(answer.at("worksheet"), "pipe-friction");
    EXPECT_EQ(answer.at("inputs").at("flow").at("unit"), "m3/s");
    EXPECT_EQ(answer.at("outputs").at("head_loss").at("unit"), "m");
    // Darcy-Weisbach with Colebrook by the library fluids 1.0.22: 0.124055 m.
    EXPECT_NEAR(answer.at("outputs").at("head_loss").at("value").get<double>(), 0.124055, 0.0002);
}

TEST(WorkCommand, AnswersInLinesWithWorkingAndSources)
{
    const ChildResult result = runProgram(pipeQuestion);
    EXPECT_EQ(result.exitCode, 0);
    EXPECT_EQ(result.errors, "");
    for (const char* piece : {"head_loss", "0.124 m", "h_f = f L/D v²/(2 g) = ", "colebrook-1939: "})
        EXPECT_NE(result.out.find(piece), std::string::npos) << piece;
    EXPECT_EQ(result.out.find("nan"), std::string::npos);
}

TEST(WorkCommand, TheListGivesEveryWorksheetByTheSchema)
{
    const json list = expectJson({"work", "--list", "--json"}, "worksheet-list.json");
    EXPECT_EQ(list.at("worksheets").size(), 28u);
    const json one = expectJson({"work", "pump-duty", "--list", "--json"}, "worksheet-list.json");
    EXPECT_EQ(one.at("worksheets").size(), 1u);
    const ChildResult lines = runProgram({"work", "--list"});
    EXPECT_EQ(lines.exitCode, 0);
    for (const json& sheet : list.at("worksheets"))
        EXPECT_NE(lines.out.find(sheet.at("id").get<std::string>() + ": "), std::string::npos) << sheet.at("id");
}

// What --list calls a unit is what the answer carries.
TEST(WorkCommand, TheListKeepsItsWordAboutUnits)
{
    const json list = expectJson({"work", "overflow-level", "--list", "--json"}, "worksheet-list.json");
    const json answer =
        expectJson({"work", "overflow-level", "flow=2000 L/h", "bore=47.3 mm", "--json"}, "worksheet-answer.json");
    for (const json& output : list.at("worksheets").at(0).at("outputs"))
        EXPECT_EQ(answer.at("outputs").at(output.at("name").get<std::string>()).at("unit"), output.at("unit"));
}

TEST(WorkCommand, EveryMistakeIsOneLineThatNamesTheInputAndWhatIsAccepted)
{
    expectComplaint({"work"}, {"no worksheet is named", "--list"});
    expectComplaint({"work", "pump-dutty"}, {"pump-dutty", "pump-duty"});
    expectComplaint(with(pipeQuestion, "lenght=3 m"), {"lenght", "length"});
    expectComplaint(with(pipeQuestion, "length=3 m"), {"length", "twice"});
    expectComplaint(with(pipeQuestion, "27.2"), {"27.2", "name=value"});
    expectComplaint({"work", "pipe-friction"}, {"flow", "missing", "L/h"});
    expectComplaint({"work", "pipe-friction", "flow=1000"}, {"flow", "1000", "L/h"});
    expectComplaint({"work", "pipe-friction", "flow=3 kg"}, {"flow", "mass", "L/h"});
    expectComplaint({"work", "pipe-friction", "flow=1,5 L/h"}, {"flow", "comma"});
    expectComplaint(with(pipeQuestion, "temperature=60 degC"), {"temperature", "60 degC", "40 degC"});
    expectComplaint({"work", "fitting-loss", "fitting=elbow"}, {"fitting", "elbow-90"});
    expectComplaint({"work", "vessel-mass", "shape=cone"}, {"shape", "cone", "round, rectangle"});
}

TEST(WorkCommand, AMistakeWithLineEndsInItStaysOneLine)
{
    expectComplaint({"work", "pipe\nfriction"}, {"no worksheet"});
    expectComplaint(with(pipeQuestion, "a\nb=1"), {"a b"});
    expectComplaint(with(pipeQuestion, "sum_k=\n"), {"sum_k"});
    expectComplaint(with(pipeQuestion, std::string(100000, 'x') + "=1"), {"xxx"});
}

TEST(CommandLine, VersionAndHelpAreAnsweredAndNonsenseIsRefusedInOneLine)
{
    const ChildResult version = runProgram({"--version"});
    EXPECT_EQ(version.exitCode, 0);
    EXPECT_EQ(version.out.rfind("sumpwright ", 0), 0u) << version.out;
    const ChildResult help = runProgram({"--help"});
    EXPECT_EQ(help.exitCode, 0);
    EXPECT_NE(help.out.find("work"), std::string::npos);
    expectComplaint({"work", "--jsonn"}, {"--jsonn"});
    expectComplaint({"work", "--js\nonn"}, {"onn"});
}

// A decimal comma in the desktop's locale changes neither what is read nor what is written.
TEST(CommandLine, NumbersUseThePointInEveryLocale)
{
    const bool known = std::setlocale(LC_NUMERIC, "de_DE.UTF-8") != nullptr;
    std::setlocale(LC_NUMERIC, "C");
    if (!known)
        GTEST_SKIP() << "the locale de_DE.UTF-8 is not installed here; packaging/test.sh makes it";
    const std::string here = runProgram(with(pipeQuestion, "--json")).out;
    setenv("LC_ALL", "de_DE.UTF-8", 1);
    const std::string there = runProgram(with(pipeQuestion, "--json")).out;
    unsetenv("LC_ALL");
    EXPECT_EQ(here, there);
}

// sumpwright assess, as a person runs it: the whole assessment of a plan file, exit codes, one line of complaint.
#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>

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

// A file of its own in the temporary folder, gone afterwards.
class PlanFile
{
public:
    explicit PlanFile(const std::string& text)
    {
        std::string pattern = std::filesystem::temp_directory_path() / "assess-XXXXXX";
        const int handle = mkstemp(pattern.data());
        close(handle);
        m_path = pattern;
        std::ofstream(m_path) << text;
    }
    ~PlanFile() { std::filesystem::remove(m_path); }
    PlanFile(const PlanFile&) = delete;
    PlanFile& operator=(const PlanFile&) = delete;
    std::string path() const { return m_path; }

private:
    std::string m_path;
};

// Exit 2, nothing on standard output, exactly one line on standard error that holds each of the pieces.
void expectComplaint(const std::vector<std::string>& words, const std::vector<std::string>& pieces)
{
    const ChildResult result = runProgram(words);
    SCOPED_TRACE(result.errors);
    EXPECT_EQ(result.exitCode, 2);
    EXPECT_EQ(result.out, "");
    EXPECT_EQ(std::count(result.errors.begin(), result.errors.end(), '\n'), 1);
    for (const std::string& piece : pieces)
        EXPECT_NE(result.errors.find(piece), std::string::npos) << piece;
}

json assessed(const std::string& path)
{
    const ChildResult result = runProgram({"assess", path, "--json"});
    EXPECT_EQ(result.exitCode, 0) << result.errors;
    EXPECT_EQ(result.errors, "");
    const json document = json::parse(result.out, nullptr, false);
    EXPECT_FALSE(document.is_discarded()) << result.out;
    static const auto schema = JsonSchema::fromFile(SUMPWRIGHT_SOURCE "/resources/schema/assessment.schema.json");
    for (const std::string& fault : schema.faultsOf(document))
        ADD_FAILURE() << fault;
    return document;
}

} // namespace

namespace
{

const std::string example = SUMPWRIGHT_SOURCE "/resources/examples/community_shed.sumpwright";

json exampleJson() { return json::parse(std::ifstream(example)); }

json& sumpOf(json& plan)
{
    for (json& vessel : plan.at("vessels"))
        if (vessel.at("kind") == "sump")
            return vessel;
    throw std::runtime_error("the example has a sump");
}

} // namespace

TEST(AssessCommand, PrintsEveryExampleAsJsonByTheSchema)
{
    int count = 0;
    for (const auto& entry : std::filesystem::directory_iterator(SUMPWRIGHT_SOURCE "/resources/examples")) {
        if (entry.path().extension() != ".sumpwright")
            continue;
        SCOPED_TRACE(entry.path());
        ++count;
        const json document = assessed(entry.path());
        EXPECT_EQ(document.at("water").at("running_least").at("status"), "solved");
        EXPECT_EQ(document.at("floor").at("to_rim").at("status"), "solved");
        for (const json& pump : document.at("pumps"))
            EXPECT_GT(pump.at("duty").at("least").at("flow").at("value").get<double>(), 0.0);
    }
    EXPECT_GT(count, 0);
}

TEST(AssessCommand, PrintsTextForPeople)
{
    const ChildResult result = runProgram({"assess", example});
    EXPECT_EQ(result.exitCode, 0);
    EXPECT_EQ(result.errors, "");
    for (const char* piece : {"Water\n", "Pumps\n", "When the pump stops\n", "Floor (estimates", "Findings\n"})
        EXPECT_NE(result.out.find(piece), std::string::npos) << piece;
}

TEST(AssessCommand, ConservesTheWaterOfAnExample)
{
    const json water = assessed(example).at("water");
    const double most = water.at("running_most").at("total").at("value");
    for (const char* state : {"running_least", "pump_stopped"})
        EXPECT_NEAR(water.at(state).at("total").at("value").get<double>(), most, 1e-9 * most) << state;
}

// Everything else is computed; the exit code says that the plan was read.
TEST(AssessCommand, TellsAnUnsolvedStageWithItsReasonAndExitsWithZero)
{
    json plan = exampleJson();
    sumpOf(plan).erase("running_level");
    plan.at("site").erase("altitude");
    const PlanFile file(plan.dump());
    const json document = assessed(file.path());
    const json& least = document.at("water").at("running_least");
    EXPECT_EQ(least.at("status"), "not computed");
    EXPECT_EQ(least.at("reason_id"), "sump-level-missing");
    EXPECT_EQ(document.at("site").at("air_pressure").at("message"), "not computed: altitude missing");
    EXPECT_EQ(document.at("floor").at("to_rim").at("status"), "solved");
}

TEST(AssessCommand, GivesTheSameBytesTwice)
{
    EXPECT_EQ(runProgram({"assess", example, "--json"}).out, runProgram({"assess", example, "--json"}).out);
}

TEST(AssessCommand, RefusesBadFilesInOneLine)
{
    expectComplaint({"assess", "/no/such/plan.sumpwright"}, {"/no/such/plan.sumpwright"});
    expectComplaint({"assess", "/"}, {"/"});
    expectComplaint({"assess"}, {"plan"});
    const PlanFile empty(""), broken("{\"format\": \"sumpwright-plan\", \"version\": 1,\n \"site\": {"),
        other("{\"a\": 1}");
    for (const PlanFile* file : {&empty, &broken, &other})
        expectComplaint({"assess", file->path(), "--json"}, {file->path()});
    json newer = exampleJson();
    newer["version"] = 99;
    expectComplaint({"assess", PlanFile(newer.dump()).path()}, {});
    json wrong = exampleJson();
    sumpOf(wrong)["wall_height"] = "3 kg";
    const PlanFile wrongKind(wrong.dump(2));
    expectComplaint({"assess", wrongKind.path()}, {"line ", "/wall_height", "3 kg"});
}

TEST(AssessCommand, NamesAFileItCannotReadOnce)
{
    for (const std::string& path : {std::string("/no/such/plan.sumpwright"), std::string("/usr/bin")}) {
        const std::string line = runProgram({"assess", path}).errors;
        const auto at = line.find(path);
        ASSERT_NE(at, std::string::npos) << line;
        EXPECT_EQ(line.find(path, at + 1), std::string::npos) << line;
        EXPECT_NE(line.find(';'), std::string::npos) << "how to mend it: " << line;
    }
}

TEST(AssessCommand, NamesKeysItDoesNotKnowAndGoesOn)
{
    json plan = exampleJson();
    plan.at("site")["colour_of_the_door"] = "green";
    const PlanFile file(plan.dump(2));
    const ChildResult result = runProgram({"assess", file.path(), "--json"});
    EXPECT_EQ(result.exitCode, 0);
    EXPECT_NE(result.errors.find("colour_of_the_door"), std::string::npos) << result.errors;
    EXPECT_TRUE(json::accept(result.out));
}

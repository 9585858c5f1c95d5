// Published cases through the worksheet door: tests/published/worksheet_*.json. Each case has inputs as a person types
// them, the outputs expected in their fixed unit with a tolerance, and says whose numbers these are.
#include <cmath>
#include <filesystem>
#include <fstream>
#include <set>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "core/catalogue/catalogue.hpp"
#include "core/worksheets/worksheet.hpp"

using namespace sumpwright;
using nlohmann::json;

namespace
{

struct Case {
    std::string file;
    json content;
};

std::vector<Case> allCases()
{
    std::set<std::filesystem::path> files;
    for (const auto& entry : std::filesystem::directory_iterator(SUMPWRIGHT_SOURCE "/tests/published"))
        if (entry.path().extension() == ".json" && entry.path().stem().string().rfind("worksheet_", 0) == 0)
            files.insert(entry.path());
    std::vector<Case> cases;
    for (const auto& file : files) {
        const json content = json::parse(std::ifstream(file));
        for (const json& one : content.at("cases"))
            cases.push_back({file.stem().string(), one});
    }
    return cases;
}

base::Outcome<worksheets::Answer> answerOf(const json& one)
{
    std::vector<worksheets::InputText> texts;
    for (const auto& [name, text] : one.at("inputs").items())
        texts.push_back({name, text.get<std::string>()});
    const auto sheet = worksheets::findWorksheet(one.at("worksheet").get<std::string>());
    if (!sheet)
        return sheet.refusal();
    return worksheets::answer(**sheet, texts, *catalogue::Catalogue::builtIn());
}

void expectOutput(const worksheets::Answer& answer, const std::string& name, const json& wanted)
{
    SCOPED_TRACE(name);
    const worksheets::NamedValue* output = answer.output(name);
    ASSERT_NE(output, nullptr);
    if (wanted.contains("word")) {
        EXPECT_EQ(std::get<std::string>(output->value), wanted.at("word").get<std::string>());
        return;
    }
    EXPECT_EQ(output->unit, wanted.at("unit").get<std::string>());
    const double value = wanted.at("value").get<double>();
    const double tolerance = wanted.contains("absolute") ? wanted.at("absolute").get<double>()
                                                         : wanted.at("relative").get<double>() * std::fabs(value);
    ASSERT_GT(tolerance, 0.0);
    ASSERT_TRUE(value == 0.0 || tolerance < 0.1 * std::fabs(value)) << "a tolerance this wide checks nothing";
    EXPECT_NEAR(worksheets::numberOf(output->value), value, tolerance);
}

void PrintTo(const Case& one, std::ostream* out) { *out << one.content.at("name").get<std::string>(); }

class PublishedCase : public testing::TestWithParam<Case>
{
};

std::string nameOf(const testing::TestParamInfo<Case>& info)
{
    std::string name = info.param.file + "_" + info.param.content.at("name").get<std::string>();
    for (char& c : name)
        if (!std::isalnum(static_cast<unsigned char>(c)))
            c = '_';
    return name + "_" + std::to_string(info.index);
}

} // namespace

TEST_P(PublishedCase, IsMet)
{
    const json& one = GetParam().content;
    const auto answer = answerOf(one);
    ASSERT_TRUE(answer.ok()) << base::oneLine(answer.refusal());
    ASSERT_FALSE(one.at("expect").empty());
    for (const auto& [name, wanted] : one.at("expect").items())
        expectOutput(*answer, name, wanted);
}

INSTANTIATE_TEST_SUITE_P(Worksheets, PublishedCase, testing::ValuesIn(allCases()), nameOf);

TEST(PublishedCases, NameTheirSourceAndBasisAndReachEveryWorksheet)
{
    std::set<std::string> bases;
    for (const catalogue::Basis basis : catalogue::allBases)
        bases.emplace(catalogue::basisKey(basis));
    std::map<std::string, int> perBasis;
    std::set<std::string> reached;
    for (const Case& one : allCases()) {
        EXPECT_GT(one.content.at("source").get<std::string>().size(), 10u) << one.content;
        EXPECT_TRUE(bases.contains(one.content.at("basis").get<std::string>())) << one.content;
        ++perBasis[one.content.at("basis").get<std::string>()];
        reached.insert(one.content.at("worksheet").get<std::string>());
    }
    for (const auto& [basis, count] : perBasis)
        std::cout << "published cases, " << basis << ": " << count << '\n';
    for (const worksheets::Worksheet& sheet : worksheets::allWorksheets())
        EXPECT_TRUE(reached.contains(sheet.id)) << sheet.id;
}

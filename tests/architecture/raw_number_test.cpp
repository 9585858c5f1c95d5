// In the plan and in results a raw floating-point member is a ratio, named in ratios.json, or it is a mistake.
#include <gtest/gtest.h>

#include <map>
#include <nlohmann/json.hpp>
#include <regex>
#include <set>

#include "tests/architecture/code_shape.hpp"
#include "tests/architecture/source_tree.hpp"

namespace sumpwright::architecture
{

namespace
{

using Ratios = std::map<std::string, std::set<std::string>>; // header: names

bool isRaw(const std::string& statement)
{
    static const std::regex raw(R"(\b(double|float)\b)");
    return std::regex_search(statement, raw);
}

// "core/plan/run.hpp:12: double width" for each raw member that is no ratio; what was used is taken out of `unused`.
std::vector<std::string> rawMembers(const SourceFile& file, const std::set<std::string>& ratios, Ratios& unused)
{
    std::vector<std::string> found;
    for (const Member& member : shapeOf(file.text).members) {
        const std::string name = memberName(member.statement);
        if (name.empty() || !isRaw(member.statement))
            continue;
        if (ratios.count(name) > 0)
            unused[file.path].erase(name);
        else
            found.push_back(file.path + ":" + std::to_string(member.line) + ": " + member.statement);
    }
    return found;
}

} // namespace

TEST(RawNumbers, OfPlanAndResultsAreRatiosOnly)
{
    const auto data = nlohmann::json::parse(readFile("tests/architecture/ratios.json"));
    const Ratios ratios = data.at("ratios").get<Ratios>();
    Ratios unused = ratios;
    int seen = 0;
    for (const SourceFile& file : filesBelow({"core/plan", "core/assessment", "core/findings"})) {
        if (file.extension() != "hpp")
            continue;
        ++seen;
        const auto own = ratios.find(file.path);
        for (const std::string& raw :
             rawMembers(file, own == ratios.end() ? std::set<std::string>{} : own->second, unused))
            ADD_FAILURE() << raw << " is a raw number and no ratio of ratios.json";
    }
    EXPECT_GT(seen, 20);
    for (const auto& [path, names] : unused)
        for (const std::string& name : names)
            ADD_FAILURE() << "ratios.json names " << name << " of " << path << ", which is not there";
}

TEST(RawNumbers, HideBehindNoOtherName)
{
    const std::regex alias(R"(using\s+\w+\s*=\s*(double|float)\s*;|typedef\s+(double|float)\b)");
    for (const SourceFile& file : filesBelow({"core"}))
        if (file.extension() == "hpp") {
            EXPECT_FALSE(std::regex_search(file.text, alias)) << file.path;
        }
}

TEST(RawNumbers, AreFoundInEveryDisguise)
{
    const char* const text = "struct Tank {\n    double width = 0.0;\n    std::optional<double> depth;\n"
                             "    std::vector<float> levels{};\n    double area() const;\n    double radius[2];\n"
                             "    units::Length height;\n    double speed = 1.0; // ratio\n"
                             "    struct Inner {\n        double hidden;\n    };\n    using Number = int;\n};\n";
    Ratios unused{{"core/plan/tank.hpp", {"speed"}}};
    const auto found = rawMembers({"core/plan/tank.hpp", text}, {"speed"}, unused);
    ASSERT_EQ(found.size(), 5U);
    EXPECT_TRUE(found[0].starts_with("core/plan/tank.hpp:2: double width"));
    EXPECT_TRUE(unused["core/plan/tank.hpp"].empty());
}

} // namespace sumpwright::architecture

// Every row of resources/tables says where it comes from, by a key of resources/sources.json, and on what basis.
#include <gtest/gtest.h>

#include <map>
#include <nlohmann/json.hpp>
#include <set>

#include "tests/architecture/source_tree.hpp"

namespace sumpwright::architecture
{

namespace
{

using nlohmann::json;

const std::set<std::string> bases{"seen", "memory", "computed", "inference", "common-practice"};

// What a row of a group says, with what the whole group shares.
std::vector<json> rowsOf(const json& table)
{
    std::vector<json> rows;
    for (const json& group : table.at("groups")) {
        const json common = group.value("common", json::object());
        for (json row : group.at("rows")) {
            for (const auto& [key, value] : common.items())
                if (!row.contains(key))
                    row[key] = value;
            rows.push_back(std::move(row));
        }
    }
    return rows;
}

// What is wrong with a row, empty when nothing is.
std::string fault(const json& row, const json& sources)
{
    if (!row.contains("source"))
        return "has no source";
    for (const auto& [key, value] : row.items())
        if ((key == "source" || key.ends_with("_source")) && !sources.contains(value.get<std::string>()))
            return key + " \"" + value.get<std::string>() + "\" is not in sources.json";
    if (bases.count(row.value("basis", "")) == 0)
        return "has no basis, or an unknown one";
    return row.contains("range") ? "" : "has no range";
}

} // namespace

TEST(Tables, NameTheSourceOfEveryRow)
{
    const json sources = json::parse(readFile("resources/sources.json")).at("sources");
    std::map<std::string, int> byBasis;
    int tables = 0;
    for (const SourceFile& file : filesBelow({"resources/tables"})) {
        if (file.extension() != "json")
            continue;
        ++tables;
        const std::vector<json> rows = rowsOf(json::parse(file.text));
        EXPECT_FALSE(rows.empty()) << file.path;
        for (const json& row : rows) {
            EXPECT_EQ(fault(row, sources), "") << file.path << ": " << row.value("id", "?");
            ++byBasis[row.value("basis", "none")];
        }
    }
    EXPECT_GE(tables, 5);
    std::cout << "rows of " << tables << " tables by basis:";
    for (const auto& [basis, count] : byBasis)
        std::cout << " " << basis << " " << count;
    std::cout << "\n";
}

TEST(Tables, GiveEverySourceATitleAndABasis)
{
    const json sources = json::parse(readFile("resources/sources.json")).at("sources");
    std::map<std::string, int> byBasis;
    for (const auto& [key, source] : sources.items()) {
        EXPECT_FALSE(source.value("title", "").empty()) << key;
        // Only the source of the person's own parts rests on the person; no row of a table may.
        const std::string basis = source.value("basis", "");
        EXPECT_TRUE(bases.count(basis) == 1 || (key == "own-part" && basis == "own")) << key;
        ++byBasis[source.value("basis", "none")];
    }
    std::cout << sources.size() << " sources by basis:";
    for (const auto& [basis, count] : byBasis)
        std::cout << " " << basis << " " << count;
    std::cout << "\n";
}

TEST(Tables, AreHeldToTheirSources)
{
    const json sources{{"moody-1944", json::object()}};
    const json good{{"source", "moody-1944"}, {"basis", "memory"}, {"range", "smooth pipe"}};
    EXPECT_EQ(fault(good, sources), "");
    for (const char* key : {"source", "basis", "range"}) {
        json bad = good;
        bad.erase(key);
        EXPECT_NE(fault(bad, sources), "") << key;
    }
    json unknown = good;
    unknown["coefficient_source"] = "hearsay";
    EXPECT_NE(fault(unknown, sources), "");
}

} // namespace sumpwright::architecture

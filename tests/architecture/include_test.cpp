#include <gtest/gtest.h>

#include <algorithm>
#include <regex>

#include "tests/architecture/include_rules.hpp"

namespace sumpwright::architecture
{

namespace
{

IncludeRules rules() { return IncludeRules(readFile("tests/architecture/layers.json")); }

bool isCode(const SourceFile& file) { return file.extension() == "hpp" || file.extension() == "cpp"; }

std::size_t offencesOf(const char* path, const char* text) { return rules().offences({path, text}).size(); }

} // namespace

TEST(Includes, ObeyTheDirectionsOfTheHouse)
{
    const IncludeRules house = rules();
    int seen = 0;
    for (const SourceFile& file : filesBelow({"core", "ui", "app"}))
        if (isCode(file)) {
            ++seen;
            for (const std::string& offence : house.offences(file))
                ADD_FAILURE() << offence;
        }
    EXPECT_GT(seen, 100); // the walk did find the house
}

TEST(Includes, OfTheCoreNameNoQt)
{
    const std::regex qt(R"(#\s*include\s*[<"]Q[A-Zt])");
    for (const SourceFile& file : filesBelow({"core"}))
        EXPECT_FALSE(std::regex_search(file.text, qt)) << file.path;
}

TEST(Includes, OfBoostStayBehindTheUnits)
{
    for (const SourceFile& file : filesBelow({"core", "ui", "app"}))
        if (file.room() != "core/units" && file.extension() == "hpp") {
            EXPECT_EQ(file.text.find("<boost/"), std::string::npos) << file.path;
        }
}

// What the libraries may link is not wider than what the rooms may include.
TEST(Includes, AgreeWithWhatTheRoomsLink)
{
    const IncludeRules house = rules();
    const std::string text = readFile("core/CMakeLists.txt");
    const std::regex room(R"(sumpwright_room\((core/\w+)\s+LOOKS_AT\s+([^)]*)\))");
    int seen = 0;
    for (std::sregex_iterator it(text.begin(), text.end(), room), end; it != end; ++it) {
        ++seen;
        const std::string list = (*it)[2];
        const std::regex word(R"(core/\w+)");
        for (std::sregex_iterator other(list.begin(), list.end(), word); other != end; ++other)
            EXPECT_TRUE(house.mayInclude((*it)[1], other->str())) << (*it)[1] << " links " << other->str();
    }
    EXPECT_GE(seen, 10);
}

TEST(IncludeRules, NameWhatIsForbidden)
{
    EXPECT_EQ(offencesOf("core/plan/x.hpp", "#include \"core/units/kinds.hpp\"\n#include <vector>\n"), 0U);
    EXPECT_EQ(offencesOf("core/plan/x.hpp", "#include \"core/hydraulics/network.hpp\"\n"), 1U);
    EXPECT_EQ(offencesOf("core/hydraulics/x.cpp", "#include \"core/plan/plan.hpp\"\n"), 1U);
    EXPECT_EQ(offencesOf("core/plan/x.cpp", "  # include <QString>\n"), 1U);
    EXPECT_EQ(offencesOf("core/plan/x.cpp", "#include <QtCore/QString>\n"), 1U);
    EXPECT_EQ(offencesOf("core/plan/x.cpp", "#include <boost/optional.hpp>\n"), 1U);
    EXPECT_EQ(offencesOf("core/storage/x.cpp", "#include <nlohmann/json.hpp>\n"), 0U);
    EXPECT_EQ(offencesOf("core/storage/x.hpp", "#include <nlohmann/json.hpp>\n"), 1U);
    EXPECT_EQ(offencesOf("ui/canvas/x.cpp", "#include \"ui/properties/form.hpp\"\n"), 1U);
    EXPECT_EQ(offencesOf("ui/charts/x.cpp", "#include \"ui/canvas/grid.hpp\"\n"), 1U);
    EXPECT_EQ(offencesOf("ui/tools/x.cpp", "#include \"ui/canvas/grid.hpp\"\n#include <QWidget>\n"), 0U);
    EXPECT_EQ(offencesOf("core/plan/x.cpp", "#include \"ui/canvas/grid.hpp\"\n"), 1U);
    EXPECT_EQ(offencesOf("core/attic/x.cpp", ""), 1U);
    EXPECT_EQ(offencesOf("core/plan/x.cpp", "#include \"run.hpp\"\n"), 1U); // not from the root
    EXPECT_EQ(rules().offences({"core/plan/x.cpp", "\n\n#include <QString>\n"}).front().substr(0, 18),
              "core/plan/x.cpp:3:");
}

} // namespace sumpwright::architecture

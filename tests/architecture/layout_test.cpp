// The top level, the words and the first lines that the house asks for.
#include <gtest/gtest.h>

#include <filesystem>
#include <regex>
#include <set>

#include "tests/architecture/source_tree.hpp"

namespace sumpwright::architecture
{

namespace
{

bool isCode(const SourceFile& file) { return file.extension() == "hpp" || file.extension() == "cpp"; }

// As .gitignore says; of its patterns only a name with a star at its end is understood.
bool isIgnored(const std::string& name)
{
    for (std::string line : linesOf(readFile(".gitignore"))) {
        std::erase(line, '/');
        if (line == name || (line.ends_with('*') && name.starts_with(line.substr(0, line.size() - 1))))
            return true;
    }
    return false;
}

// A default behind a case that names an enumerator of our own, "Kind::round".
bool hasEnumDefault(const std::string& text)
{
    static const std::regex label(R"(\bcase\b[^;{}]*?[^:]:(?!:)|\bdefault\s*:)");
    static const std::regex foreign(R"(^case\s+Q\w*::)"); // Qt's enumerations, of which we know a few values
    const std::string plain = withoutCommentsAndStrings(text);
    bool ofEnum = false;
    for (std::sregex_iterator it(plain.begin(), plain.end(), label), end; it != end; ++it) {
        const std::string found = it->str();
        if (found.starts_with("default") && ofEnum)
            return true;
        ofEnum = found.find("::") != std::string::npos && !std::regex_search(found, foreign);
    }
    return false;
}

} // namespace

TEST(Layout, OfTheTopLevelIsAsTheCardSays)
{
    const std::set<std::string> card{"CMakeLists.txt", "README.md", "DEVELOPERS.md", "app", "core", "ui",
                                     "resources",      "tests",     "packaging"};
    std::set<std::string> found;
    for (const auto& entry : std::filesystem::directory_iterator(SUMPWRIGHT_SOURCE)) {
        const std::string name = entry.path().filename().string();
        if (!name.starts_with('.') && !isIgnored(name))
            found.insert(name);
    }
    EXPECT_EQ(found, card);
}

TEST(Layout, HasNoUnfinishedWords)
{
    const std::regex words("\\b(TO"
                           "DO|FIX"
                           "ME|XX"
                           "X|HA"
                           "CK)\\b");
    for (const SourceFile& file : filesBelow({"app", "core", "ui", "tests", "packaging", "resources"}))
        if (file.extension() != "png" && file.extension() != "svg" && !file.path.starts_with("packaging/licences/")) {
            EXPECT_FALSE(std::regex_search(file.text, words)) << file.path;
        }
}

TEST(Layout, NamesNoManagersHelpersOrUtils)
{
    const std::regex vague(R"((class|struct)\s+\w*(Manager|Helper|Utils?)\b)");
    for (const SourceFile& file : filesBelow({"app", "core", "ui"}))
        EXPECT_FALSE(std::regex_search(file.text, vague)) << file.path;
}

TEST(Layout, NamesFilesInSmallLettersWithUnderscores)
{
    const std::regex name(R"(([a-z0-9_]+/)*[a-z0-9_]+\.(hpp|cpp))");
    for (const SourceFile& file : filesBelow({"app", "core", "ui", "tests"}))
        if (isCode(file)) {
            EXPECT_TRUE(std::regex_match(file.path, name)) << file.path;
        }
}

TEST(Layout, LetsEveryHeaderSayFirstWhatItIs)
{
    for (const SourceFile& file : filesBelow({"app", "core", "ui"}))
        if (file.extension() == "hpp") {
            EXPECT_TRUE(file.text.starts_with("// ")) << file.path;
            EXPECT_NE(file.text.find("\n#pragma once\n"), std::string::npos) << file.path;
        }
}

TEST(Layout, KeepsEnumSwitchesWithoutDefault)
{
    for (const SourceFile& file : filesBelow({"core", "ui"})) {
        if (isCode(file)) {
            EXPECT_FALSE(hasEnumDefault(file.text)) << file.path;
        }
    }
    EXPECT_TRUE(hasEnumDefault("switch (k) { case Kind::a: f(); break; default: g(); }"));
    EXPECT_FALSE(hasEnumDefault("switch (n) { case 1: f(); break; default: g(); }"));
    EXPECT_FALSE(hasEnumDefault("switch (k) { case Kind::a: f(); } // default: none"));
}

} // namespace sumpwright::architecture

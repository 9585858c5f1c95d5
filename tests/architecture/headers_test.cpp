// A header is proved to compile alone by its own .cpp, which includes it first, or by a file made for it in the target
// headers_alone; every header is one or the other. The build itself is the proof; this looks for gaps in it.
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <set>

#include "tests/architecture/source_tree.hpp"

namespace sumpwright::architecture
{

namespace
{

// The path of the first include of a text, when it is one of ours.
std::string firstInclude(const std::string& text)
{
    const std::string opening = "#include \"";
    const std::size_t any = text.find("#include");
    if (any == std::string::npos || text.compare(any, opening.size(), opening) != 0)
        return {};
    const std::size_t begin = any + opening.size();
    return text.substr(begin, text.find('"', begin) - begin);
}

} // namespace

TEST(Headers, CompileAlone)
{
    std::ifstream in(std::filesystem::path(SUMPWRIGHT_PROGRAM).parent_path() / "headers_alone.txt");
    std::set<std::string> proved;
    std::string window;
    std::getline(in, window);
    for (std::string line; std::getline(in, line);)
        proved.insert(line);
    ASSERT_TRUE(window == "with window" || window == "without window") << window;
    const auto files = filesBelow({"app", "core", "ui"});
    for (const SourceFile& file : files)
        if (file.extension() == "cpp")
            proved.insert(firstInclude(file.text));
    int headers = 0;
    for (const SourceFile& file : files)
        if (file.extension() == "hpp" && (window == "with window" || file.room().starts_with("core/"))) {
            ++headers;
            EXPECT_TRUE(proved.count(file.path) > 0) << file.path << ": configure again to have it compiled alone";
        }
    EXPECT_GT(headers, 50);
}

TEST(Headers, AreTheFirstIncludeOfTheirSource)
{
    EXPECT_EQ(firstInclude("// text\n#include \"core/units/parse.hpp\"\n#include <x>\n"), "core/units/parse.hpp");
    EXPECT_EQ(firstInclude("#include <x>\n#include \"core/units/parse.hpp\"\n"), "");
    EXPECT_EQ(firstInclude("int x;\n"), "");
}

} // namespace sumpwright::architecture

// Sizes: no source file over 500 lines, no function over 60, without a list of exceptions.
#include <gtest/gtest.h>

#include <algorithm>

#include "tests/architecture/code_shape.hpp"
#include "tests/architecture/source_tree.hpp"

namespace sumpwright::architecture
{

namespace
{

constexpr std::size_t mostLines = 500;
constexpr std::size_t mostFunctionLines = 60;

bool isCode(const SourceFile& file) { return file.extension() == "hpp" || file.extension() == "cpp"; }
bool isSource(const SourceFile& file)
{
    return isCode(file) || file.extension() == "cmake" || file.extension() == "sh" ||
           file.path.ends_with("CMakeLists.txt");
}

} // namespace

TEST(Sizes, OfFilesStayReadable)
{
    std::vector<std::size_t> sizes;
    std::size_t code = 0;
    std::size_t tests = 0;
    for (const SourceFile& file : filesBelow({"app", "core", "ui", "tests", "packaging"}))
        if (isSource(file)) {
            const std::size_t lines = linesOf(file.text).size();
            EXPECT_LE(lines, mostLines) << file.path;
            sizes.push_back(lines);
            (file.room() == "tests" ? tests : code) += lines;
        }
    ASSERT_FALSE(sizes.empty());
    std::sort(sizes.begin(), sizes.end());
    std::cout << sizes.size() << " files, median " << sizes[sizes.size() / 2] << " lines, longest " << sizes.back()
              << "; " << code << " lines of program, " << tests << " of tests\n";
}

TEST(Sizes, OfFunctionsStayReadable)
{
    std::size_t seen = 0;
    for (const SourceFile& file : filesBelow({"app", "core", "ui", "tests"}))
        if (isCode(file))
            for (const FunctionSpan& function : shapeOf(file.text).functions) {
                ++seen;
                EXPECT_LE(function.lines(), mostFunctionLines)
                    << file.path << ":" << function.firstLine << ": " << function.head;
            }
    EXPECT_GT(seen, 300U);
}

TEST(CodeShape, FindsFunctionsWithTheirLines)
{
    const auto shape = shapeOf(
        "namespace a {\nint f(int x)\n{\n    if (x) { x = 1; }\n    return \"}\"[0];\n}\n"
        "struct S {\n    S() : m_a{1}, m_b(2)\n    {\n        f(1);\n    }\n    int m_a, m_b;\n};\n"
        "const int table[] = {1, 2};\ninline constexpr auto all = to_array({1, 2});\nTEST(A, B) {\n// }\n}\n}\n");
    ASSERT_EQ(shape.functions.size(), 4U);
    EXPECT_EQ(shape.functions[0].head, "int f(int x)");
    EXPECT_EQ(shape.functions[0].lines(), 4U);
    EXPECT_EQ(shape.functions[2].lines(), 3U);
    EXPECT_EQ(shape.functions[3].head, "TEST(A, B)");
    EXPECT_EQ(shape.functions[3].lines(), 3U);
}

TEST(CodeShape, MeasuresAFunctionThatIsTooLong)
{
    std::string text = "void f()\n{\n";
    for (int i = 0; i < 70; ++i)
        text += "    g();\n";
    text += "}\n";
    ASSERT_EQ(shapeOf(text).functions.size(), 1U);
    EXPECT_GT(shapeOf(text).functions.front().lines(), mostFunctionLines);
}

} // namespace sumpwright::architecture

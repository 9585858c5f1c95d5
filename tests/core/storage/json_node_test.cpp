#include <gtest/gtest.h>

#include "core/storage/json_node.hpp"
#include "core/storage/utf8.hpp"

using namespace sumpwright;
using namespace sumpwright::storage;

namespace
{

constexpr JsonLimits limits{10'000, 8, 100};

std::string refusalOf(const std::string& text)
{
    const auto read = readJson(text, limits);
    return read.ok() ? "" : read.refusal().id + " at " + read.refusal().place;
}

} // namespace

TEST(JsonNode, KnowsTheLineOfEveryValue)
{
    const auto root = readJson("{\n  \"a\": 1\n,\n \"b\": [\n  2,\n  3\n ],\n\"c\"\n:\n\"x\\ny\"}", limits);
    ASSERT_TRUE(root.ok());
    EXPECT_EQ(root->line, 1);
    EXPECT_EQ(root->find("a")->line, 2);
    EXPECT_EQ(root->find("b")->line, 4);
    EXPECT_EQ(root->find("b")->items[0].line, 5);
    EXPECT_EQ(root->find("b")->items[1].line, 6);
    EXPECT_EQ(root->find("c")->line, 10);
}

TEST(JsonNode, RefusesWhatIsNoJsonWithItsLine)
{
    EXPECT_EQ(refusalOf(""), "storage.broken-json at ");
    EXPECT_EQ(refusalOf("{\"a\": 1\n"), "storage.broken-json at line 1");
    EXPECT_EQ(refusalOf("{\n\"a\": nul\n}"), "storage.broken-json at line 2");
    EXPECT_EQ(refusalOf("[1,\n2,\n]"), "storage.broken-json at line 3");
    EXPECT_EQ(refusalOf("[NaN]"), "storage.broken-json at line 1");
    EXPECT_EQ(refusalOf("[1e999]"), "storage.broken-json at line 1");
    EXPECT_EQ(refusalOf("[1] [2]"), "storage.broken-json at line 1");
    EXPECT_EQ(refusalOf("{\"a\": 1,\n \"a\": 2}"), "storage.duplicate-key at line 2");
    EXPECT_EQ(refusalOf("[\n\"\xC3(\"]"), "storage.not-utf8 at line 2");
    EXPECT_EQ(refusalOf("[[[[[[[[[1]]]]]]]]]"), "storage.too-deep at line 1");
    EXPECT_EQ(refusalOf("[[[[[[[[1]]]]]]]]"), "");
    EXPECT_EQ(refusalOf("\"" + std::string(10'000, 'x') + "\""), "storage.too-large at ");
    std::string many = "[0";
    for (int i = 0; i < 100; ++i)
        many += ",0";
    EXPECT_EQ(refusalOf(many + "]"), "storage.too-many at line 1");
}

TEST(JsonNode, IsWrittenAsItWasRead)
{
    const std::string text =
        "{\"a\":[1,2.50,-3e5,\"x\\\"\\\\\\n\\t\\u0001\xC3\xA4\",null,true,false,{},[]],\"b\":{\"c\":{}}}";
    const auto root = readJson(text, limits);
    ASSERT_TRUE(root.ok()) << base::oneLine(root.refusal());
    EXPECT_EQ(compact(root.value()), text);
    EXPECT_EQ(compact(readJson(laidOut(root.value()), limits).value()), text);
}

TEST(JsonNode, LaysShortValuesOutInOneLine)
{
    const auto root = readJson("{\"deep\": [[[1]], [2]], \"flat\": {\"at\": [1, 2]}, \"none\": []}", limits);
    EXPECT_EQ(laidOut(root.value()),
              "{\n  \"deep\": [\n    [[1]],\n    [2]\n  ],\n  \"flat\": {\"at\": [1, 2]},\n  \"none\": []\n}");
}

// Examples of ill-formed sequences after the Unicode Standard, chapter 3, table 3-7 (well-formed UTF-8 byte sequences).
TEST(Utf8, IsCheckedByTheTableOfWellFormedBytes)
{
    for (const char* good : {"", "plain", "\xC2\x80", "\xDF\xBF", "\xE0\xA0\x80", "\xED\x9F\xBF", "\xEE\x80\x80",
                             "\xF0\x90\x80\x80", "\xF4\x8F\xBF\xBF"})
        EXPECT_FALSE(firstBadByte(good)) << good;
    for (const char* bad : {"\x80", "\xC0\x80", "\xC1\xBF", "\xC2", "\xC2\x41", "\xE0\x9F\xBF", "\xED\xA0\x80",
                            "\xF0\x8F\xBF\xBF", "\xF4\x90\x80\x80", "\xF5\x80\x80\x80", "\xFF", "\xE2\x82"})
        EXPECT_EQ(firstBadByte(bad), 0u) << bad;
    EXPECT_EQ(firstBadByte("ab\xFF"), 2u);
    EXPECT_EQ(validUtf8("a\xFFz\xC3"), "a\xEF\xBF\xBDz\xEF\xBF\xBD");
}

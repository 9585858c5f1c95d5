#include <gtest/gtest.h>

#include "core/storage/csv.hpp"

using namespace sumpwright;
using namespace sumpwright::storage;

namespace
{

std::string refusalOf(std::string_view bytes)
{
    const auto table = readCsv(bytes);
    return table.ok() ? "" : table.refusal().id + " " + table.refusal().place;
}

CsvTable tableOf(std::string_view bytes)
{
    const auto table = readCsv(bytes);
    EXPECT_TRUE(table.ok());
    return table.ok() ? *table : CsvTable();
}

} // namespace

TEST(Csv, ReadsCellsByTheSeparatorOfItsFirstRow)
{
    for (const auto& [text, separator] : std::vector<std::pair<std::string, char>>{
             {"a,b,c\n1,2,3\n", ','}, {"a;b;c\n1;2;3\n", ';'}, {"a\tb\tc\n1\t2\t3\n", '\t'}}) {
        const CsvTable table = tableOf(text);
        EXPECT_EQ(table.separator, separator);
        ASSERT_EQ(table.rows.size(), 1u);
        EXPECT_EQ(table.rows[0].cells, (std::vector<std::string>{"1", "2", "3"}));
        EXPECT_EQ(table.rows[0].line, 2u);
    }
    EXPECT_EQ(tableOf("\"a,b\";c\n").separator, ';');
}

TEST(Csv, KeepsQuotesSeparatorsAndLineBreaksInsideQuotes)
{
    const CsvTable table = tableOf("name,note\n\"a, \"\"b\"\"\",\"two\nlines\"\nlast, plain \n");
    ASSERT_EQ(table.rows.size(), 2u);
    EXPECT_EQ(table.rows[0].cells, (std::vector<std::string>{"a, \"b\"", "two\nlines"}));
    EXPECT_EQ(table.rows[1].cells, (std::vector<std::string>{"last", "plain"}));
    EXPECT_EQ(table.rows[1].line, 4u); // after the row of two lines
}

TEST(Csv, TakesEveryLineEndAByteOrderMarkAndBlankRows)
{
    const CsvTable table = tableOf("\xEF\xBB\xBF\r\n\r\nname,k\r\n\r\na,1\r,,\rb,2");
    EXPECT_EQ(table.header.cells.front(), "name");
    EXPECT_EQ(table.header.line, 3u);
    ASSERT_EQ(table.rows.size(), 2u);
    EXPECT_EQ(table.rows[0].line, 5u);
    EXPECT_EQ(table.rows[1].line, 7u);
    EXPECT_EQ(table.blankRows, 4u);
}

TEST(Csv, RefusesWhatIsNoTableAndSaysWhere)
{
    EXPECT_EQ(refusalOf(""), "storage.table-empty ");
    EXPECT_EQ(refusalOf("\n \n,,\n"), "storage.table-empty ");
    EXPECT_EQ(refusalOf("a,b\n1,\"open\n2,3\n"), "storage.table-open-quote line 2");
    EXPECT_EQ(refusalOf("name\nK\xFCrbis\n"), "storage.table-encoding line 2"); // Latin-1
    EXPECT_EQ(refusalOf(std::string_view("\xFF\xFEn\0a\0", 6)), "storage.table-encoding line 1");
    EXPECT_EQ(refusalOf(std::string(largestCsvBytes + 1, 'a')), "storage.table-too-large ");
    std::string many = "a\n";
    for (std::size_t i = 0; i <= mostCsvRows; ++i)
        many += "1\n";
    EXPECT_EQ(refusalOf(many), "storage.table-too-many line 20002");
}

TEST(Csv, WritesCellsThatComeBack)
{
    for (const std::string cell : {"plain", "a,b", "a;b", "say \"so\"", "two\nlines", "", " edge"}) {
        const CsvTable table = tableOf("x,y\n" + csvCell(cell) + ",end\n");
        ASSERT_EQ(table.rows.size(), 1u) << cell;
        EXPECT_EQ(table.rows[0].cells[0], cell == " edge" ? "edge" : cell);
    }
}

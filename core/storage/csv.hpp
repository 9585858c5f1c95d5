// CsvTable: a table of text cells as spreadsheets save it, each row with the line it began on.
//
// UTF-8, with or without a byte order mark; parted by commas, semicolons or tabs, as the first row is; cells in double
// quotes may hold separators, line breaks and doubled quotes; rows with nothing in them are counted and left out.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/outcome.hpp"

namespace sumpwright::storage
{

struct CsvRow {
    std::size_t line = 0;
    std::vector<std::string> cells; // without the spaces around them
};

struct CsvTable {
    char separator = ',';
    CsvRow header;
    std::vector<CsvRow> rows;
    std::size_t blankRows = 0;
};

inline constexpr std::size_t largestCsvBytes = 20'000'000;
inline constexpr std::size_t mostCsvRows = 20'000;

// Refusals, place "line N" where there is one: "storage.table-empty", "storage.table-too-large",
// "storage.table-too-many", "storage.table-encoding", "storage.table-open-quote".
base::Outcome<CsvTable> readCsv(std::string_view bytes);
// The cell as a file of commas holds it: in quotes where it must be.
std::string csvCell(std::string_view text);

} // namespace sumpwright::storage

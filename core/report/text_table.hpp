// TextTable: rows of cells as aligned lines for a terminal; the first column to the left, the others to the right.
// Widths are counted in characters, not bytes.
#pragma once

#include <string>
#include <vector>

namespace sumpwright::report
{

class TextTable
{
public:
    explicit TextTable(std::vector<std::string> headings) { add(std::move(headings)); }

    void add(std::vector<std::string> cells) { m_rows.push_back(std::move(cells)); }
    bool empty() const { return m_rows.size() < 2; }
    std::string lines() const; // each indented by two blanks

private:
    std::vector<std::vector<std::string>> m_rows;
};

} // namespace sumpwright::report

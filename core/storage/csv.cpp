#include "core/storage/csv.hpp"

#include <algorithm>

#include "core/storage/utf8.hpp"

namespace sumpwright::storage
{

namespace
{

base::Refusal refusal(const char* id, std::string place, std::string what, std::string accepts)
{
    return {std::string("storage.table-") + id, std::move(place), std::move(what), std::move(accepts)};
}

std::string lineText(std::size_t line) { return "line " + std::to_string(line); }

constexpr const char* saveAsUtf8 = "save the table again as CSV UTF-8";

std::optional<base::Refusal> faultOfBytes(std::string_view bytes)
{
    if (bytes.size() > largestCsvBytes)
        return refusal("too-large", "",
                       std::to_string(bytes.size() / 1'000'000) + " MB are too much for a table of parts",
                       "at most " + std::to_string(largestCsvBytes / 1'000'000) + " MB");
    const bool wide = bytes.substr(0, 2) == "\xFF\xFE" || bytes.substr(0, 2) == "\xFE\xFF";
    if (wide || bytes.find('\0') != std::string_view::npos)
        return refusal("encoding", "line 1", "the file is not UTF-8 text, it may be UTF-16 or no text at all",
                       saveAsUtf8);
    if (const auto at = firstBadByte(bytes)) {
        const auto line = 1 + std::count(bytes.begin(), bytes.begin() + static_cast<std::ptrdiff_t>(*at), '\n');
        return refusal("encoding", lineText(static_cast<std::size_t>(line)), "a letter here is not UTF-8", saveAsUtf8);
    }
    return std::nullopt;
}

// The separator there is most of in the first row, outside quotes.
char separatorOf(std::string_view text)
{
    std::size_t commas = 0, semicolons = 0, tabs = 0;
    bool quoted = false;
    for (const char c : text) {
        if (c == '"')
            quoted = !quoted;
        else if (!quoted && (c == '\n' || c == '\r'))
            break;
        commas += !quoted && c == ',' ? 1 : 0;
        semicolons += !quoted && c == ';' ? 1 : 0;
        tabs += !quoted && c == '\t' ? 1 : 0;
    }
    if (semicolons > 0 && semicolons >= commas && semicolons >= tabs)
        return ';';
    return tabs > commas ? '\t' : ',';
}

std::string trimmed(const std::string& text)
{
    const std::size_t begin = text.find_first_not_of(" \t");
    if (begin == std::string::npos)
        return {};
    return text.substr(begin, text.find_last_not_of(" \t") + 1 - begin);
}

class Reader
{
public:
    Reader(std::string_view text, char separator) : m_text(text), m_separator(separator) {}

    bool atEnd() const { return m_at >= m_text.size(); }
    std::size_t openQuote() const { return m_openQuote; } // line of a quote that never closes; 0: none

    CsvRow row()
    {
        CsvRow row{m_line, {}};
        bool more = true;
        while (more) {
            std::string cell;
            more = takeCell(cell);
            row.cells.push_back(std::move(cell));
        }
        return row;
    }

private:
    // True when another cell of the row follows.
    bool takeCell(std::string& cell)
    {
        bool quoted = false, wasQuoted = false;
        const std::size_t begun = m_line;
        while (!atEnd()) {
            const char c = m_text[m_at];
            const bool lineEnd = c == '\n' || c == '\r';
            if (lineEnd)
                passLineEnd();
            else
                ++m_at;
            if (quoted) {
                if (c == '"' && !atEnd() && m_text[m_at] == '"')
                    cell += m_text[m_at++];
                else if (c == '"')
                    quoted = false;
                else
                    cell += lineEnd ? '\n' : c;
            } else if (c == '"' && !wasQuoted && cell.find_first_not_of(" \t") == std::string::npos) {
                quoted = wasQuoted = true;
                cell.clear();
            } else if (c == m_separator || lineEnd) {
                cell = trimmed(cell);
                return c == m_separator;
            } else {
                cell += c;
            }
        }
        if (quoted)
            m_openQuote = begun;
        cell = trimmed(cell);
        return false;
    }
    void passLineEnd()
    {
        if (m_text[m_at] == '\r' && m_at + 1 < m_text.size() && m_text[m_at + 1] == '\n')
            ++m_at;
        ++m_at;
        ++m_line;
    }

    std::string_view m_text;
    char m_separator;
    std::size_t m_at = 0;
    std::size_t m_line = 1;
    std::size_t m_openQuote = 0;
};

bool isBlank(const CsvRow& row)
{
    return std::all_of(row.cells.begin(), row.cells.end(), [](const std::string& cell) { return cell.empty(); });
}

} // namespace

base::Outcome<CsvTable> readCsv(std::string_view bytes)
{
    if (const auto fault = faultOfBytes(bytes))
        return *fault;
    if (bytes.substr(0, 3) == "\xEF\xBB\xBF")
        bytes.remove_prefix(3);
    CsvTable table;
    table.separator = separatorOf(bytes.substr(std::min(bytes.find_first_not_of("\r\n"), bytes.size())));
    Reader reader(bytes, table.separator);
    while (!reader.atEnd()) {
        CsvRow row = reader.row();
        if (isBlank(row))
            ++table.blankRows;
        else if (table.header.line == 0)
            table.header = std::move(row);
        else
            table.rows.push_back(std::move(row));
        if (table.rows.size() > mostCsvRows)
            return refusal("too-many", lineText(table.rows.back().line), "the table has too many rows",
                           "at most " + std::to_string(mostCsvRows) + " rows; part it");
    }
    if (reader.openQuote() > 0)
        return refusal("open-quote", lineText(reader.openQuote()), "a quotation mark opens here and never closes",
                       "a second one at the end of the cell, or none");
    if (table.header.line == 0)
        return refusal("empty", "", "the table is empty",
                       "a first row with the names of the columns, then a row a part");
    return table;
}

std::string csvCell(std::string_view text)
{
    const bool plain = text.find_first_of(",;\"\r\n\t") == std::string_view::npos &&
                       (text.empty() || (text.front() != ' ' && text.back() != ' '));
    if (plain)
        return std::string(text);
    std::string cell = "\"";
    for (const char c : text) {
        if (c == '"')
            cell += '"';
        cell += c;
    }
    return cell + "\"";
}

} // namespace sumpwright::storage

#include "tests/architecture/source_tree.hpp"

#include <algorithm>
#include <cctype>
#include <filesystem>
#include <fstream>
#include <sstream>

namespace sumpwright::architecture
{

namespace fs = std::filesystem;

namespace
{

const fs::path root = SUMPWRIGHT_SOURCE;

void blank(std::string& text, std::size_t from, std::size_t end)
{
    for (std::size_t i = from; i < std::min(end, text.size()); ++i)
        if (text[i] != '\n')
            text[i] = ' ';
}

// The byte after the literal that opens at `at` with a quotation mark or an apostrophe.
std::size_t endOfLiteral(std::string_view text, std::size_t at)
{
    const char quote = text[at];
    for (std::size_t i = at + 1; i < text.size(); ++i) {
        if (text[i] == '\\')
            ++i;
        else if (text[i] == quote || text[i] == '\n')
            return i + 1;
    }
    return text.size();
}

std::size_t endOfRawString(std::string_view text, std::size_t at)
{
    const std::size_t open = text.find('(', at);
    if (open == std::string_view::npos)
        return text.size();
    const std::string close = ")" + std::string(text.substr(at + 2, open - at - 2)) + "\"";
    const std::size_t end = text.find(close, open);
    return end == std::string_view::npos ? text.size() : end + close.size();
}

bool insideWord(std::string_view text, std::size_t at)
{
    return at > 0 && (std::isalnum(static_cast<unsigned char>(text[at - 1])) || text[at - 1] == '_');
}

// The end of what has to be blanked at `at`, or `at` itself.
std::size_t endOfBlank(std::string_view text, std::size_t at)
{
    const std::string_view rest = text.substr(at);
    if (rest.starts_with("//"))
        return std::min(text.find('\n', at), text.size());
    if (rest.starts_with("/*")) {
        const std::size_t end = text.find("*/", at + 2);
        return end == std::string_view::npos ? text.size() : end + 2;
    }
    if (rest.starts_with("R\"") && !insideWord(text, at))
        return endOfRawString(text, at);
    if (rest.front() == '"' || (rest.front() == '\'' && !insideWord(text, at))) // 1'000 is a number
        return endOfLiteral(text, at);
    if (rest.front() == '#' && text.substr(0, at).find_last_not_of(" \t") == text.substr(0, at).find_last_of('\n')) {
        std::size_t end = text.find('\n', at);
        while (end != std::string_view::npos && text[end - 1] == '\\')
            end = text.find('\n', end + 1);
        return std::min(end, text.size());
    }
    return at;
}

} // namespace

std::string_view SourceFile::extension() const
{
    const std::size_t dot = path.rfind('.');
    return dot == std::string::npos ? std::string_view{} : std::string_view(path).substr(dot + 1);
}

std::string SourceFile::folder() const { return path.substr(0, std::min(path.rfind('/'), path.size())); }

std::string SourceFile::room() const
{
    const std::size_t first = path.find('/');
    const std::string top = path.substr(0, first);
    if (top != "core" && top != "ui")
        return top;
    const std::size_t second = path.find('/', first + 1);
    return second == std::string::npos ? top : path.substr(0, second);
}

std::vector<SourceFile> filesBelow(const std::vector<std::string>& folders)
{
    std::vector<SourceFile> files;
    for (const std::string& folder : folders)
        for (const fs::directory_entry& entry : fs::recursive_directory_iterator(root / folder))
            if (entry.is_regular_file()) {
                const std::string path = fs::relative(entry.path(), root).generic_string();
                files.push_back({path, readFile(path)});
            }
    std::sort(files.begin(), files.end(), [](const SourceFile& a, const SourceFile& b) { return a.path < b.path; });
    return files;
}

std::string readFile(const std::string& pathFromRoot)
{
    std::ifstream in(root / pathFromRoot, std::ios::binary);
    std::ostringstream text;
    text << in.rdbuf();
    return text.str();
}

std::vector<std::string> linesOf(std::string_view text)
{
    std::vector<std::string> lines;
    std::istringstream in{std::string(text)};
    for (std::string line; std::getline(in, line);)
        lines.push_back(line);
    return lines;
}

std::string withoutCommentsAndStrings(std::string_view text)
{
    std::string plain(text);
    for (std::size_t at = 0; at < plain.size();) {
        const std::size_t end = endOfBlank(plain, at);
        blank(plain, at, end);
        at = std::max(end, at + 1);
    }
    return plain;
}

} // namespace sumpwright::architecture

// The project's own files as the architecture tests see them: paths from the root, lines, text without comments.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace sumpwright::architecture
{

struct SourceFile {
    std::string path; // from the root, with slashes: "core/units/kinds.hpp"
    std::string text;

    std::string_view extension() const; // "hpp", empty when there is none
    std::string folder() const;         // "core/units/detail" of "core/units/detail/x.hpp"
    std::string room() const;           // its first two folders below core and ui, else the first
};

// Every file below the given top-level folders, in the order of their paths.
std::vector<SourceFile> filesBelow(const std::vector<std::string>& folders);
std::string readFile(const std::string& pathFromRoot);

std::vector<std::string> linesOf(std::string_view text);

// The same length and lines, with comments, string and character literals and preprocessor lines blanked out.
std::string withoutCommentsAndStrings(std::string_view text);

} // namespace sumpwright::architecture

// Small looks at a UTF-8 text by byte position. Internal to core/units.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace sumpwright::units::detail
{

constexpr bool isDigit(char c) { return c >= '0' && c <= '9'; }
constexpr bool isAsciiLetter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }
constexpr bool digitAt(std::string_view text, std::size_t at) { return at < text.size() && isDigit(text[at]); }
constexpr bool startsAt(std::string_view text, std::size_t at, std::string_view what)
{
    return !what.empty() && at <= text.size() && text.substr(at).starts_with(what);
}

bool isValidUtf8(std::string_view text);
// The bytes of the character at `at` (at least one while inside the text).
std::string_view characterAt(std::string_view text, std::size_t at);
// 1-based count of characters: "character 5".
std::string characterPlace(std::string_view text, std::size_t at);
// The byte length of the space at `at`: ASCII space and tab, U+00A0, U+2009, U+202F; 0 when there is none.
std::size_t spaceAt(std::string_view text, std::size_t at);
std::size_t skipSpaces(std::string_view text, std::size_t at);
std::string_view trimmed(std::string_view text);
// A piece of text fit for a message: in quotation marks, short, without control characters.
std::string quoted(std::string_view text);

} // namespace sumpwright::units::detail

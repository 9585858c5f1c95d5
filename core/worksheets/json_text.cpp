#include "core/worksheets/json_text.hpp"

#include <charconv>
#include <cmath>

#include "core/base/ensure.hpp"

namespace sumpwright::worksheets
{
namespace
{

// Length of the UTF-8 character at the start of the text; 0 where there is none.
std::size_t characterAt(std::string_view text)
{
    const auto byte = [&text](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const auto follows = [&](std::size_t i) { return i < text.size() && (byte(i) & 0xC0u) == 0x80u; };
    const unsigned char lead = byte(0);
    if (lead < 0x80)
        return 1;
    if (lead >= 0xC2 && lead <= 0xDF)
        return follows(1) ? 2 : 0;
    if ((lead & 0xF0u) == 0xE0u) {
        const bool sound =
            follows(1) && follows(2) && !(lead == 0xE0 && byte(1) < 0xA0) && !(lead == 0xED && byte(1) > 0x9F);
        return sound ? 3 : 0;
    }
    if (lead >= 0xF0 && lead <= 0xF4) {
        const bool sound = follows(1) && follows(2) && follows(3) && !(lead == 0xF0 && byte(1) < 0x90) &&
                           !(lead == 0xF4 && byte(1) > 0x8F);
        return sound ? 4 : 0;
    }
    return 0;
}

std::string escaped(char c)
{
    constexpr char hex[] = "0123456789abcdef";
    const auto byte = static_cast<unsigned char>(c);
    if (c == '"' || c == '\\')
        return std::string("\\") + c;
    if (byte >= 0x20)
        return std::string(1, c);
    return std::string("\\u00") + hex[byte >> 4u] + hex[byte & 15u];
}

} // namespace

std::string quoted(std::string_view text)
{
    std::string out = "\"";
    while (!text.empty()) {
        const std::size_t length = characterAt(text);
        if (length == 1)
            out += escaped(text.front());
        else
            out += length == 0 ? "\xEF\xBF\xBD" : std::string(text.substr(0, length));
        text.remove_prefix(length == 0 ? 1 : length);
    }
    return out + "\"";
}

void JsonText::place(std::string_view key)
{
    if (!m_first)
        m_text += ",";
    if (m_depth > 0)
        m_text += "\n" + std::string(static_cast<std::size_t>(2 * m_depth), ' ');
    if (!key.empty())
        m_text += quoted(key) + ": ";
    m_first = false;
}

void JsonText::open(std::string_view key, char bracket)
{
    place(key);
    m_text += bracket;
    ++m_depth;
    m_first = true;
}

void JsonText::close(char bracket)
{
    base::ensure(m_depth > 0, "what is closed was opened");
    --m_depth;
    if (!m_first)
        m_text += "\n" + std::string(static_cast<std::size_t>(2 * m_depth), ' ');
    m_text += bracket;
    m_first = false;
}

JsonText& JsonText::beginObject(std::string_view key)
{
    open(key, '{');
    return *this;
}

JsonText& JsonText::endObject()
{
    close('}');
    return *this;
}

JsonText& JsonText::beginList(std::string_view key)
{
    open(key, '[');
    return *this;
}

JsonText& JsonText::endList()
{
    close(']');
    return *this;
}

JsonText& JsonText::word(std::string_view key, std::string_view text)
{
    place(key);
    m_text += quoted(text);
    return *this;
}

JsonText& JsonText::number(std::string_view key, double value)
{
    base::ensure(std::isfinite(value), "a number written is finite");
    place(key);
    char digits[32];
    const auto end = std::to_chars(digits, digits + sizeof digits, value == 0.0 ? 0.0 : value);
    m_text.append(digits, end.ptr);
    return *this;
}

JsonText& JsonText::flag(std::string_view key, bool value)
{
    place(key);
    m_text += value ? "true" : "false";
    return *this;
}

JsonText& JsonText::item(std::string_view text)
{
    place({});
    m_text += quoted(text);
    return *this;
}

JsonText& JsonText::words(std::string_view key, const std::vector<std::string>& texts)
{
    beginList(key);
    for (const std::string& text : texts)
        item(text);
    return endList();
}

} // namespace sumpwright::worksheets

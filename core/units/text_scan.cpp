#include "core/units/text_scan.hpp"

namespace sumpwright::units::detail
{

namespace
{

std::size_t lengthByLead(unsigned char lead)
{
    if (lead < 0x80)
        return 1;
    if (lead >= 0xC2 && lead < 0xE0)
        return 2;
    if (lead >= 0xE0 && lead < 0xF0)
        return 3;
    if (lead >= 0xF0 && lead < 0xF5)
        return 4;
    return 0;
}

} // namespace

bool isValidUtf8(std::string_view text)
{
    for (std::size_t at = 0; at < text.size();) {
        const auto lead = static_cast<unsigned char>(text[at]);
        const std::size_t length = lengthByLead(lead);
        if (length == 0 || at + length > text.size())
            return false;
        for (std::size_t i = 1; i < length; ++i)
            if ((static_cast<unsigned char>(text[at + i]) & 0xC0U) != 0x80U)
                return false;
        if (length > 2) {
            const auto second = static_cast<unsigned char>(text[at + 1]);
            const bool overlong = (lead == 0xE0 && second < 0xA0) || (lead == 0xF0 && second < 0x90);
            const bool surrogateOrBeyond = (lead == 0xED && second >= 0xA0) || (lead == 0xF4 && second >= 0x90);
            if (overlong || surrogateOrBeyond)
                return false;
        }
        at += length;
    }
    return true;
}

std::string_view characterAt(std::string_view text, std::size_t at)
{
    if (at >= text.size())
        return {};
    const std::size_t length = lengthByLead(static_cast<unsigned char>(text[at]));
    return text.substr(at, length == 0 ? 1 : length);
}

std::string characterPlace(std::string_view text, std::size_t at)
{
    std::size_t count = 1;
    for (std::size_t i = 0; i < at && i < text.size(); ++i)
        if ((static_cast<unsigned char>(text[i]) & 0xC0U) != 0x80U)
            ++count;
    return "character " + std::to_string(count);
}

std::size_t spaceAt(std::string_view text, std::size_t at)
{
    if (at >= text.size())
        return 0;
    if (text[at] == ' ' || text[at] == '\t')
        return 1;
    for (std::string_view space : {std::string_view("\u00a0"), std::string_view("\u2009"), std::string_view("\u202f")})
        if (startsAt(text, at, space))
            return space.size();
    return 0;
}

std::size_t skipSpaces(std::string_view text, std::size_t at)
{
    while (const std::size_t length = spaceAt(text, at))
        at += length;
    return at;
}

std::string_view trimmed(std::string_view text)
{
    text.remove_prefix(skipSpaces(text, 0));
    std::size_t end = 0; // byte after the last character that is no space
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t space = spaceAt(text, at);
        at += space ? space : 1;
        if (!space)
            end = at;
    }
    return text.substr(0, end);
}

std::string quoted(std::string_view text)
{
    constexpr std::size_t longest = 24;
    std::string result = "\u201c";
    std::size_t shown = 0;
    for (std::size_t at = 0; at < text.size() && shown < longest; ++shown) {
        const std::string_view character = characterAt(text, at);
        const auto first = static_cast<unsigned char>(character.front());
        result += first < 0x20 || first == 0x7F ? std::string_view("?") : character;
        at += character.size();
    }
    if (shown == longest)
        result += "\u2026";
    return result + "\u201d";
}

} // namespace sumpwright::units::detail

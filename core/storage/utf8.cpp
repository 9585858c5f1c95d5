#include "core/storage/utf8.hpp"

namespace sumpwright::storage
{

namespace
{

// Bytes of the character that starts at `at`; 0 when it is not valid.
std::size_t lengthAt(std::string_view text, std::size_t at)
{
    const auto byte = [&](std::size_t i) {
        return static_cast<unsigned char>(at + i < text.size() ? text[at + i] : 0);
    };
    const auto follows = [&](std::size_t i, unsigned low = 0x80, unsigned high = 0xbf) {
        return byte(i) >= low && byte(i) <= high;
    };
    const unsigned lead = byte(0);
    if (lead < 0x80)
        return 1;
    if (lead >= 0xc2 && lead <= 0xdf)
        return follows(1) ? 2 : 0;
    if (lead >= 0xe0 && lead <= 0xef) {
        const unsigned low = lead == 0xe0 ? 0xa0 : 0x80;
        const unsigned high = lead == 0xed ? 0x9f : 0xbf;
        return follows(1, low, high) && follows(2) ? 3 : 0;
    }
    if (lead >= 0xf0 && lead <= 0xf4) {
        const unsigned low = lead == 0xf0 ? 0x90 : 0x80;
        const unsigned high = lead == 0xf4 ? 0x8f : 0xbf;
        return follows(1, low, high) && follows(2) && follows(3) ? 4 : 0;
    }
    return 0;
}

} // namespace

std::optional<std::size_t> firstBadByte(std::string_view text)
{
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t length = lengthAt(text, at);
        if (length == 0)
            return at;
        at += length;
    }
    return std::nullopt;
}

std::string validUtf8(std::string_view text)
{
    std::string valid;
    while (const auto bad = firstBadByte(text)) {
        valid += text.substr(0, *bad);
        valid += "\xef\xbf\xbd";
        text.remove_prefix(*bad + 1);
    }
    valid += text;
    return valid;
}

} // namespace sumpwright::storage

// UTF-8 as RFC 3629 defines it: no overlong forms, no surrogates, nothing above U+10FFFF.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace sumpwright::storage
{

// Offset of the first byte that is not part of valid UTF-8; nothing when all is well.
std::optional<std::size_t> firstBadByte(std::string_view text);
// The text with each bad byte replaced by U+FFFD.
std::string validUtf8(std::string_view text);

} // namespace sumpwright::storage

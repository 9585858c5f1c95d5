#include "core/storage/mark_text.hpp"

#include <charconv>

#include "core/storage/file.hpp"

namespace sumpwright::storage
{

void addMark(JsonNode& object, const ProcessMark& mark)
{
    object.add("pid", JsonNode::ofNumber(static_cast<std::uint64_t>(mark.pid)));
    object.add("start", JsonNode::ofText(std::to_string(mark.start)));
    object.add("boot", JsonNode::ofText(mark.boot));
    object.add("host", JsonNode::ofText(mark.host));
    object.add("user", JsonNode::ofText(mark.user));
}

ProcessMark markIn(ObjectReader& reader)
{
    ProcessMark mark;
    mark.pid = static_cast<std::int64_t>(reader.id("pid"));
    const std::string start = reader.text("start");
    std::from_chars(start.data(), start.data() + start.size(), mark.start);
    mark.boot = reader.text("boot");
    mark.host = reader.text("host");
    mark.user = reader.text("user");
    return mark;
}

std::string encodedPath(const std::filesystem::path& path)
{
    static constexpr std::string_view digits = "0123456789ABCDEF";
    std::string out;
    for (const char letter : path.native()) {
        const auto byte = static_cast<unsigned char>(letter);
        if (byte > 0x20 && byte < 0x7f && letter != '%') {
            out += letter;
        } else {
            out += '%';
            out += digits[byte >> 4];
            out += digits[byte & 15];
        }
    }
    return out;
}

std::filesystem::path decodedPath(std::string_view text)
{
    std::string out;
    for (std::size_t i = 0; i < text.size(); ++i) {
        unsigned byte = 0;
        if (text[i] == '%' && i + 2 < text.size() &&
            std::from_chars(text.data() + i + 1, text.data() + i + 3, byte, 16).ptr == text.data() + i + 3) {
            out += static_cast<char>(byte);
            i += 2;
        } else {
            out += text[i];
        }
    }
    return out;
}

std::filesystem::path canonicalPlan(const std::filesystem::path& path)
{
    std::error_code error;
    std::filesystem::path canonical = std::filesystem::weakly_canonical(std::filesystem::absolute(path, error), error);
    return error ? path : canonical;
}

std::string keyOf(const std::filesystem::path& canonical)
{
    return text(contentHash(canonical.native())).substr(0, 16);
}

} // namespace sumpwright::storage

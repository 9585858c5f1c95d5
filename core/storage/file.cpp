#include "core/storage/file.hpp"

#include <array>
#include <cerrno>
#include <charconv>
#include <cstring>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include "core/storage/descriptor.hpp"

namespace sumpwright::storage
{

namespace
{

base::Refusal cannotRead(const std::filesystem::path& path, const std::string& what)
{
    return {"storage.cannot-read", path.string(), what, "a file that is there and may be read"};
}

} // namespace

ContentHash contentHash(std::string_view bytes)
{
    // FNV-1a, 64 bit: offset basis and prime of the published algorithm (Fowler, Noll, Vo).
    std::uint64_t hash = 14695981039346656037ULL;
    for (const char byte : bytes) {
        hash ^= static_cast<unsigned char>(byte);
        hash *= 1099511628211ULL;
    }
    return {hash, bytes.size()};
}

std::string text(ContentHash hash)
{
    static constexpr std::string_view digits = "0123456789abcdef";
    std::string out;
    for (int shift = 60; shift >= 0; shift -= 4)
        out += digits[(hash.hash >> shift) & 15];
    return out + "-" + std::to_string(hash.size);
}

std::optional<ContentHash> contentHashFrom(std::string_view text)
{
    ContentHash hash;
    if (text.size() < 18 || text[16] != '-')
        return std::nullopt;
    const auto first = std::from_chars(text.data(), text.data() + 16, hash.hash, 16);
    const auto second = std::from_chars(text.data() + 17, text.data() + text.size(), hash.size);
    if (first.ptr != text.data() + 16 || second.ptr != text.data() + text.size())
        return std::nullopt;
    return hash;
}

base::Outcome<std::string> readFile(const std::filesystem::path& path, std::size_t largest)
{
    // Not blocking, so that a pipe under the name cannot hang the reader.
    const Descriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK));
    struct stat about {
    };
    if (!file.good() || ::fstat(file.number(), &about) != 0)
        return cannotRead(path, std::strerror(errno));
    if (!S_ISREG(about.st_mode))
        return cannotRead(path, "this is no ordinary file");
    if (static_cast<std::uint64_t>(about.st_size) > largest)
        return base::Refusal{"storage.too-large", path.string(), std::to_string(about.st_size / 1'000'000) + " MB",
                             "up to " + std::to_string(largest / 1'000'000) + " MB"};
    std::string bytes;
    std::array<char, 65536> block{};
    while (true) {
        const ssize_t count = ::read(file.number(), block.data(), block.size());
        if (count < 0 && errno == EINTR)
            continue;
        if (count < 0)
            return cannotRead(path, std::strerror(errno));
        if (count == 0)
            return bytes;
        bytes.append(block.data(), static_cast<std::size_t>(count));
        if (bytes.size() > largest)
            return base::Refusal{"storage.too-large", path.string(), "the file grew while it was read",
                                 "up to " + std::to_string(largest / 1'000'000) + " MB"};
    }
}

FileState compareWithDisk(const FileStamp& stamp)
{
    std::error_code error;
    if (!std::filesystem::exists(stamp.path, error))
        return FileState::missing;
    const auto bytes = readFile(stamp.path, stamp.content.size);
    return bytes.ok() && contentHash(bytes.value()) == stamp.content ? FileState::same : FileState::changed;
}

} // namespace sumpwright::storage

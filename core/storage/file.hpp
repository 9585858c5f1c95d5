// Files: whole reading, atomic writing, and a stamp of the content to tell whether a file changed on disk.
#pragma once

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/outcome.hpp"

namespace sumpwright::storage
{

// 64-bit FNV-1a of the bytes, with their count.
struct ContentHash {
    std::uint64_t hash = 0;
    std::uint64_t size = 0;
    friend bool operator==(const ContentHash&, const ContentHash&) = default;
};
ContentHash contentHash(std::string_view bytes);
std::string text(ContentHash hash); // "16 hex digits-size"
std::optional<ContentHash> contentHashFrom(std::string_view text);

base::Outcome<std::string> readFile(const std::filesystem::path& path, std::size_t largest);
// Written beside the target, renamed over it; permissions kept, a symbolic link followed. On any failure the old file
// is as it was and nothing is left behind; what a killed writer left is swept up by the next write of that file.
// `synced` waits for the disk, so that a power cut loses neither; `quick` withstands the end of the program only.
enum class Durability { synced, quick };
std::optional<base::Refusal> writeFile(const std::filesystem::path& path, std::string_view bytes,
                                       Durability durability = Durability::synced);

// What a file held when last read or written here.
struct FileStamp {
    std::filesystem::path path;
    ContentHash content;
};
enum class FileState { same, changed, missing };
FileState compareWithDisk(const FileStamp& stamp);

} // namespace sumpwright::storage

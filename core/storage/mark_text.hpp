// Process marks and paths inside the JSON of journals and locks.
#pragma once

#include <filesystem>

#include "core/storage/object_reader.hpp"
#include "core/storage/process.hpp"

namespace sumpwright::storage
{

void addMark(JsonNode& object, const ProcessMark& mark);
ProcessMark markIn(ObjectReader& reader);
// Any bytes of a path as ASCII: what is not plain becomes %XX.
std::string encodedPath(const std::filesystem::path& path);
std::filesystem::path decodedPath(std::string_view text);
// Same for every spelling of one plan's path.
std::filesystem::path canonicalPlan(const std::filesystem::path& path);
std::string keyOf(const std::filesystem::path& canonical); // 16 hex digits

} // namespace sumpwright::storage

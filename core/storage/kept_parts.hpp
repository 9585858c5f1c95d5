// The parts a person keeps for all plans: one file, JSON of format "sumpwright-parts", version 1, written whole.
//
// A plan that uses one takes a copy, so that it opens on every machine. A file that is not there holds none. Refusals:
// those of reading files and plans, "storage.other-format", "storage.newer-version".
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/outcome.hpp"
#include "core/plan/own_parts.hpp"

namespace sumpwright::storage
{

inline constexpr std::string_view partsFormat = "sumpwright-parts";

std::string keptPartsText(const plan::OwnParts& parts);
base::Outcome<plan::OwnParts> keptPartsFrom(std::string_view text);

base::Outcome<plan::OwnParts> readKeptParts(const std::filesystem::path& path);
// Makes the folder where it is missing.
std::optional<base::Refusal> writeKeptParts(const std::filesystem::path& path, const plan::OwnParts& parts);

// Those of `from` added to `into`: one of the same kind and name takes the place, with the id of the one before.
plan::OwnParts mergedParts(plan::OwnParts into, const plan::OwnParts& from);

} // namespace sumpwright::storage

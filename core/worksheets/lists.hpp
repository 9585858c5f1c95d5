// Lists as people write them: quantities parted by semicolons, each with a name before a colon or without:
// "T1: 12 L; B1: 4 L". A load list gives each mass its footprint: "T1: 1060 kg on 1.2 m2".
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/outcome.hpp"
#include "core/units/number_style.hpp"
#include "core/worksheets/value.hpp"
#include "core/worksheets/worksheet.hpp"

namespace sumpwright::worksheets
{

struct ListEntry {
    std::string name; // empty: none was given
    Value value;
    std::optional<units::Area> on; // load lists only
};

// Refusals, place "entry 2": "worksheets.empty-entry", "-long-name", "-bad-name", "-no-footprint", "-out-of-range",
// those of units::parse; without a place "worksheets.too-many-entries" (more than 5000).
base::Outcome<std::vector<ListEntry>> readList(const InputSpec& spec, std::string_view text,
                                               const units::NumberStyle& style);

// A name as a list can carry it: what parts entries, names and numbers is taken out.
std::string listName(std::string_view name);
// A list written with the point, in another number style: names stay as they are.
std::string listInStyle(const std::string& text, const units::NumberStyle& style);

} // namespace sumpwright::worksheets

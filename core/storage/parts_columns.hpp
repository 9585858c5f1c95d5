// The columns of a table of parts: which there are, and their names and units in one file.
#pragma once

#include <array>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/outcome.hpp"
#include "core/storage/csv.hpp"
#include "core/units/kind_id.hpp"

namespace sumpwright::storage
{

enum class PartColumn {
    kind,
    name,
    outsideDiameter,
    bore,
    roughness,
    frictionFactor,
    gravityOnly,
    k,
    flowFactor,
    crackingHead,
    curve,
    shutOffHead,
    greatestFlow,
    power,
    leastDepth,
    origin
};

inline constexpr std::array<std::string_view, 16> partColumnNames{
    "kind",        "name",  "outside_diameter", "bore",  "roughness",     "friction_factor", "gravity_only",
    "k",           "kv",    "cracking_head",    "curve", "shut_off_head", "greatest_flow",   "power",
    "least_depth", "origin"};

inline std::string_view nameOf(PartColumn column) { return partColumnNames[static_cast<std::size_t>(column)]; }

struct FoundColumn {
    std::size_t index = 0;
    std::string unit; // of cells without one of their own; empty: none
};

struct PartColumns {
    std::map<PartColumn, FoundColumn> found;
    std::vector<std::string> unknown;
};

base::Outcome<PartColumns> columnsOf(const CsvRow& header);

} // namespace sumpwright::storage

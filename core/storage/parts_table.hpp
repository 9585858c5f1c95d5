// Own parts as a table (CSV): what a file would bring in, row by row, before anything is changed; and the way back.
//
// The first row names the columns, each perhaps with the unit of its cells: "Bore (mm)". Columns: kind, name,
// outside_diameter, bore, roughness, friction_factor, gravity_only, k, kv, cracking_head, curve, shut_off_head,
// greatest_flow, power, least_depth, origin. Kinds: pipe, pump, fitting, ball-valve, gate-valve, butterfly-valve,
// globe-valve, non-return-valve. Numbers with a decimal comma where semicolons or tabs part the cells.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/base/outcome.hpp"
#include "core/plan/own_parts.hpp"

namespace sumpwright::storage
{

using AnyOwnPart = std::variant<plan::OwnPipe, plan::OwnFitting, plan::OwnPump>;

struct IncomingPart {
    std::size_t line = 0;
    AnyOwnPart part;
    bool replaces = false; // a part of that kind and name is there already
};

struct RefusedRow {
    std::size_t line = 0;
    base::Refusal refusal; // place: "line 12, bore"
};

struct PartsPreview {
    std::vector<IncomingPart> coming; // in the order of the file
    std::vector<RefusedRow> refused;
    std::size_t blankRows = 0;
    std::vector<std::string> unknownColumns; // left out

    plan::OwnParts parts() const; // all that come in
};

// `kept`: the parts there are. Refusals of the whole file: those of readCsv, "storage.table-no-column" and
// "storage.table-bad-column" (place "line 1, bore"), "storage.table-column-twice".
base::Outcome<PartsPreview> previewParts(std::string_view bytes, const plan::OwnParts& kept);

std::string partsTable(const plan::OwnParts& parts); // commas, decimal points, units in the cells

} // namespace sumpwright::storage

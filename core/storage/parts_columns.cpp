#include "core/storage/parts_columns.hpp"

#include <algorithm>
#include <optional>

#include "core/units/measures.hpp"
#include "core/units/parse.hpp"

namespace sumpwright::storage
{

namespace
{

// "Outside diameter" and "outside-diameter" are outside_diameter.
std::string plainName(std::string_view text)
{
    std::string name;
    for (const char c : text) {
        if (c >= 'A' && c <= 'Z')
            name += static_cast<char>(c - 'A' + 'a');
        else if (c == ' ' || c == '-' || c == '_')
            name += name.empty() || name.back() == '_' ? "" : "_";
        else
            name += c;
    }
    while (!name.empty() && name.back() == '_')
        name.pop_back();
    return name;
}

struct Heading {
    std::string name;
    std::string unit;
};

// "Bore (mm)" and "Bore [mm]".
Heading headingOf(const std::string& cell)
{
    const std::size_t open = cell.find_first_of("([");
    if (open == std::string::npos)
        return {plainName(cell), {}};
    const std::size_t close = cell.find_first_of(")]", open);
    const std::size_t length = close == std::string::npos ? std::string::npos : close - open - 1;
    return {plainName(cell.substr(0, open)), cell.substr(open + 1, length)};
}

template <class Kind> bool isUnitOf(const std::string& unit) { return units::parse<Kind>("1 " + unit).ok(); }

// Whether a heading's unit can be one of that column's numbers.
bool fits(PartColumn column, const std::string& unit)
{
    switch (column) {
    case PartColumn::outsideDiameter:
    case PartColumn::bore:
    case PartColumn::roughness:
    case PartColumn::leastDepth:
        return isUnitOf<units::Length>(unit);
    case PartColumn::flowFactor:
    case PartColumn::greatestFlow:
        return isUnitOf<units::Flow>(unit);
    case PartColumn::crackingHead:
    case PartColumn::shutOffHead:
        return isUnitOf<units::Head>(unit);
    case PartColumn::power:
        return isUnitOf<units::Power>(unit);
    case PartColumn::kind:
    case PartColumn::name:
    case PartColumn::frictionFactor:
    case PartColumn::gravityOnly:
    case PartColumn::k:
    case PartColumn::curve:
    case PartColumn::origin:
        break;
    }
    return false;
}

std::string placeOf(const CsvRow& header, std::string_view column)
{
    return "line " + std::to_string(header.line) + ", " + std::string(column);
}

std::string allNames()
{
    std::string all;
    for (const std::string_view name : partColumnNames)
        all += (all.empty() ? "" : ", ") + std::string(name);
    return all;
}

} // namespace

base::Outcome<PartColumns> columnsOf(const CsvRow& header)
{
    PartColumns columns;
    for (std::size_t i = 0; i < header.cells.size(); ++i) {
        const Heading heading = headingOf(header.cells[i]);
        const auto at = std::find(partColumnNames.begin(), partColumnNames.end(), heading.name);
        if (at == partColumnNames.end()) {
            if (!header.cells[i].empty())
                columns.unknown.push_back(header.cells[i]);
            continue;
        }
        const auto column = static_cast<PartColumn>(at - partColumnNames.begin());
        if (!heading.unit.empty() && !fits(column, heading.unit))
            return base::Refusal{"storage.table-bad-column", placeOf(header, heading.name),
                                 "\"" + heading.unit + "\" is no unit for this column",
                                 "a unit as \"mm\", \"L/h\", \"m\" or \"W\", or none and a unit in each cell"};
        if (!columns.found.emplace(column, FoundColumn{i, heading.unit}).second)
            return base::Refusal{"storage.table-column-twice", placeOf(header, heading.name),
                                 "this column is there twice", "each column once"};
    }
    for (const PartColumn needed : {PartColumn::kind, PartColumn::name})
        if (!columns.found.contains(needed))
            return base::Refusal{"storage.table-no-column", placeOf(header, nameOf(needed)),
                                 "the first row names no such column", "a first row with names of " + allNames()};
    return columns;
}

} // namespace sumpwright::storage

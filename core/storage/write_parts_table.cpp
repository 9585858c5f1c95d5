// Own parts written as a table, a row a part.
#include <map>

#include "core/storage/parts_columns.hpp"
#include "core/storage/parts_table.hpp"
#include "core/storage/words.hpp"
#include "core/units/format.hpp"

namespace sumpwright::storage
{

namespace
{

using Cells = std::map<PartColumn, std::string>;

template <class Kind> void put(Cells& cells, PartColumn column, const std::optional<Kind>& value)
{
    if (value)
        cells[column] = units::exactText(*value);
}
void putRatio(Cells& cells, PartColumn column, const std::optional<double>& value)
{
    if (value)
        cells[column] = units::exactRatioText(*value);
}

Cells cellsOf(const plan::OwnPipe& pipe)
{
    Cells cells{{PartColumn::kind, "pipe"},
                {PartColumn::outsideDiameter, units::exactText(pipe.outsideDiameter)},
                {PartColumn::bore, units::exactText(pipe.bore)},
                {PartColumn::roughness, units::exactText(pipe.roughness)}};
    putRatio(cells, PartColumn::frictionFactor, pipe.corrugatedFactor);
    if (pipe.gravityOnly)
        cells[PartColumn::gravityOnly] = "yes";
    return cells;
}

Cells cellsOf(const plan::OwnFitting& fitting)
{
    Cells cells{{PartColumn::kind, std::string(words::wordOf(fitting.kind, words::ownFittingKind))}};
    putRatio(cells, PartColumn::k, fitting.k);
    put(cells, PartColumn::flowFactor, fitting.flowFactor);
    put(cells, PartColumn::crackingHead, fitting.cracking);
    return cells;
}

Cells cellsOf(const plan::OwnPump& pump)
{
    Cells cells{{PartColumn::kind, "pump"}};
    if (pump.twoNumbers && pump.curve.size() == 2) {
        cells[PartColumn::shutOffHead] = units::exactText(pump.curve.front().head);
        cells[PartColumn::greatestFlow] = units::exactText(pump.curve.back().flow);
    } else {
        std::string& curve = cells[PartColumn::curve];
        for (const plan::CurvePoint& point : pump.curve)
            curve += (curve.empty() ? "" : "; ") + units::exactText(point.flow) + ": " + units::exactText(point.head);
    }
    put(cells, PartColumn::power, pump.power);
    put(cells, PartColumn::leastDepth, pump.leastDepth);
    return cells;
}

} // namespace

std::string partsTable(const plan::OwnParts& parts)
{
    std::string text;
    for (const std::string_view name : partColumnNames)
        text += (text.empty() ? "" : ",") + std::string(name);
    text += "\n";
    forEachPart(parts, [&text](const auto& part) {
        Cells cells = cellsOf(part);
        cells[PartColumn::name] = part.name;
        cells[PartColumn::origin] = part.origin;
        for (std::size_t i = 0; i < partColumnNames.size(); ++i)
            text += (i == 0 ? "" : ",") + csvCell(cells[static_cast<PartColumn>(i)]);
        text += "\n";
    });
    return text;
}

} // namespace sumpwright::storage

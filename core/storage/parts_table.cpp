#include "core/storage/parts_table.hpp"

#include <algorithm>
#include <functional>
#include <map>
#include <optional>

#include "core/plan/check_elements.hpp"
#include "core/storage/parts_columns.hpp"
#include "core/storage/words.hpp"
#include "core/units/parse.hpp"

namespace sumpwright::storage
{

namespace
{

struct BadCell {
    base::Refusal refusal;
};

// One row of the table, read column by column; what is wrong is thrown as BadCell.
class RowReader
{
public:
    RowReader(const CsvRow& row, const PartColumns& columns, const units::NumberStyle& style)
        : m_row(row), m_columns(columns), m_style(style)
    {
    }

    std::string text(PartColumn column) const
    {
        const auto at = m_columns.found.find(column);
        return at == m_columns.found.end() || at->second.index >= m_row.cells.size() ? std::string()
                                                                                     : m_row.cells[at->second.index];
    }
    bool has(PartColumn column) const { return !text(column).empty(); }
    template <class Kind> std::optional<Kind> quantity(PartColumn column) const
    {
        if (!has(column))
            return std::nullopt;
        const std::string& unit = m_columns.found.at(column).unit;
        auto value = units::parse<Kind>(text(column), m_style);
        if (!value && !unit.empty() && value.refusal().id == "units.missing-unit")
            value = units::parse<Kind>(text(column) + " " + unit, m_style);
        if (!value)
            refuseCell(column, value.refusal());
        return *value;
    }
    template <class Kind> Kind needed(PartColumn column) const
    {
        const auto value = quantity<Kind>(column);
        if (!value)
            refuse(column, "storage.table-empty-cell", "this cell is empty", "a value; this kind of part needs it");
        return *value;
    }
    std::optional<double> ratio(PartColumn column) const
    {
        if (!has(column))
            return std::nullopt;
        const auto value = units::parseRatio(text(column), m_style);
        if (!value)
            refuseCell(column, value.refusal());
        return *value;
    }
    bool yes(PartColumn column) const
    {
        const std::string word = text(column);
        if (word == "yes" || word == "1" || word == "true")
            return true;
        if (!word.empty() && word != "no" && word != "0" && word != "false")
            refuse(column, "storage.table-bad-word", "\"" + word.substr(0, 40) + "\" is neither yes nor no",
                   "yes or no");
        return false;
    }
    std::vector<plan::CurvePoint> curve() const;
    // A column that another kind of part has must stay empty.
    void onlyFor(std::initializer_list<PartColumn> columns, const char* kinds) const
    {
        for (const PartColumn column : columns)
            if (has(column))
                refuse(column, "storage.table-other-kind", "this column is for " + std::string(kinds),
                       "an empty cell here, or another kind");
    }
    [[noreturn]] void refuse(PartColumn column, std::string id, std::string what, std::string accepts) const
    {
        throw BadCell{{std::move(id), placeOf(nameOf(column)), std::move(what), std::move(accepts)}};
    }
    std::string placeOf(std::string_view column) const
    {
        return "line " + std::to_string(m_row.line) + ", " + std::string(column);
    }

private:
    [[noreturn]] void refuseCell(PartColumn column, const base::Refusal& refusal) const
    {
        refuse(column, refusal.id, "\"" + text(column).substr(0, 40) + "\": " + refusal.what, refusal.accepts);
    }

    const CsvRow& m_row;
    const PartColumns& m_columns;
    const units::NumberStyle& m_style;
};

// "0 L/h: 3.2 m; 1125 L/h: 2.9 m".
std::vector<plan::CurvePoint> RowReader::curve() const
{
    std::vector<plan::CurvePoint> points;
    const std::string all = text(PartColumn::curve);
    for (std::string_view rest = all; !rest.empty();) {
        const std::size_t end = std::min(rest.find(';'), rest.size());
        const std::string_view pair = rest.substr(0, end);
        rest.remove_prefix(std::min(end + 1, rest.size()));
        if (pair.find_first_not_of(" \n\t") == std::string_view::npos)
            continue;
        const std::string point = "point " + std::to_string(points.size() + 1) + ": ";
        const std::size_t colon = pair.find(':');
        if (colon == std::string_view::npos)
            refuse(PartColumn::curve, "storage.table-bad-curve", point + "a colon between flow and head is missing",
                   "\"0 L/h: 3.2 m; 1125 L/h: 2.9 m\", in quotes where semicolons part the cells");
        const auto flow = units::parse<units::Flow>(pair.substr(0, colon), m_style);
        const auto head = units::parse<units::Head>(pair.substr(colon + 1), m_style);
        if (!flow || !head) {
            const base::Refusal& why = flow ? head.refusal() : flow.refusal();
            refuse(PartColumn::curve, why.id, point + why.what, why.accepts);
        }
        points.push_back({*flow, *head});
    }
    return points;
}

plan::OwnPipe pipeOf(const RowReader& row)
{
    row.onlyFor({PartColumn::k, PartColumn::flowFactor, PartColumn::crackingHead}, "fittings and valves");
    row.onlyFor({PartColumn::curve, PartColumn::shutOffHead, PartColumn::greatestFlow, PartColumn::power,
                 PartColumn::leastDepth},
                "pumps");
    plan::OwnPipe pipe;
    pipe.outsideDiameter = row.needed<units::Length>(PartColumn::outsideDiameter);
    pipe.bore = row.needed<units::Length>(PartColumn::bore);
    pipe.roughness = row.quantity<units::Length>(PartColumn::roughness).value_or(pipe.roughness);
    pipe.corrugatedFactor = row.ratio(PartColumn::frictionFactor);
    pipe.gravityOnly = row.yes(PartColumn::gravityOnly);
    return pipe;
}

plan::OwnFitting fittingOf(const RowReader& row, plan::OwnFittingKind kind)
{
    row.onlyFor({PartColumn::outsideDiameter, PartColumn::bore, PartColumn::roughness, PartColumn::frictionFactor},
                "pipes");
    row.onlyFor({PartColumn::curve, PartColumn::shutOffHead, PartColumn::greatestFlow, PartColumn::power,
                 PartColumn::leastDepth},
                "pumps");
    plan::OwnFitting fitting;
    fitting.kind = kind;
    fitting.k = row.ratio(PartColumn::k);
    fitting.flowFactor = row.quantity<units::Flow>(PartColumn::flowFactor);
    fitting.cracking = row.quantity<units::Head>(PartColumn::crackingHead);
    return fitting;
}

plan::OwnPump pumpOf(const RowReader& row)
{
    row.onlyFor({PartColumn::outsideDiameter, PartColumn::bore, PartColumn::roughness, PartColumn::frictionFactor},
                "pipes");
    row.onlyFor({PartColumn::k, PartColumn::flowFactor, PartColumn::crackingHead}, "fittings and valves");
    plan::OwnPump pump;
    pump.power = row.quantity<units::Power>(PartColumn::power);
    pump.leastDepth = row.quantity<units::Length>(PartColumn::leastDepth);
    const bool numbers = row.has(PartColumn::shutOffHead) || row.has(PartColumn::greatestFlow);
    if (row.has(PartColumn::curve) == numbers)
        row.refuse(PartColumn::curve, "storage.table-no-curve",
                   numbers ? "both a curve and the box's two numbers are given"
                           : "neither a curve nor the box's two numbers are given",
                   "points in curve, or shut_off_head and greatest_flow");
    pump.twoNumbers = numbers;
    if (numbers)
        pump.curve = {{units::Flow(), row.needed<units::Head>(PartColumn::shutOffHead)},
                      {row.needed<units::Flow>(PartColumn::greatestFlow), units::Head()}};
    else
        pump.curve = row.curve();
    return pump;
}

AnyOwnPart partOf(const RowReader& row)
{
    std::string kind = row.text(PartColumn::kind);
    std::string all = "pipe, pump";
    for (char& c : kind)
        c = c == ' ' || c == '_' ? '-' : c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    if (kind == "pipe")
        return pipeOf(row);
    if (kind == "pump")
        return pumpOf(row);
    for (const auto& [value, word] : words::ownFittingKind) {
        if (kind == word)
            return fittingOf(row, value);
        all += ", " + std::string(word);
    }
    row.refuse(PartColumn::kind, "storage.table-bad-word",
               kind.empty() ? "the kind is missing" : "\"" + kind.substr(0, 40) + "\" is no kind of part", all);
}

plan::OwnPart& identityOf(AnyOwnPart& part)
{
    return std::visit([](auto& each) -> plan::OwnPart& { return each; }, part);
}

plan::OwnParts alone(const AnyOwnPart& part)
{
    plan::OwnParts parts;
    if (const auto* pipe = std::get_if<plan::OwnPipe>(&part))
        parts.pipes.push_back(*pipe);
    if (const auto* fitting = std::get_if<plan::OwnFitting>(&part))
        parts.fittings.push_back(*fitting);
    if (const auto* pump = std::get_if<plan::OwnPump>(&part))
        parts.pumps.push_back(*pump);
    return parts;
}

// The very checks of the plan.
void checkPart(const AnyOwnPart& part, const RowReader& row)
{
    plan::FaultFinder faults;
    plan::checkOwnParts(alone(part), faults);
    if (faults.faults().empty())
        return;
    const plan::Fault& fault = faults.faults().front();
    std::size_t from = fault.key.find('/');
    from = from == std::string::npos ? from : fault.key.find('/', from + 1);
    const std::string column = from == std::string::npos ? "row" : fault.key.substr(from + 1);
    throw BadCell{{fault.refusal.id, row.placeOf(column), fault.refusal.what, fault.refusal.accepts}};
}

// Names and ids there are, of the plan and of the rows before.
class Register
{
public:
    explicit Register(const plan::OwnParts& kept) : m_ids(kept)
    {
        forEachPart(kept, [this](const auto& part) { m_kept[part.name] = {part.id, kindOf(AnyOwnPart(part))}; });
    }
    // Gives the part its id; true where it replaces one. Throws BadCell.
    bool enter(AnyOwnPart& part, const RowReader& row, std::size_t line)
    {
        plan::OwnPart& identity = identityOf(part);
        const auto kept = m_kept.find(identity.name);
        if (kept != m_kept.end() && kept->second.kind != kindOf(part))
            row.refuse(PartColumn::name, "storage.table-name-taken",
                       "\"" + identity.name.substr(0, 40) + "\" is there already as another kind of part",
                       "another name");
        const auto [earlier, fresh] = m_lines.emplace(identity.name, line);
        if (!fresh)
            row.refuse(PartColumn::name, "storage.table-name-twice",
                       "\"" + identity.name.substr(0, 40) + "\" stands in line " + std::to_string(earlier->second) +
                           " already",
                       "a name of its own, or one row of the two");
        identity.id = kept != m_kept.end() ? kept->second.id : m_ids.next(identity.name);
        return kept != m_kept.end();
    }

private:
    static std::size_t kindOf(const AnyOwnPart& part) { return part.index(); }
    struct Kept {
        std::string id;
        std::size_t kind = 0;
    };
    plan::OwnIds m_ids;
    std::map<std::string, Kept, std::less<>> m_kept;
    std::map<std::string, std::size_t, std::less<>> m_lines;
};

// Where commas part the cells a number has a point; elsewhere one comma between digits tells a file with decimal
// commas.
units::NumberStyle styleOf(const CsvTable& table)
{
    const auto isDigit = [](char c) { return c >= '0' && c <= '9'; };
    const auto hasComma = [&](const std::string& cell) {
        for (std::size_t i = 1; i + 1 < cell.size(); ++i)
            if (cell[i] == ',' && isDigit(cell[i - 1]) && isDigit(cell[i + 1]) && cell.find_first_of("0123456789") == 0)
                return true;
        return false;
    };
    if (table.separator != ',')
        for (const CsvRow& row : table.rows)
            if (std::any_of(row.cells.begin(), row.cells.end(), hasComma))
                return units::NumberStyle::ofDesktop(",", ".");
    return units::NumberStyle::point();
}

} // namespace

plan::OwnParts PartsPreview::parts() const
{
    plan::OwnParts all;
    for (const IncomingPart& incoming : coming) {
        if (const auto* pipe = std::get_if<plan::OwnPipe>(&incoming.part))
            all.pipes.push_back(*pipe);
        if (const auto* fitting = std::get_if<plan::OwnFitting>(&incoming.part))
            all.fittings.push_back(*fitting);
        if (const auto* pump = std::get_if<plan::OwnPump>(&incoming.part))
            all.pumps.push_back(*pump);
    }
    return all;
}

base::Outcome<PartsPreview> previewParts(std::string_view bytes, const plan::OwnParts& kept)
{
    const auto table = readCsv(bytes);
    if (!table)
        return table.refusal();
    const auto columns = columnsOf(table->header);
    if (!columns)
        return columns.refusal();
    const units::NumberStyle style = styleOf(*table);
    PartsPreview preview;
    preview.blankRows = table->blankRows;
    preview.unknownColumns = columns->unknown;
    Register known(kept);
    for (const CsvRow& row : table->rows) {
        const RowReader reader(row, *columns, style);
        try {
            AnyOwnPart part = partOf(reader);
            plan::OwnPart& identity = identityOf(part);
            identity.name = reader.text(PartColumn::name);
            identity.origin = reader.text(PartColumn::origin);
            identity.id = std::string(plan::ownPrefix) + "row"; // for the check; the true one follows
            checkPart(part, reader);
            const bool replaces = known.enter(part, reader, row.line);
            preview.coming.push_back({row.line, std::move(part), replaces});
        } catch (const BadCell& bad) {
            preview.refused.push_back({row.line, bad.refusal});
        }
    }
    return preview;
}

} // namespace sumpwright::storage

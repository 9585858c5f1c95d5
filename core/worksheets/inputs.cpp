#include "core/worksheets/inputs.hpp"

#include <algorithm>

#include "core/catalogue/nearest.hpp"
#include "core/units/parse.hpp"
#include "core/worksheets/lists.hpp"
#include "core/worksheets/pump_points.hpp"

namespace sumpwright::worksheets
{
namespace
{

using base::Outcome;
using base::Refusal;

// A refusal of a part, told as one of this input.
Refusal atInput(const std::string& name, Refusal refusal)
{
    refusal.place = refusal.place.empty() ? name : name + ", " + refusal.place;
    return refusal;
}

Refusal unknownInput(const Worksheet& worksheet, const std::string& name)
{
    std::vector<std::string> known;
    for (const InputSpec& spec : worksheet.inputs)
        known.push_back(spec.name);
    const std::string asked = name.size() > 40 ? name.substr(0, 40) + "..." : name;
    return {"worksheets.unknown-input", asked, "the worksheet " + worksheet.id + " has no such input",
            "its inputs are " + catalogue::commaList(known)};
}

bool isWithin(const Value& value, const InputSpec& spec)
{
    const auto limit = [&spec](const std::string& text) {
        const Outcome<Value> read = readValue(text, spec.kind, units::NumberStyle::point());
        base::ensure(read.ok(), "the limits of an input can be read");
        return numberOf(*read);
    };
    const double number = numberOf(value);
    if (!spec.least.empty() && (number < limit(spec.least) || (spec.leastExcluded && number == limit(spec.least))))
        return false;
    return spec.most.empty() || number <= limit(spec.most);
}

Outcome<Value> readChoice(const InputSpec& spec, const std::string& text)
{
    if (std::find(spec.choices.begin(), spec.choices.end(), text) != spec.choices.end())
        return Value(text);
    return Refusal{"worksheets.unknown-choice", "", "\"" + text.substr(0, 40) + "\" is not one of the choices",
                   acceptedBy(spec)};
}

template <class Found> Outcome<Value> asId(const Found& found, const std::string& id)
{
    return found.ok() ? Outcome<Value>(Value(id)) : Outcome<Value>(found.refusal());
}

Outcome<Value> readId(const InputSpec& spec, const std::string& id, const catalogue::Catalogue& tables)
{
    const std::string& table = spec.choices.front();
    if (table == "pumps")
        return asId(tables.pump(id), id);
    if (table == "fittings")
        return asId(tables.fitting(id), id);
    base::ensure(table == "media", "a table that worksheets look into");
    return asId(tables.medium(id), id);
}

Outcome<Value> readInput(const InputSpec& spec, const std::string& text, const catalogue::Catalogue& tables,
                         const units::NumberStyle& style)
{
    switch (spec.sort) {
    case InputSort::Quantity:
    case InputSort::Ratio:
        return readNumber(spec, text, style);
    case InputSort::Choice:
        return readChoice(spec, text);
    case InputSort::CatalogueId:
        return readId(spec, text, tables);
    case InputSort::List:
    case InputSort::LoadList: {
        const auto entries = readList(spec, text, style);
        return entries.ok() ? Outcome<Value>(Value(text)) : Outcome<Value>(entries.refusal());
    }
    case InputSort::Curve:
        break;
    }
    const auto points = readPumpPoints(text, style);
    return points.ok() ? Outcome<Value>(Value(text)) : Outcome<Value>(points.refusal());
}

std::string limitsOf(const InputSpec& spec)
{
    std::string limits;
    if (!spec.least.empty())
        limits = (spec.leastExcluded ? "more than " : "at least ") + spec.least;
    if (!spec.most.empty())
        limits += (limits.empty() ? "at most " : ", at most ") + spec.most;
    return limits;
}

std::string acceptedEntries(const InputSpec& spec)
{
    const std::string limits = limitsOf(spec);
    const std::string each = limits.empty() ? "" : ", each " + limits;
    if (spec.sort == InputSort::LoadList)
        return "masses on areas, as \"T1: 1060 kg on 1.2 m2; T2: 300 kg on 0.5 m2\"" + each;
    if (spec.kind == units::KindId::ratio)
        return "plain numbers parted by semicolons, as \"0.9; 2*0.4\"" + each;
    return "each entry a " + std::string(units::kindName(spec.kind)) + ", parted by semicolons, with a name before a " +
           "colon or without" + each + " (" + std::string(units::acceptedUnits(spec.kind)) + ")";
}

} // namespace

Outcome<Value> readNumber(const InputSpec& spec, const std::string& text, const units::NumberStyle& style)
{
    Outcome<Value> read = readValue(text, spec.kind, style);
    if (read.ok() && !isWithin(*read, spec))
        return Refusal{"worksheets.out-of-range", "", text.substr(0, 40) + " is out of range", acceptedBy(spec)};
    return read;
}

std::string acceptedBy(const InputSpec& spec)
{
    switch (spec.sort) {
    case InputSort::Ratio:
        return limitsOf(spec).empty() ? "a plain number" : "a plain number, " + limitsOf(spec);
    case InputSort::Choice:
        return "one of " + catalogue::commaList(spec.choices);
    case InputSort::CatalogueId:
        return "an id of the " + spec.choices.front() + " table";
    case InputSort::Curve:
        return "points as \"0 L/h: 3.2 m; 1125 L/h: 2.9 m; 4500 L/h: 0 m\"";
    case InputSort::List:
    case InputSort::LoadList:
        return acceptedEntries(spec);
    case InputSort::Quantity:
        break;
    }
    const std::string limits = limitsOf(spec);
    return std::string("a ") + std::string(units::kindName(spec.kind)) + (limits.empty() ? "" : ", " + limits) + " (" +
           std::string(units::acceptedUnits(spec.kind)) + ")";
}

Outcome<bool> Inputs::add(const InputSpec& spec, const std::string& text, const units::NumberStyle& style)
{
    const Outcome<Value> read = readInput(spec, text, *m_tables, style);
    if (!read)
        return atInput(spec.name, read.refusal());
    if (spec.kind == units::KindId::energyPrice)
        m_currency = units::currencyIn(text);
    m_values.push_back({spec.name, *read, unitOf(*read, m_currency)});
    return true;
}

std::optional<Refusal> faultOf(const Worksheet& worksheet, const InputText& input, const catalogue::Catalogue& tables,
                               const units::NumberStyle& style)
{
    const InputSpec* spec = worksheet.input(input.name);
    if (!spec)
        return unknownInput(worksheet, input.name);
    const Outcome<Value> read = readInput(*spec, input.text, tables, style);
    return read.ok() ? std::nullopt : std::optional(atInput(input.name, read.refusal()));
}

std::vector<std::string> missingInputs(const Worksheet& worksheet, const std::vector<InputText>& texts)
{
    std::vector<std::string> missing;
    for (const InputSpec& spec : worksheet.inputs)
        if (spec.required && spec.ifAbsent.empty() &&
            std::none_of(texts.begin(), texts.end(), [&spec](const InputText& text) { return text.name == spec.name; }))
            missing.push_back(spec.name);
    return missing;
}

Outcome<Inputs> Inputs::read(const Worksheet& worksheet, const std::vector<InputText>& texts,
                             const catalogue::Catalogue& tables, const units::NumberStyle& style)
{
    const auto given = [&texts](const std::string& name) {
        return std::find_if(texts.begin(), texts.end(), [&name](const InputText& t) { return t.name == name; });
    };
    for (auto text = texts.begin(); text != texts.end(); ++text) {
        if (!worksheet.input(text->name))
            return unknownInput(worksheet, text->name);
        if (given(text->name) != text)
            return Refusal{"worksheets.given-twice", text->name, "this input is given twice", "give it once"};
    }
    Inputs inputs(worksheet, tables, style);
    for (const InputSpec& spec : worksheet.inputs) {
        const auto text = given(spec.name);
        const bool copies = spec.ifAbsent.rfind('=', 0) == 0;
        if (text == texts.end() && spec.required && spec.ifAbsent.empty())
            return Refusal{"worksheets.missing-input", spec.name, "this input is missing", acceptedBy(spec)};
        if (text == texts.end() && copies) {
            if (const NamedValue* other = inputs.find(spec.ifAbsent.substr(1)))
                inputs.m_values.push_back({spec.name, other->value, other->unit});
        } else if (text != texts.end() || !spec.ifAbsent.empty()) {
            const bool typed = text != texts.end();
            const auto added = typed ? inputs.add(spec, text->text, style)
                                     : inputs.add(spec, spec.ifAbsent, units::NumberStyle::point());
            if (!added)
                return added.refusal();
        }
    }
    return inputs;
}

std::vector<ListEntry> Inputs::list(std::string_view name) const
{
    if (!has(name))
        return {};
    const InputSpec* spec = m_worksheet->input(name);
    base::ensure(spec, "a list among the inputs");
    return std::move(readList(*spec, word(name), m_style)).value();
}

std::string Inputs::shown(std::string_view name) const
{
    const NamedValue* found = find(name);
    base::ensure(found, "an input of this name");
    return worksheets::shown(found->value, m_style, m_currency);
}

const NamedValue* Inputs::find(std::string_view name) const
{
    for (const NamedValue& value : m_values)
        if (value.name == name)
            return &value;
    return nullptr;
}

} // namespace sumpwright::worksheets

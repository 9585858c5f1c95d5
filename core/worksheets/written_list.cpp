#include "core/catalogue/nearest.hpp"
#include "core/worksheets/inputs.hpp"
#include "core/worksheets/json_text.hpp"
#include "core/worksheets/written_answer.hpp"

namespace sumpwright::worksheets
{
namespace
{

template <class Entry> std::vector<std::string> idsOf(const std::vector<Entry>& entries)
{
    std::vector<std::string> ids;
    for (const Entry& entry : entries)
        ids.push_back(entry.id);
    return ids;
}

std::vector<std::string> choicesOf(const InputSpec& spec, const catalogue::Catalogue& tables)
{
    if (spec.sort != InputSort::CatalogueId)
        return spec.choices;
    const std::string& table = spec.choices.front();
    return table == "pumps"   ? idsOf(tables.pumps())
           : table == "media" ? idsOf(tables.media())
                              : idsOf(tables.fittings());
}

std::string kindOf(const InputSpec& spec)
{
    switch (spec.sort) {
    case InputSort::Quantity:
        return std::string(units::kindName(spec.kind));
    case InputSort::Ratio:
        return "ratio";
    case InputSort::Choice:
        return "choice";
    case InputSort::CatalogueId:
        return "id of the " + spec.choices.front() + " table";
    case InputSort::List:
        return "list of " + std::string(units::kindName(spec.kind));
    case InputSort::LoadList:
        return "list of mass on area";
    case InputSort::Curve:
        break;
    }
    return "curve";
}

std::string defaultOf(const InputSpec& spec)
{
    return spec.ifAbsent.rfind('=', 0) == 0 ? "the " + spec.ifAbsent.substr(1) : spec.ifAbsent;
}

void writeInput(JsonText& json, const InputSpec& spec, const catalogue::Catalogue& tables)
{
    json.beginObject().word("name", spec.name).word("meaning", spec.meaning).word("kind", kindOf(spec));
    json.word("unit", unitOfKind(spec.kind));
    json.flag("required", spec.required && spec.ifAbsent.empty());
    if (!spec.ifAbsent.empty())
        json.word("default", defaultOf(spec));
    if (!spec.least.empty())
        json.word(spec.leastExcluded ? "more_than" : "least", spec.least);
    if (!spec.most.empty())
        json.word("most", spec.most);
    if (!spec.choices.empty())
        json.words("choices", choicesOf(spec, tables));
    json.endObject();
}

std::string inputLine(const InputSpec& spec, const catalogue::Catalogue& tables)
{
    std::string line = "    " + spec.name;
    if (!spec.ifAbsent.empty())
        line += " (default " + defaultOf(spec) + ")";
    else if (!spec.required)
        line += " (may be left out)";
    line += ": " + spec.meaning + "; ";
    if (spec.sort == InputSort::CatalogueId)
        return line + catalogue::commaList(choicesOf(spec, tables)) + "\n";
    return line + acceptedBy(spec) + "\n";
}

} // namespace

std::string listJson(const std::vector<Worksheet>& worksheets, const catalogue::Catalogue& tables)
{
    JsonText json;
    json.beginObject().beginList("worksheets");
    for (const Worksheet& sheet : worksheets) {
        json.beginObject().word("id", sheet.id).word("question", sheet.question).word("formula", sheet.formula);
        json.beginList("inputs");
        for (const InputSpec& spec : sheet.inputs)
            writeInput(json, spec, tables);
        json.endList().beginList("outputs");
        for (const OutputSpec& spec : sheet.outputs) {
            json.beginObject().word("name", spec.name).word("meaning", spec.meaning).word("unit", spec.unit);
            json.flag("estimate", spec.estimate).endObject();
        }
        json.endList().words("sources", sheet.sources).beginList("notes");
        for (const Note& note : sheet.notes)
            json.beginObject().word("id", note.id).word("text", note.text).endObject();
        json.endList().endObject();
    }
    return json.endList().endObject().text();
}

std::string listLines(const std::vector<Worksheet>& worksheets, const catalogue::Catalogue& tables)
{
    std::string lines;
    for (const Worksheet& sheet : worksheets) {
        lines +=
            (lines.empty() ? "" : "\n") + sheet.id + ": " + sheet.question + "\n  " + sheet.formula + "\n  inputs\n";
        for (const InputSpec& spec : sheet.inputs)
            lines += inputLine(spec, tables);
        lines += "  outputs\n";
        for (const OutputSpec& spec : sheet.outputs)
            lines += "    " + spec.name + " [" + spec.unit + "]: " + spec.meaning +
                     (spec.estimate ? " (estimate)" : "") + "\n";
        lines += "  sources: " + catalogue::commaList(sheet.sources) + "\n";
    }
    return lines;
}

} // namespace sumpwright::worksheets

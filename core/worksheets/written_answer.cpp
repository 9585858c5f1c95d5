#include "core/worksheets/written_answer.hpp"

#include <algorithm>

#include "core/worksheets/json_text.hpp"

namespace sumpwright::worksheets
{
namespace
{

void writeValue(JsonText& json, const NamedValue& named)
{
    if (isWord(named.value))
        json.word("value", std::get<std::string>(named.value));
    else
        json.number("value", numberOf(named.value));
    json.word("unit", named.unit);
}

// The currency a price among the inputs is written in.
std::string currencyOf(const Answer& answer)
{
    for (const NamedValue& input : answer.inputs)
        if (std::holds_alternative<units::EnergyPrice>(input.value))
            return input.unit.substr(0, input.unit.find('/'));
    return {};
}

std::string noteText(const Worksheet& worksheet, const std::string& id)
{
    const auto note = std::find_if(worksheet.notes.begin(), worksheet.notes.end(),
                                   [&id](const Note& known) { return known.id == id; });
    return note == worksheet.notes.end() ? id : note->text;
}

std::string sourceLine(const std::string& key, const catalogue::Catalogue& tables)
{
    const auto source = tables.source(key);
    if (!source)
        return key;
    const catalogue::Basis basis = (*source)->basis;
    return key + ": " + (*source)->title + " (" + std::string(catalogue::basisKey(basis)) + ")";
}

std::string padded(const std::string& name, std::size_t width)
{
    return name + std::string(width > name.size() ? width - name.size() : 0, ' ');
}

} // namespace

std::string answerJson(const Answer& answer)
{
    JsonText json;
    json.beginObject().word("worksheet", answer.worksheet).beginObject("inputs");
    for (const NamedValue& input : answer.inputs) {
        json.beginObject(input.name);
        writeValue(json, input);
        json.endObject();
    }
    json.endObject().beginObject("outputs");
    for (const NamedValue& output : answer.outputs) {
        json.beginObject(output.name);
        writeValue(json, output);
        json.flag("estimate", output.estimate).endObject();
    }
    json.endObject().words("sources", answer.sources).words("notes", answer.notes);
    return json.endObject().text();
}

std::string answerLines(const Worksheet& worksheet, const Answer& answer, const catalogue::Catalogue& tables,
                        const units::NumberStyle& style)
{
    const std::string currency = currencyOf(answer);
    std::size_t width = 0;
    for (const auto* values : {&answer.inputs, &answer.outputs})
        for (const NamedValue& named : *values)
            width = std::max(width, named.name.size() + 2);
    std::string lines = worksheet.id + ": " + worksheet.question + "\n\nInputs\n";
    for (const NamedValue& input : answer.inputs)
        lines += "  " + padded(input.name, width) + shown(input.value, style, currency) + "\n";
    lines += "\nOutputs\n";
    for (const NamedValue& output : answer.outputs)
        lines += "  " + padded(output.name, width) + shown(output.value, style, currency) +
                 (output.estimate ? "  (estimate)" : "") + "\n";
    lines += "\nWorking\n";
    for (const std::string& line : answer.working)
        lines += "  " + line + "\n";
    if (!answer.notes.empty())
        lines += "\nNotes\n";
    for (const std::string& id : answer.notes)
        lines += "  " + noteText(worksheet, id) + "\n";
    lines += "\nSources\n";
    for (const std::string& key : answer.sources)
        lines += "  " + sourceLine(key, tables) + "\n";
    return lines;
}

} // namespace sumpwright::worksheets

#include "core/catalogue/row.hpp"

#include <cmath>
#include <set>

#include <nlohmann/json.hpp>

namespace sumpwright::catalogue
{

using nlohmann::json;

struct Row::Node {
    std::string where; // "pipes.json, row 14 (pvcu-pn16-32)"
    json fields;
    mutable std::set<std::string, std::less<>> read;

    const json* find(std::string_view field) const
    {
        const auto found = fields.find(std::string(field));
        if (found == fields.end())
            return nullptr;
        read.emplace(field);
        return &*found;
    }
};

namespace
{

std::shared_ptr<const Row::Node> makeNode(std::string where, json fields)
{
    auto node = std::make_shared<Row::Node>();
    node->where = std::move(where);
    node->fields = std::move(fields);
    return node;
}

[[noreturn]] void failFile(const std::string& file, std::string what, std::string accepts)
{
    throw BadRow{{"catalogue.bad-file", file, std::move(what), std::move(accepts)}};
}

json parsed(const std::string& file, const std::string& text)
{
    try {
        return json::parse(text);
    } catch (const json::parse_error& error) {
        const std::size_t upTo = std::min<std::size_t>(error.byte, text.size());
        const auto line = 1 + std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(upTo), '\n');
        failFile(file + ", line " + std::to_string(line), "this is not JSON", "mend the text there");
    }
}

std::string rowName(const std::string& file, std::size_t number, const json& fields)
{
    std::string name = file + ", row " + std::to_string(number);
    const auto id = fields.find("id");
    if (id != fields.end() && id->is_string())
        name += " (" + id->get<std::string>() + ")";
    return name;
}

} // namespace

bool Row::has(std::string_view field) const { return m_node->find(field) != nullptr; }

bool Row::isText(std::string_view field) const
{
    const json* found = m_node->find(field);
    return found && found->is_string();
}

std::string Row::textOr(std::string_view field, std::string_view otherwise) const
{
    const json* found = m_node->find(field);
    if (!found)
        return std::string(otherwise);
    if (!found->is_string())
        fail(field, "this is not a text", "a text in quotes, quantities with their unit: \"27.2 mm\"");
    return found->get<std::string>();
}

std::string Row::text(std::string_view field) const
{
    std::string found = textOr(field, "");
    require(!found.empty(), field, "this is missing or empty", "every row needs it");
    return found;
}

double Row::ratio(std::string_view field) const
{
    const json* found = m_node->find(field);
    if (!found || !found->is_number())
        fail(field, "a plain number is missing here", "a ratio, 0 or more");
    const double value = found->get<double>();
    require(std::isfinite(value) && value >= 0.0, field, "this number is below zero or not finite",
            "a ratio, 0 or more");
    return value;
}

bool Row::flag(std::string_view field) const
{
    const json* found = m_node->find(field);
    if (!found)
        return false;
    require(found->is_boolean(), field, "this is neither true nor false", "true or false");
    return found->get<bool>();
}

Row Row::part(std::string_view field) const
{
    const json* found = m_node->find(field);
    if (!found || !found->is_object())
        fail(field, "a group of fields is missing here", "{\"...\": ...}");
    return Row(makeNode(place(field), *found));
}

std::vector<Row> Row::parts(std::string_view field) const
{
    const json* found = m_node->find(field);
    if (!found || !found->is_array())
        fail(field, "a list is missing here", "[{...}, {...}]");
    std::vector<Row> rows;
    for (const json& item : *found) {
        const std::string where = place(field) + " " + std::to_string(rows.size() + 1);
        if (!item.is_object())
            throw BadRow{{"catalogue.bad-row", where, "this is not a group of fields", "{\"...\": ...}"}};
        rows.emplace_back(makeNode(where, item));
    }
    return rows;
}

Spread<double> Row::ratioSpread(std::string_view field) const
{
    const Row values = part(field);
    Spread<double> spread{values.ratio("low"), values.ratio("typical"), values.ratio("high")};
    values.requireAllRead();
    return spread;
}

std::string Row::place(std::string_view field) const
{
    return field.empty() ? m_node->where : m_node->where + ", " + std::string(field);
}

void Row::fail(std::string_view field, std::string what, std::string accepts) const
{
    throw BadRow{{"catalogue.bad-row", place(field), std::move(what), std::move(accepts)}};
}

void Row::checkRead(std::string_view field, const base::Refusal* refused, bool negative) const
{
    if (refused)
        fail(field, refused->what + " (\"" + textOr(field, "") + "\")", refused->accepts);
    require(!negative, field, "this is below zero", "zero or more");
}

void Row::requireAllRead() const
{
    for (const auto& [name, value] : m_node->fields.items())
        if (!m_node->read.contains(name))
            fail(name, "a field of this name is not known here", "check its spelling");
}

std::vector<Row> rowsOf(const std::string& file, const std::string& text)
{
    const json table = parsed(file, text);
    const auto groups = table.is_object() ? table.find("groups") : table.end();
    if (!table.is_object() || groups == table.end() || !groups->is_array())
        failFile(file, "the list \"groups\" is missing", "{\"groups\": [{\"common\": {...}, \"rows\": [{...}]}]}");
    std::vector<Row> rows;
    for (const json& group : *groups) {
        const bool sound = group.is_object() && group.contains("rows") && group["rows"].is_array() &&
                           group.value("common", json::object()).is_object();
        if (!sound)
            failFile(file, "a group has no list \"rows\"", "{\"common\": {...}, \"rows\": [{...}]}");
        for (const json& own : group["rows"]) {
            json fields = group.value("common", json::object());
            if (!own.is_object())
                failFile(file, "row " + std::to_string(rows.size() + 1) + " is not a group of fields", "{\"id\": ...}");
            fields.update(own);
            rows.emplace_back(makeNode(rowName(file, rows.size() + 1, fields), fields));
        }
    }
    return rows;
}

std::vector<std::pair<std::string, Row>> sourceRowsOf(const std::string& file, const std::string& text)
{
    const json table = parsed(file, text);
    const auto sources = table.is_object() ? table.find("sources") : table.end();
    if (!table.is_object() || sources == table.end() || !sources->is_object())
        failFile(file, "the group \"sources\" is missing", "{\"sources\": {\"key\": {\"title\": ...}}}");
    std::vector<std::pair<std::string, Row>> rows;
    for (const auto& [key, fields] : sources->items()) {
        if (!fields.is_object())
            failFile(file, "source \"" + key + "\" is not a group of fields", "{\"title\": ..., \"basis\": ...}");
        rows.emplace_back(key, Row(makeNode(file + ", source " + key, fields)));
    }
    return rows;
}

} // namespace sumpwright::catalogue

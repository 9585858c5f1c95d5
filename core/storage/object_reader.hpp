// ObjectReader: takes known keys out of one JSON object, refuses what is missing or of a wrong kind with line and
// path, and tells what was not asked for.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/storage/json_node.hpp"
#include "core/units/parse.hpp"

namespace sumpwright::storage
{

// Carries a refusal out of nested reading; caught where reading began.
struct Unreadable {
    base::Refusal refusal;
};
[[noreturn]] void refuseAt(const JsonNode& node, const std::string& path, std::string id, std::string what,
                           std::string accepts);
std::string placeText(const JsonNode& node, const std::string& path); // "line 14, /vessels/2/wall_height"

const std::string& textIn(const JsonNode& node, const std::string& path);
double ratioIn(const JsonNode& node, const std::string& path);
[[noreturn]] void refuseQuantity(const JsonNode& node, const std::string& path, const base::Refusal& refusal);
template <class Kind> Kind quantityIn(const JsonNode& node, const std::string& path)
{
    const auto read = units::parse<Kind>(textIn(node, path));
    if (!read)
        refuseQuantity(node, path, read.refusal());
    return read.value();
}

class ObjectReader
{
public:
    // Refuses a node that is no object. `unknown` collects "line 14, /vessels/2/colour".
    ObjectReader(const JsonNode& node, std::string path, std::vector<std::string>& unknown);

    const JsonNode* find(std::string_view key); // counts the key as known
    const JsonNode& need(std::string_view key);
    const std::vector<JsonNode>& listAt(std::string_view key); // absent: empty
    std::string pathOf(std::string_view key) const { return m_path + "/" + std::string(key); }
    const std::string& path() const { return m_path; }
    const JsonNode& node() const { return m_node; }

    std::string text(std::string_view key) { return textIn(need(key), pathOf(key)); }
    std::string optionalText(std::string_view key);
    std::uint64_t id(std::string_view key);
    int count(std::string_view key);
    bool flag(std::string_view key);
    double ratio(std::string_view key) { return ratioIn(need(key), pathOf(key)); }
    std::optional<double> optionalRatio(std::string_view key);
    template <class Kind> Kind quantity(std::string_view key) { return quantityIn<Kind>(need(key), pathOf(key)); }
    template <class Kind> std::optional<Kind> optionalQuantity(std::string_view key)
    {
        const JsonNode* node = find(key);
        return node ? std::optional<Kind>(quantityIn<Kind>(*node, pathOf(key))) : std::nullopt;
    }
    template <class Enum, std::size_t N>
    Enum oneOf(std::string_view key, const std::array<std::pair<Enum, std::string_view>, N>& words)
    {
        const JsonNode& node = need(key);
        const std::string& word = textIn(node, pathOf(key));
        std::string all;
        for (const auto& [value, name] : words) {
            if (word == name)
                return value;
            all += (all.empty() ? "" : ", ") + std::string(name);
        }
        refuseAt(node, pathOf(key), "storage.unknown-word", "'" + word + "' is not known here", all);
    }

    // Keys that were not asked for, as a compact object text; empty when there are none. Reports them.
    std::string extra();

private:
    const JsonNode& m_node;
    std::string m_path;
    std::vector<std::string>& m_unknown;
    std::vector<bool> m_asked;
};

} // namespace sumpwright::storage

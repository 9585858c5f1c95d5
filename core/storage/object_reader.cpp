#include "core/storage/object_reader.hpp"

#include <charconv>
#include <cmath>

namespace sumpwright::storage
{

namespace
{

constexpr std::uint64_t largestId = 9'007'199'254'740'991; // 2^53 - 1: every JSON reader keeps it whole

void requireKind(const JsonNode& node, const std::string& path, JsonNode::Kind kind)
{
    if (node.kind != kind)
        refuseAt(node, path, "storage.wrong-kind", std::string(nameOf(node.kind)) + " stands here",
                 std::string(nameOf(kind)));
}

std::uint64_t wholeIn(const JsonNode& node, const std::string& path, std::uint64_t low, std::uint64_t high)
{
    requireKind(node, path, JsonNode::Kind::number);
    std::uint64_t number = 0;
    const char* const end = node.text.data() + node.text.size();
    const auto read = std::from_chars(node.text.data(), end, number);
    if (read.ec != std::errc{} || read.ptr != end || number < low || number > high)
        refuseAt(node, path, "storage.not-whole", node.text + " is no whole number in range",
                 std::to_string(low) + " to " + std::to_string(high));
    return number;
}

} // namespace

std::string placeText(const JsonNode& node, const std::string& path)
{
    return "line " + std::to_string(node.line) + ", " + (path.empty() ? "/" : path);
}

void refuseAt(const JsonNode& node, const std::string& path, std::string id, std::string what, std::string accepts)
{
    throw Unreadable{{std::move(id), placeText(node, path), std::move(what), std::move(accepts)}};
}

void refuseQuantity(const JsonNode& node, const std::string& path, const base::Refusal& refusal)
{
    refuseAt(node, path, refusal.id, refusal.what, refusal.accepts);
}

const std::string& textIn(const JsonNode& node, const std::string& path)
{
    requireKind(node, path, JsonNode::Kind::text);
    return node.text;
}

double ratioIn(const JsonNode& node, const std::string& path)
{
    requireKind(node, path, JsonNode::Kind::number);
    double number = 0.0;
    const char* const end = node.text.data() + node.text.size();
    const auto read = std::from_chars(node.text.data(), end, number);
    if (read.ec != std::errc{} || read.ptr != end || !std::isfinite(number))
        refuseAt(node, path, "storage.not-finite", node.text + " is no finite number", "a finite number");
    return number;
}

ObjectReader::ObjectReader(const JsonNode& node, std::string path, std::vector<std::string>& unknown)
    : m_node(node), m_path(std::move(path)), m_unknown(unknown), m_asked(node.keys.size(), false)
{
    requireKind(node, m_path, JsonNode::Kind::object);
}

const JsonNode* ObjectReader::find(std::string_view key)
{
    for (std::size_t i = 0; i < m_node.keys.size(); ++i)
        if (m_node.keys[i] == key) {
            m_asked[i] = true;
            return &m_node.items[i];
        }
    return nullptr;
}

const JsonNode& ObjectReader::need(std::string_view key)
{
    const JsonNode* node = find(key);
    if (!node)
        refuseAt(m_node, m_path, "storage.missing-key", "the key \"" + std::string(key) + "\" is missing",
                 "the key with its value");
    return *node;
}

const std::vector<JsonNode>& ObjectReader::listAt(std::string_view key)
{
    static const std::vector<JsonNode> none;
    const JsonNode* node = find(key);
    if (!node)
        return none;
    requireKind(*node, pathOf(key), JsonNode::Kind::list);
    return node->items;
}

std::string ObjectReader::optionalText(std::string_view key)
{
    const JsonNode* node = find(key);
    return node ? textIn(*node, pathOf(key)) : std::string();
}

std::uint64_t ObjectReader::id(std::string_view key) { return wholeIn(need(key), pathOf(key), 1, largestId); }

int ObjectReader::count(std::string_view key)
{
    return static_cast<int>(wholeIn(need(key), pathOf(key), 0, 1'000'000));
}

bool ObjectReader::flag(std::string_view key)
{
    const JsonNode& node = need(key);
    requireKind(node, pathOf(key), JsonNode::Kind::boolean);
    return node.flag;
}

std::optional<double> ObjectReader::optionalRatio(std::string_view key)
{
    const JsonNode* node = find(key);
    return node ? std::optional<double>(ratioIn(*node, pathOf(key))) : std::nullopt;
}

std::string ObjectReader::extra()
{
    JsonNode rest = JsonNode::object();
    for (std::size_t i = 0; i < m_node.keys.size(); ++i) {
        if (m_asked[i])
            continue;
        m_unknown.push_back(placeText(m_node.items[i], pathOf(m_node.keys[i])));
        rest.add(m_node.keys[i], m_node.items[i]);
    }
    return rest.keys.empty() ? std::string() : compact(rest);
}

} // namespace sumpwright::storage

#include "core/storage/json_node.hpp"

#include "core/units/format.hpp"

namespace sumpwright::storage
{

namespace
{

JsonNode ofKind(JsonNode::Kind kind)
{
    JsonNode node;
    node.kind = kind;
    return node;
}

} // namespace

JsonNode JsonNode::ofText(std::string_view text)
{
    JsonNode node = ofKind(Kind::text);
    node.text = text;
    return node;
}

JsonNode JsonNode::ofRatio(double ratio)
{
    JsonNode node = ofKind(Kind::number);
    node.text = units::exactRatioText(ratio);
    return node;
}

JsonNode JsonNode::ofNumber(std::uint64_t number)
{
    JsonNode node = ofKind(Kind::number);
    node.text = std::to_string(number);
    return node;
}

JsonNode JsonNode::ofFlag(bool flag)
{
    JsonNode node = ofKind(Kind::boolean);
    node.flag = flag;
    return node;
}

JsonNode JsonNode::list() { return ofKind(Kind::list); }

JsonNode JsonNode::object() { return ofKind(Kind::object); }

void JsonNode::add(std::string_view key, JsonNode value)
{
    keys.emplace_back(key);
    items.push_back(std::move(value));
}

const JsonNode* JsonNode::find(std::string_view key) const
{
    for (std::size_t i = 0; i < keys.size(); ++i)
        if (keys[i] == key)
            return &items[i];
    return nullptr;
}

std::string_view nameOf(JsonNode::Kind kind)
{
    switch (kind) {
    case JsonNode::Kind::null:
        return "null";
    case JsonNode::Kind::boolean:
        return "true or false";
    case JsonNode::Kind::number:
        return "a number";
    case JsonNode::Kind::text:
        return "a text";
    case JsonNode::Kind::list:
        return "a list";
    case JsonNode::Kind::object:
        return "an object";
    }
    return "";
}

} // namespace sumpwright::storage

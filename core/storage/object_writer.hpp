// ObjectWriter: adds keys to a JSON object; what is absent is not written.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/base/id.hpp"
#include "core/storage/words.hpp"
#include "core/storage/write_elements.hpp"
#include "core/units/format.hpp"

namespace sumpwright::storage
{

class ObjectWriter
{
public:
    ObjectWriter& node(std::string_view key, JsonNode value)
    {
        m_node.add(key, std::move(value));
        return *this;
    }
    ObjectWriter& id(std::string_view key, base::Id id) { return node(key, JsonNode::ofNumber(id.number)); }
    ObjectWriter& text(std::string_view key, std::string_view text) { return node(key, JsonNode::ofText(text)); }
    ObjectWriter& textUnlessEmpty(std::string_view key, std::string_view words)
    {
        return words.empty() ? *this : text(key, words);
    }
    ObjectWriter& ratio(std::string_view key, double ratio) { return node(key, JsonNode::ofRatio(ratio)); }
    ObjectWriter& ratio(std::string_view key, const std::optional<double>& value)
    {
        return value ? ratio(key, *value) : *this;
    }
    ObjectWriter& flag(std::string_view key, bool flag) { return node(key, JsonNode::ofFlag(flag)); }
    ObjectWriter& flagIfSet(std::string_view key, bool set) { return set ? flag(key, true) : *this; }
    ObjectWriter& place(std::string_view key, plan::Point place) { return node(key, nodeOf(place)); }
    template <class Kind> ObjectWriter& quantity(std::string_view key, const Kind& quantity)
    {
        return text(key, units::exactText(quantity));
    }
    template <class Kind> ObjectWriter& quantity(std::string_view key, const std::optional<Kind>& value)
    {
        return value ? quantity(key, *value) : *this;
    }
    template <class Enum, std::size_t N>
    ObjectWriter& word(std::string_view key, Enum value, const words::Words<Enum, N>& list)
    {
        return text(key, words::wordOf(value, list));
    }
    // A list of objects, left out when empty.
    template <class Elements, class Make> ObjectWriter& list(std::string_view key, const Elements& elements, Make make)
    {
        if (elements.empty())
            return *this;
        JsonNode items = JsonNode::list();
        for (const auto& element : elements)
            items.items.push_back(make(element));
        return node(key, std::move(items));
    }
    JsonNode done(const std::string& extra)
    {
        addExtra(m_node, extra);
        return std::move(m_node);
    }

private:
    JsonNode m_node = JsonNode::object();
};

} // namespace sumpwright::storage

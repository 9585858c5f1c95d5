// JsonNode: a JSON value that knows the line it stood on; numbers keep their text. Reading is bounded in size, depth
// and count before anything is built; writing has one layout for everything.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/outcome.hpp"

namespace sumpwright::storage
{

struct JsonNode {
    enum class Kind { null, boolean, number, text, list, object };

    Kind kind = Kind::null;
    bool flag = false;
    int line = 0;
    std::string text;              // of a text, unescaped; of a number, as written
    std::vector<std::string> keys; // of an object, beside items
    std::vector<JsonNode> items;

    static JsonNode ofText(std::string_view text);
    static JsonNode ofRatio(double ratio);
    static JsonNode ofNumber(std::uint64_t number);
    static JsonNode ofFlag(bool flag);
    static JsonNode list();
    static JsonNode object();

    void add(std::string_view key, JsonNode value);
    const JsonNode* find(std::string_view key) const;
};

std::string_view nameOf(JsonNode::Kind kind); // "a text", "a list", ...

struct JsonLimits {
    std::size_t bytes = 0;
    std::size_t depth = 0;
    std::size_t values = 0;
};
// Refusal ids storage.too-large, storage.not-utf8, storage.too-deep, storage.too-many, storage.broken-json,
// storage.duplicate-key; the place is "line N".
base::Outcome<JsonNode> readJson(std::string_view text, const JsonLimits& limits);

// Two spaces of indent; what fits one line and is not nested deeper than a list in an object stays on one. Ends
// without a line break.
std::string laidOut(const JsonNode& node);
// In one line without spaces between.
std::string compact(const JsonNode& node);

} // namespace sumpwright::storage

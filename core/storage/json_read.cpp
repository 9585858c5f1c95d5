#include <algorithm>
#include <iterator>
#include <set>

#include <nlohmann/json.hpp>

#include "core/storage/json_node.hpp"
#include "core/storage/utf8.hpp"

namespace sumpwright::storage
{

namespace
{

// Where reading stands: the line of the last byte that was no blank, so that a number ends on its own line.
struct Standing {
    int line = 1;
    int lastLine = 1;
};

class CountingBytes
{
public:
    using iterator_category = std::input_iterator_tag;
    using value_type = char;
    using difference_type = std::ptrdiff_t;
    using pointer = const char*;
    using reference = const char&;

    CountingBytes(const char* at, Standing* standing) : m_at(at), m_standing(standing) {}
    reference operator*() const { return *m_at; }
    CountingBytes& operator++()
    {
        if (*m_at == '\n')
            ++m_standing->line;
        else if (*m_at != ' ' && *m_at != '\t' && *m_at != '\r')
            m_standing->lastLine = m_standing->line;
        ++m_at;
        return *this;
    }
    CountingBytes operator++(int)
    {
        CountingBytes before = *this;
        ++*this;
        return before;
    }
    friend bool operator==(const CountingBytes& a, const CountingBytes& b) { return a.m_at == b.m_at; }
    friend bool operator!=(const CountingBytes& a, const CountingBytes& b) { return a.m_at != b.m_at; }

private:
    const char* m_at;
    Standing* m_standing;
};

std::string placeOf(int line) { return "line " + std::to_string(line); }

// The parser spells a number's point as the process's locale does; JSON knows only the point.
std::string withPoint(std::string number)
{
    const std::size_t mark = number.find_first_not_of("+-0123456789eE");
    if (mark != std::string::npos)
        number[mark] = '.';
    return number;
}

class Builder : public nlohmann::json_sax<nlohmann::json>
{
public:
    Builder(const JsonLimits& limits, const Standing& standing) : m_limits(limits), m_standing(standing) {}

    bool null() override { return add({}); }
    bool boolean(bool value) override { return add(JsonNode::ofFlag(value)); }
    bool number_integer(number_integer_t value) override { return number(std::to_string(value)); }
    bool number_unsigned(number_unsigned_t value) override { return number(std::to_string(value)); }
    bool number_float(number_float_t, const string_t& written) override { return number(withPoint(written)); }
    bool string(string_t& value) override { return add(JsonNode::ofText(value)); }
    bool binary(binary_t&) override { return false; }
    bool start_object(std::size_t) override { return open(JsonNode::object()); }
    bool start_array(std::size_t) override { return open(JsonNode::list()); }
    bool end_object() override { return close(); }
    bool end_array() override { return close(); }
    bool key(string_t& key) override
    {
        if (!m_keys.back().insert(key).second)
            return refuse("storage.duplicate-key", "the key \"" + key + "\" stands twice in one object",
                          "each key once");
        m_open.back()->keys.push_back(key);
        return true;
    }
    bool parse_error(std::size_t, const std::string& token, const nlohmann::json::exception& error) override
    {
        std::string what = error.what();
        const auto colon = what.rfind("; ");
        what = "not readable as JSON near '" + token.substr(0, 40) + "'" +
               (colon == std::string::npos ? "" : " (" + what.substr(colon + 2) + ")");
        return refuse("storage.broken-json", validUtf8(what), "a complete JSON text");
    }

    JsonNode root;
    base::Refusal refusal;

private:
    bool refuse(std::string id, std::string what, std::string accepts)
    {
        refusal = {std::move(id), placeOf(m_standing.lastLine), std::move(what), std::move(accepts)};
        return false;
    }
    bool number(std::string written)
    {
        JsonNode node;
        node.kind = JsonNode::Kind::number;
        node.text = std::move(written);
        return add(std::move(node));
    }
    bool add(JsonNode node)
    {
        node.line = m_standing.lastLine;
        if (++m_values > m_limits.values)
            return refuse("storage.too-many", "more than " + std::to_string(m_limits.values) + " values",
                          "a smaller plan");
        if (m_open.empty())
            root = std::move(node);
        else
            m_open.back()->items.push_back(std::move(node));
        return true;
    }
    // Pointers to open nodes stay good: a list grows only at its last item, and that one is not open then.
    bool open(JsonNode node)
    {
        if (m_open.size() >= m_limits.depth)
            return refuse("storage.too-deep", "nested deeper than " + std::to_string(m_limits.depth) + " levels",
                          "a plan as this program writes it");
        if (!add(std::move(node)))
            return false;
        m_open.push_back(m_open.empty() ? &root : &m_open.back()->items.back());
        m_keys.emplace_back();
        return true;
    }
    bool close()
    {
        m_open.pop_back();
        m_keys.pop_back();
        return true;
    }

    const JsonLimits& m_limits;
    const Standing& m_standing;
    std::vector<JsonNode*> m_open;
    std::vector<std::set<std::string>> m_keys;
    std::size_t m_values = 0;
};

int lineAt(std::string_view text, std::size_t offset)
{
    return 1 + static_cast<int>(std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(offset), '\n'));
}

} // namespace

base::Outcome<JsonNode> readJson(std::string_view text, const JsonLimits& limits)
{
    if (text.size() > limits.bytes)
        return base::Refusal{"storage.too-large", "", std::to_string(text.size() / 1'000'000) + " MB of text",
                             "up to " + std::to_string(limits.bytes / 1'000'000) + " MB"};
    if (text.find_first_not_of(" \t\r\n") == std::string_view::npos)
        return base::Refusal{"storage.broken-json", "", "there is nothing in it: the file is empty",
                             "a plan saved by this program"};
    if (const auto bad = firstBadByte(text))
        return base::Refusal{"storage.not-utf8", placeOf(lineAt(text, *bad)),
                             "byte " + std::to_string(*bad + 1) + " is not UTF-8 text", "text in UTF-8"};
    Standing standing;
    Builder builder(limits, standing);
    const CountingBytes begin(text.data(), &standing);
    const CountingBytes end(text.data() + text.size(), &standing);
    if (!nlohmann::json::sax_parse(begin, end, &builder))
        return builder.refusal;
    return std::move(builder.root);
}

} // namespace sumpwright::storage

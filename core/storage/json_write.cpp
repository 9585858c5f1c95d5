
#include <algorithm>

#include "core/storage/json_node.hpp"
#include "core/storage/utf8.hpp"

namespace sumpwright::storage
{

namespace
{

constexpr std::size_t lineWidth = 110;

void appendEscaped(std::string& out, std::string_view text)
{
    static constexpr std::string_view digits = "0123456789abcdef";
    out += '"';
    for (const char letter : text) {
        const auto byte = static_cast<unsigned char>(letter);
        if (letter == '"' || letter == '\\') {
            out += '\\';
            out += letter;
        } else if (letter == '\n') {
            out += "\\n";
        } else if (letter == '\t') {
            out += "\\t";
        } else if (byte < 0x20 || byte == 0x7f) {
            out += "\\u00";
            out += digits[byte >> 4];
            out += digits[byte & 15];
        } else {
            out += letter;
        }
    }
    out += '"';
}

// Holds single values, or lists and objects of single values.
bool shallow(const JsonNode& node, int levels = 2)
{
    return node.items.empty() ||
           (levels > 0 && std::all_of(node.items.begin(), node.items.end(),
                                      [levels](const JsonNode& item) { return shallow(item, levels - 1); }));
}

class Writer
{
public:
    Writer(std::string_view comma, std::string_view colon) : m_comma(comma), m_colon(colon) {}

    void inLine(const JsonNode& node)
    {
        switch (node.kind) {
        case JsonNode::Kind::null:
            m_out += "null";
            break;
        case JsonNode::Kind::boolean:
            m_out += node.flag ? "true" : "false";
            break;
        case JsonNode::Kind::number:
            m_out += node.text;
            break;
        case JsonNode::Kind::text:
            appendEscaped(m_out, validUtf8(node.text));
            break;
        case JsonNode::Kind::list:
        case JsonNode::Kind::object:
            m_out += open(node);
            for (std::size_t i = 0; i < node.items.size(); ++i) {
                if (i > 0)
                    m_out += m_comma;
                key(node, i);
                inLine(node.items[i]);
            }
            m_out += close(node);
            break;
        }
    }

    void laidOut(const JsonNode& node, std::size_t indent)
    {
        if (shallow(node) && fits(node, indent))
            return;
        m_out += open(node);
        for (std::size_t i = 0; i < node.items.size(); ++i) {
            m_out += i > 0 ? ",\n" : "\n";
            m_out.append(indent + 2, ' ');
            key(node, i);
            laidOut(node.items[i], indent + 2);
        }
        m_out += '\n';
        m_out.append(indent, ' ');
        m_out += close(node);
    }

    std::string take() { return std::move(m_out); }

private:
    static char open(const JsonNode& node) { return node.kind == JsonNode::Kind::list ? '[' : '{'; }
    static char close(const JsonNode& node) { return node.kind == JsonNode::Kind::list ? ']' : '}'; }
    void key(const JsonNode& node, std::size_t i)
    {
        if (node.kind != JsonNode::Kind::object)
            return;
        appendEscaped(m_out, validUtf8(node.keys[i]));
        m_out += m_colon;
    }
    // Writes it in line when the line stays short; leaves no trace otherwise. Single values always fit.
    bool fits(const JsonNode& node, std::size_t indent)
    {
        const std::size_t before = m_out.size();
        inLine(node);
        if (node.items.empty() || m_out.size() - before + indent <= lineWidth)
            return true;
        m_out.resize(before);
        return false;
    }

    std::string m_out;
    std::string_view m_comma;
    std::string_view m_colon;
};

} // namespace

std::string laidOut(const JsonNode& node)
{
    Writer writer(", ", ": ");
    writer.laidOut(node, 0);
    return writer.take();
}

std::string compact(const JsonNode& node)
{
    Writer writer(",", ":");
    writer.inLine(node);
    return writer.take();
}

} // namespace sumpwright::storage

#include "tests/architecture/code_shape.hpp"

#include <algorithm>
#include <regex>

#include "tests/architecture/source_tree.hpp"

namespace sumpwright::architecture
{

namespace
{

enum class Opens { container, record, function, other };

std::string inOneLine(std::string_view text)
{
    std::string line;
    for (char c : text)
        if (c != ' ' && c != '\n' && c != '\t' && c != '\r')
            line += c;
        else if (!line.empty() && line.back() != ' ')
            line += ' ';
    while (!line.empty() && line.back() == ' ')
        line.pop_back();
    return line;
}

Opens kindOf(const std::string& head)
{
    static const std::regex container(R"((^|\W)(namespace|enum|extern)(\W|$))");
    static const std::regex record(
        R"(^(template ?<[^{]*> ?)?(public: |private: |protected: )?(class|struct|union)(\W|$))");
    if (std::regex_search(head, record))
        return Opens::record;
    if (std::regex_search(head, container) && head.find('(') == std::string::npos)
        return Opens::container;
    static const std::regex table(R"(^(template ?<[^{(]*> ?)?[^(=]*[^(=!<>]=[^=])"); // "array rows = to_array({"
    const bool function = head.find('(') != std::string::npos && !std::regex_search(head, table);
    return function || head.find("operator=") != std::string::npos ? Opens::function : Opens::other;
}

class Walker
{
public:
    explicit Walker(std::string_view text) : m_text(withoutCommentsAndStrings(text)) {}

    CodeShape walk()
    {
        for (m_at = 0; m_at < m_text.size(); ++m_at) {
            const char c = m_text[m_at];
            if (c == '\n')
                ++m_line;
            if (c == '{')
                open();
            else if (c == '}')
                close();
            else if (c == ';')
                endStatement();
            else
                m_head += c;
        }
        return std::move(m_shape);
    }

private:
    struct Level {
        Opens opens;
        std::string head;
        std::size_t line;
    };

    bool insideFunction() const
    {
        return std::any_of(m_levels.begin(), m_levels.end(), [](const Level& l) { return l.opens == Opens::function; });
    }

    void open()
    {
        std::string head = inOneLine(m_head);
        if (head.starts_with(' '))
            head.erase(0, 1);
        const Opens opens = insideFunction() ? Opens::other : kindOf(head);
        m_levels.push_back({opens, head, m_line});
        if (opens != Opens::other)
            m_head.clear();
    }

    void close()
    {
        if (m_levels.empty())
            return;
        const Level level = m_levels.back();
        m_levels.pop_back();
        if (level.opens == Opens::function)
            m_shape.functions.push_back({level.head, level.line, m_line});
        const std::size_t next = m_text.find_first_not_of(" \t\r\n", m_at + 1);
        const char after = next == std::string::npos ? '\0' : m_text[next];
        if (level.opens == Opens::function && (after == ',' || after == '{'))
            m_head = level.head; // a member initialised with braces: the body comes later
        else if (level.opens != Opens::other)
            m_head.clear();
    }

    void endStatement()
    {
        if (!m_levels.empty() && m_levels.back().opens == Opens::record)
            m_shape.members.push_back({inOneLine(m_head), m_line});
        if (m_levels.empty() || m_levels.back().opens != Opens::other)
            m_head.clear();
    }

    std::string m_text;
    std::size_t m_at = 0;
    std::size_t m_line = 1;
    std::string m_head;
    std::vector<Level> m_levels;
    CodeShape m_shape;
};

} // namespace

CodeShape shapeOf(std::string_view text) { return Walker(text).walk(); }

std::string memberName(const std::string& statement)
{
    static const std::regex notMember(
        R"(^ ?((public|private|protected): ?)*(using|friend|typedef|static_assert|template)\b)");
    if (std::regex_search(statement, notMember))
        return {};
    const std::string declared = statement.substr(0, statement.find('='));
    if (declared.find('(') != std::string::npos)
        return {};
    static const std::regex last(R"((\w+)\s*(\[[^\]]*\])?\s*(\{.*)?$)");
    std::smatch match;
    return std::regex_search(declared, match, last) ? match[1].str() : std::string{};
}

} // namespace sumpwright::architecture

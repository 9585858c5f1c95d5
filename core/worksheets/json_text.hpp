// JsonText: writes one JSON text, keys in the order they come, numbers with the point and as few digits as keep their
// bits. Indented by two spaces. Not finite numbers are a broken promise of the caller.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace sumpwright::worksheets
{

class JsonText
{
public:
    JsonText& beginObject(std::string_view key = {});
    JsonText& endObject();
    JsonText& beginList(std::string_view key = {});
    JsonText& endList();
    JsonText& word(std::string_view key, std::string_view text);
    JsonText& number(std::string_view key, double value);
    JsonText& flag(std::string_view key, bool value);
    JsonText& item(std::string_view text); // of a list
    JsonText& words(std::string_view key, const std::vector<std::string>& texts);

    // The whole text with a closing line end.
    std::string text() const { return m_text + "\n"; }

private:
    void open(std::string_view key, char bracket);
    void close(char bracket);
    void place(std::string_view key); // comma, line, indent, key

    std::string m_text;
    int m_depth = 0;
    bool m_first = true;
};

// A text in quotes, with what JSON wants escaped; bytes that are not UTF-8 become U+FFFD.
std::string quoted(std::string_view text);

} // namespace sumpwright::worksheets

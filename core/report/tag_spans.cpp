#include "core/report/tag_spans.hpp"

#include <algorithm>
#include <charconv>
#include <optional>
#include <tuple>

namespace sumpwright::report
{
namespace
{

struct Tag {
    std::string whole;
    std::string stem;
    std::optional<unsigned> number; // none: no number that could be counted on

    bool follows(const Tag& other) const
    {
        return number && other.number && stem == other.stem && *number == *other.number + 1;
    }
};

Tag tagOf(const std::string& whole)
{
    const auto digits = whole.find_last_not_of("0123456789") + 1;
    Tag tag{whole, whole.substr(0, digits), {}};
    unsigned number = 0;
    const char* end = whole.data() + whole.size();
    const bool plain = digits < whole.size() && whole[digits] != '0';
    if (const auto read = std::from_chars(whole.data() + digits, end, number);
        plain && read.ec == std::errc() && read.ptr == end)
        tag.number = number;
    else
        tag.stem = whole;
    return tag;
}

} // namespace

std::vector<TagSpan> spansOf(const std::vector<std::string>& tags)
{
    constexpr std::ptrdiff_t worthASpan = 3;
    std::vector<Tag> sorted;
    for (const std::string& tag : tags)
        sorted.push_back(tagOf(tag));
    std::sort(sorted.begin(), sorted.end(), [](const Tag& a, const Tag& b) {
        return std::tie(a.stem, a.number, a.whole) < std::tie(b.stem, b.number, b.whole);
    });
    std::vector<TagSpan> spans;
    for (auto from = sorted.begin(); from != sorted.end();) {
        auto to = from + 1;
        while (to != sorted.end() && to->follows(*(to - 1)))
            ++to;
        const auto count = to - from;
        if (count >= worthASpan)
            spans.push_back({from->whole, (to - 1)->whole, static_cast<std::size_t>(count)});
        else
            for (auto each = from; each != to; ++each)
                spans.push_back({each->whole, each->whole, 1});
        from = to;
    }
    return spans;
}

} // namespace sumpwright::report

#include "core/worksheets/lists.hpp"

#include <algorithm>
#include <cctype>

#include "core/units/measures.hpp"
#include "core/units/parse.hpp"
#include "core/worksheets/inputs.hpp"

namespace sumpwright::worksheets
{
namespace
{

using base::Outcome;
using base::Refusal;

constexpr std::size_t mostEntries = 5000;
constexpr std::size_t longestName = 60;
constexpr std::string_view onWord = " on ";

std::string_view trimmed(std::string_view text)
{
    const std::size_t begin = text.find_first_not_of(" \t\r\n");
    if (begin == std::string_view::npos)
        return {};
    return text.substr(begin, text.find_last_not_of(" \t\r\n") + 1 - begin);
}

bool isControl(char c) { return std::iscntrl(static_cast<unsigned char>(c)) != 0; }

std::optional<Refusal> nameFault(std::string_view name)
{
    if (name.size() > longestName)
        return Refusal{"worksheets.long-name", "", "the name before the colon is too long", "at most 60 characters"};
    if (std::any_of(name.begin(), name.end(), isControl))
        return Refusal{"worksheets.bad-name", "", "the name before the colon has signs that cannot be shown",
                       "letters, digits and spaces"};
    return std::nullopt;
}

Outcome<ListEntry> readLoad(ListEntry entry, std::string_view text, const InputSpec& spec,
                            const units::NumberStyle& style)
{
    const std::size_t at = text.find(onWord);
    if (at == std::string_view::npos)
        return Refusal{"worksheets.no-footprint", "", "the area it stands on is missing", "\"1060 kg on 1.2 m2\""};
    const auto mass = readNumber(spec, std::string(trimmed(text.substr(0, at))), style);
    if (!mass)
        return mass.refusal();
    const auto area = units::parse<units::Area>(trimmed(text.substr(at + onWord.size())), style);
    if (!area)
        return area.refusal();
    if (!(*area >= units::squareMetres(1e-4) && *area <= units::squareMetres(1e6)))
        return Refusal{"worksheets.out-of-range", "", "the area it stands on is out of range",
                       "at least 1 cm2, at most 1000000 m2"};
    entry.value = *mass;
    entry.on = *area;
    return entry;
}

Outcome<ListEntry> readEntry(std::string_view text, const InputSpec& spec, const units::NumberStyle& style)
{
    ListEntry entry;
    const std::size_t colon = text.rfind(':');
    if (colon != std::string_view::npos) {
        entry.name = trimmed(text.substr(0, colon));
        if (const auto fault = nameFault(entry.name))
            return *fault;
        text = trimmed(text.substr(colon + 1));
    }
    if (text.empty())
        return Refusal{"worksheets.empty-entry", "", "there is no value", acceptedBy(spec)};
    if (spec.sort == InputSort::LoadList)
        return readLoad(std::move(entry), text, spec, style);
    const auto value = readNumber(spec, std::string(text), style);
    if (!value)
        return value.refusal();
    entry.value = *value;
    return entry;
}

} // namespace

Outcome<std::vector<ListEntry>> readList(const InputSpec& spec, std::string_view text, const units::NumberStyle& style)
{
    std::vector<ListEntry> entries;
    do {
        const std::size_t end = text.find(';');
        const std::string_view part = trimmed(text.substr(0, end));
        text = end == std::string_view::npos ? std::string_view() : text.substr(end + 1);
        if (part.empty() && text.empty() && !entries.empty())
            break; // a closing semicolon
        if (entries.size() == mostEntries)
            return Refusal{"worksheets.too-many-entries", "", "the list has more than 5000 entries",
                           "at most 5000 entries"};
        auto entry = readEntry(part, spec, style);
        if (!entry) {
            Refusal refusal = entry.refusal();
            refusal.place = "entry " + std::to_string(entries.size() + 1);
            return refusal;
        }
        entries.push_back(*entry);
    } while (!text.empty());
    return entries;
}

std::string listName(std::string_view name)
{
    std::string kept(name.substr(0, longestName));
    while (!kept.empty() && kept.size() < name.size() &&
           (static_cast<unsigned char>(name[kept.size()]) & 0xC0U) == 0x80U)
        kept.pop_back(); // no half letter at the end
    for (char& c : kept)
        if (c == ';' || c == ':' || isControl(c))
            c = ' ';
    return std::string(trimmed(kept));
}

std::string listInStyle(const std::string& text, const units::NumberStyle& style)
{
    std::string styled;
    for (std::size_t begin = 0; begin <= text.size();) {
        const std::size_t end = std::min(text.find(';', begin), text.size());
        const std::size_t colon = text.rfind(':', end);
        const std::size_t from = colon != std::string::npos && colon >= begin && colon < end ? colon + 1 : begin;
        styled += text.substr(begin, from - begin);
        for (const char c : text.substr(from, end - from))
            styled += c == '.' ? style.decimalMark : std::string(1, c);
        if (end < text.size())
            styled += ';';
        begin = end + 1;
    }
    return styled;
}

} // namespace sumpwright::worksheets

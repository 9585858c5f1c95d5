#include "core/plan/own_parts.hpp"

#include "core/plan/limits.hpp"

namespace sumpwright::plan
{

namespace
{

constexpr std::size_t longestStem = 30; // leaves room for a number within limits::longestTag

std::string stemOf(std::string_view name)
{
    std::string stem;
    for (const char c : name) {
        const bool upper = c >= 'A' && c <= 'Z';
        if (upper || (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9'))
            stem += upper ? static_cast<char>(c - 'A' + 'a') : c;
        else if (!stem.empty() && stem.back() != '-')
            stem += '-';
        if (stem.size() == longestStem)
            break;
    }
    while (!stem.empty() && stem.back() == '-')
        stem.pop_back();
    return stem.empty() ? "part" : stem;
}

} // namespace

bool isOwn(std::string_view id) { return id.substr(0, ownPrefix.size()) == ownPrefix; }

const OwnPart* findOwn(const OwnParts& parts, std::string_view id)
{
    const OwnPart* found = nullptr;
    forEachPart(parts, [&](const OwnPart& part) {
        if (part.id == id)
            found = &part;
    });
    return found;
}

OwnIds::OwnIds(const OwnParts& taken)
{
    forEachPart(taken, [this](const OwnPart& part) { m_taken.insert(part.id); });
}

std::string OwnIds::next(std::string_view name)
{
    const std::string stem = std::string(ownPrefix) + stemOf(name);
    int& number = m_lastNumber[stem];
    std::string id;
    do {
        ++number;
        id = number == 1 ? stem : stem + "-" + std::to_string(number);
    } while (!m_taken.insert(id).second);
    return id;
}

} // namespace sumpwright::plan

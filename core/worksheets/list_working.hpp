// The entries of a list as lines of the working, and their sum: "V: T1 12 L + B1 4 L = 16 L".
#pragma once

#include <string>
#include <vector>

#include "core/worksheets/answer_draft.hpp"
#include "core/worksheets/lists.hpp"

namespace sumpwright::worksheets
{

// The sum of a list's quantities, first to last.
template <class Kind> Kind sumOf(const std::vector<ListEntry>& entries)
{
    Kind sum{};
    for (const ListEntry& entry : entries)
        sum += std::get<Kind>(entry.value);
    return sum;
}

// At most forty entries are written out; of more it says how many follow.
template <class Kind>
void workSum(AnswerDraft& draft, const std::string& symbol, const std::vector<ListEntry>& entries, const Kind& sum)
{
    constexpr std::size_t most = 40;
    for (std::size_t i = 0; i < entries.size() && i < most; ++i)
        draft.work(i == 0 ? symbol + " = " : std::string("  + "),
                   entries[i].name.empty() ? std::string() : entries[i].name + " ", entries[i].value);
    if (entries.size() > most)
        draft.work("  + ", std::to_string(entries.size() - most), " more");
    draft.work(entries.empty() ? symbol + " = " : std::string("  = "), sum);
}

} // namespace sumpwright::worksheets

// The same intent for several elements whose values differ otherwise, as one step.
#pragma once

#include <vector>

#include "core/plan/edits/sequence.hpp"

namespace sumpwright::ui::properties
{

// `of` makes the edit of one id. At least one id.
template <class Of> plan::Edit eachOf(const std::vector<base::Id>& ids, const Of& of)
{
    std::vector<plan::Edit> edits;
    for (const auto id : ids)
        edits.push_back(of(id));
    if (edits.size() == 1)
        return edits.front();
    const std::string intent = edits.front().intent;
    return plan::inSequence(intent, std::move(edits));
}

} // namespace sumpwright::ui::properties

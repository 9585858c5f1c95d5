#include "core/plan/edits/sequence.hpp"

#include <algorithm>

namespace sumpwright::plan
{

Edit inSequence(std::string intent, std::vector<Edit> edits)
{
    std::vector<base::Id> subjects;
    for (const Edit& edit : edits)
        for (const base::Id id : edit.subjects)
            if (std::find(subjects.begin(), subjects.end(), id) == subjects.end())
                subjects.push_back(id);
    const auto apply = [edits = std::move(edits)](const Plan& before) -> base::Outcome<Plan> {
        base::Outcome<Plan> outcome = before;
        for (const Edit& edit : edits) {
            outcome = edit.apply(outcome.value());
            if (!outcome)
                break;
        }
        return outcome;
    };
    return {std::move(intent), std::move(subjects), apply};
}

} // namespace sumpwright::plan

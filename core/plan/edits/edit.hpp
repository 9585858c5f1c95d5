// Edit: one intent of the person, as a pure function from plan to plan; the only way a plan changes.
//
// A refused edit leaves the plan as it was. Ids that do not exist are a refusal, never a crash. New elements get
// their ids from the plan's nextId, so the same edit on the same plan gives the same plan.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "core/base/outcome.hpp"
#include "core/plan/plan.hpp"

namespace sumpwright::plan
{

struct Edit {
    std::string intent;             // id of the wording, e.g. "edit.move"; the text room makes the words
    std::vector<base::Id> subjects; // elements meant, for the wording ("Move grow bed B2")
    std::function<base::Outcome<Plan>(const Plan&)> apply;
};

} // namespace sumpwright::plan

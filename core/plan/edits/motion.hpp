// Motion: a shift, a turn about a place and a lift, done to elements of a draft with all that goes along.
#pragma once

#include <vector>

#include "core/plan/edits/draft.hpp"

namespace sumpwright::plan
{

struct Motion {
    Point shift{};
    Point about{};
    units::Angle turn = units::radians(0.0);
    units::Length lift = units::metres(0.0);
};
void moveAll(Draft& draft, const std::vector<base::Id>& elements, const Motion& motion);

} // namespace sumpwright::plan

// Several edits as one step: each applied to the plan the one before gave; refused as a whole when one is refused.
#pragma once

#include <string>
#include <vector>

#include "core/plan/edits/edit.hpp"

namespace sumpwright::plan
{

Edit inSequence(std::string intent, std::vector<Edit> edits);

} // namespace sumpwright::plan

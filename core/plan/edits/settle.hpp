// Settling: after a change, the ends of runs are brought to the ports, pumps and tees they meet.
#pragma once

#include "core/plan/edits/draft.hpp"

namespace sumpwright::plan
{

void settleEnds(Draft& draft);

} // namespace sumpwright::plan

// What a service finding is told of: beds together, pumps together, runs together, with the most that comes out.
#pragma once

#include <vector>

#include "core/findings/rules.hpp"

namespace sumpwright::findings
{

// Adds one note for the beds, one for the pumps and one for the runs that `wanting` holds for.
void tellService(const Situation& situation, const Rule& rule, bool (*wanting)(const assessment::Service&),
                 std::vector<Finding>& findings);

} // namespace sumpwright::findings

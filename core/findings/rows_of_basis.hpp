// tellRowsOfBasis: a note for every row of the catalogue with this basis that the plan uses, naming all that use it.
#pragma once

#include "core/findings/rules.hpp"

namespace sumpwright::findings
{

void tellRowsOfBasis(catalogue::Basis basis, const Situation& situation, const Rule& rule,
                     std::vector<Finding>& findings);

} // namespace sumpwright::findings

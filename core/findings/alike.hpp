// Alike: findings that say the same of several elements become one that names them all.
#pragma once

#include <cstddef>
#include <vector>

#include "core/assessment/finding.hpp"
#include "core/plan/plan.hpp"

namespace sumpwright::findings
{

// Among the findings from `first` on. Only those about one element, and perhaps ports of it, are joined; amounts count
// as the same to a millionth.
void joinAlike(std::vector<assessment::Finding>& findings, std::size_t first, const plan::Plan& plan);

} // namespace sumpwright::findings

// Service worked out from the pipework, the vessels as water sees them, and their levels with the pump stopped (where
// these are not known: while it runs).
#pragma once

#include <vector>

#include "core/assessment/basin.hpp"
#include "core/assessment/service_result.hpp"
#include "core/assessment/water_result.hpp"

namespace sumpwright::assessment
{

ServiceResult serviceResultOf(const Pipework& pipework, const std::vector<Basin>& basins, const WaterResult& water);

} // namespace sumpwright::assessment

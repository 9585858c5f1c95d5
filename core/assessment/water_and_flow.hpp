// Circuits turned into results: levels and volumes per vessel and state, flows and losses per run, grades at tees.
#pragma once

#include <vector>

#include "core/assessment/pump_stop.hpp"
#include "core/assessment/run_result.hpp"
#include "core/assessment/running.hpp"
#include "core/assessment/sump_result.hpp"
#include "core/assessment/water_result.hpp"

namespace sumpwright::assessment
{

WaterResult waterResultOf(const Pipework& pipework, const std::vector<Basin>& basins, const Circuits& circuits,
                          const StoppedCircuits& stopped);
FlowResult flowResultOf(const Pipework& pipework, const Circuits& circuits);
SumpResults sumpResultsOf(const Pipework& pipework, const std::vector<Basin>& basins, const Circuits& circuits,
                          const StoppedCircuits& stopped);

} // namespace sumpwright::assessment

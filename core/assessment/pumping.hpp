// Duty points, power and curves of the pumps, and the path along which their head goes; see pump_result.hpp and
// head_path.hpp for what is told. The system curve takes 13 solves of the network a pump,
// 7 where the network is large.
#pragma once

#include <optional>

#include "core/assessment/head_path.hpp"
#include "core/assessment/pump_result.hpp"
#include "core/assessment/running.hpp"

namespace sumpwright::assessment
{

PumpResults pumpResultsOf(const Pipework& pipework, const Circuits& circuits, const Stage<units::Density>& density,
                          const std::optional<units::EnergyPrice>& price);
HeadPaths headPathsOf(const Pipework& pipework, const Circuits& circuits);

} // namespace sumpwright::assessment

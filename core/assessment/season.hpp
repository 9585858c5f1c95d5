// Solving a plan's circuits at the two ends of the year; see season_result.hpp for what is told. Two cold solves of
// every circuit: about what the circuits themselves cost twice over.
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "core/assessment/running.hpp"
#include "core/assessment/season_result.hpp"

namespace sumpwright::assessment
{

// The temperatures a year brings; the one designed for lies between them, whatever else is given.
PerYearEnd<units::Temperature> yearsWaterOf(units::Temperature design, const std::optional<units::Temperature>& coldest,
                                            const std::optional<units::Temperature>& warmest);

SeasonResult seasonOf(const Pipework& pipework, const std::vector<Basin>& basins,
                      const PerYearEnd<units::Temperature>& water);

} // namespace sumpwright::assessment

// The worksheet behind a figure of a proposal, with the proposal's own numbers; see core/assessment/working.hpp.
#pragma once

#include <optional>

#include "core/assessment/working.hpp"
#include "core/design/pipe_sizes.hpp"
#include "core/design/pump_choice.hpp"
#include "core/design/valve_setting.hpp"

namespace sumpwright::design
{

// Each is nothing where there is nothing to work out: a shut valve, a pump of unknown power.
// Of a valve: what it loses at the opening proposed.
std::optional<assessment::Working> workingOf(const ValveOpening& valve, const plan::Plan& plan,
                                             const catalogue::Catalogue& catalogue);
std::optional<assessment::Working> workingOf(const PumpChoice& choice, const plan::Site& site);
// The power behind the energy cost of one choice of pipes.
std::optional<assessment::Working> workingOf(const PipeChoice& choice, const std::optional<units::EnergyPrice>& price,
                                             const plan::Site& site, const std::optional<units::Density>& density);

} // namespace sumpwright::design

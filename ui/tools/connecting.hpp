// Connecting: from where to where a run between two elements leads, and its first way. Pure; both the pipe tool and
// "Connect" use it.
#pragma once

#include <optional>
#include <vector>

#include "core/catalogue/catalogue.hpp"
#include "core/plan/edits/draw_run.hpp"
#include "core/plan/plan.hpp"

namespace sumpwright::ui::tools
{

// Where water leaves an element, or comes into it: a free port of the right kind, else a new one; a pump, a tee, the
// middle of a run. Nothing for what has no water.
std::optional<plan::Target> sourceOf(const plan::Plan& plan, base::Id element);
std::optional<plan::Target> sinkOf(const plan::Plan& plan, base::Id element);

// The port that would be made where a run starts from, or ends at, a place in a vessel. At the wall a side outlet near
// the bottom, inside a standpipe; an end is an inlet above the rim. `level` overrides the level.
plan::NewPort outletAt(const plan::Vessel& vessel, plan::Point place, std::optional<units::Elevation> level = {});
plan::NewPort inletAt(const plan::Vessel& vessel, plan::Point place, std::optional<units::Elevation> level = {});

// What a run that starts there can only be: pressure from a pump, gravity from a lip or a side outlet, from a run or
// tee what that is. Nothing where it may be either.
std::optional<plan::Service> serviceFrom(const plan::Plan& plan, const plan::Target& from);
// Runs and tees of the other service: a run drawn past them is not meant to end there.
std::vector<base::Id> ofOtherService(const plan::Plan& plan, plan::Service service);

// Pressure where a pump or a pressure run is met, gravity otherwise.
plan::Service serviceBetween(const plan::Plan& plan, const plan::Target& from, const plan::Target& to);
// The pipe of usual size: 32 mm for pressure, 50 mm for gravity, the nearest the catalogue has. Empty: no pipe at all.
std::string usualPipe(const catalogue::Catalogue& catalogue, plan::Service service);

// A run between two elements by one corner at most. Nothing where they cannot be connected.
std::optional<plan::RunWish> connectWish(const plan::Plan& plan, const catalogue::Catalogue& catalogue, base::Id a,
                                         base::Id b);

} // namespace sumpwright::ui::tools

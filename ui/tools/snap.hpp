// Snap: the place meant by a place pointed at - a port, pump, tee, run, vessel corner, edge or centre within reach,
// otherwise the grid - with its name and, for pipes, what a run's end would be led to.
#pragma once

#include <optional>
#include <vector>

#include "core/plan/edits/target.hpp"
#include "core/plan/plan.hpp"
#include "ui/canvas/overlay.hpp"

namespace sumpwright::ui::tools
{

struct SnapRules {
    units::Length grid = units::millimetres(100.0);
    units::Length reach = units::millimetres(50.0); // on the floor: some pixels
    bool on = true;                                 // off: the place itself
    bool toGrid = true;
    bool connections = false;      // ports, pumps, tees, runs and vessels as targets of a pipe
    bool outlines = true;          // corners, edges, centres
    std::vector<base::Id> leftOut; // elements and ports that are moved themselves, or a run's own start
};

struct Snapped {
    plan::Point at;
    std::optional<canvas::SnapCue> cue;
    plan::Target target = plan::Nowhere{};
    bool connected() const { return !std::holds_alternative<plan::Nowhere>(target); }
};

Snapped snap(const plan::Plan& plan, plan::Point raw, const SnapRules& rules);

// The nearest multiple of the step.
units::Length toStep(units::Length value, units::Length step);
plan::Point toGrid(plan::Point raw, units::Length step);

// The vessel whose outline holds a place; the highest where several do. Null: none.
const plan::Vessel* vesselAt(const plan::Plan& plan, plan::Point place);
// A place in the vessel's own frame, unturned, from its centre.
plan::Point offsetIn(const plan::Vessel& vessel, plan::Point place);

// Every place a run's end may be led to without making anything new: free ports, pumps, tees. In reading order.
struct Connection {
    plan::Target target;
    plan::Point at;
    QString name;
};
std::vector<Connection> connectionsOf(const plan::Plan& plan);

} // namespace sumpwright::ui::tools

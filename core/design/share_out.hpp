// Sharing out: which flows the outlets of one circuit can be given, every settable valve open, before any is throttled.
//
// In this order: all targets with the rest left to the outlets without one; the rest throttled alike, down to a
// twentieth of what it takes beside them; then targets and rest (from what it takes with every valve open) scaled
// alike. With leave to change the pump's speed, the
// lowest speed that gives all targets is looked for first; never above 1 or the speed drawn. Shares are found by
// halving to 1e-7: spare head falls as flows rise (a tree of pipes; in rings nearly always).
#pragma once

#include <optional>
#include <vector>

#include "core/base/stop.hpp"
#include "core/design/draw_off.hpp"

namespace sumpwright::design
{

enum class OutletPart {
    target,      // drawn at its target, or the share of it
    rest,        // no target, but a valve that could hold it back
    shut,        // target 0
    bystander,   // takes what comes: no target and no valve, or into the sump
    unreachable, // no water comes to it at any flow
};

struct SharedOut {
    std::vector<OutletPart> parts; // by outlet
    double share = 1.0;            // of the targets
    double restShare = 1.0;        // of what the outlets without a target would take
    Draws draws;
    DrawnOff drawn;
    units::Head missing; // at the neediest outlet for all targets in full; 0: none
};

// Nothing: the network has no solution even with nothing drawn.
std::optional<SharedOut> shareOut(DrawOff& bench, std::vector<OutletPart> parts,
                                  const std::vector<units::Flow>& targets, const base::StopToken& stop);

// The lowest speed, from a fifth up to `highest`, at which all targets are met with the rest open. Nothing: none.
// Leaves the bench at some other speed.
std::optional<double> lowestSpeed(DrawOff& bench, const std::vector<OutletPart>& parts,
                                  const std::vector<units::Flow>& targets, double highest, const base::StopToken& stop);

} // namespace sumpwright::design

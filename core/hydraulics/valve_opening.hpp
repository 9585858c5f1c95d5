// What a partly closed valve adds to its open K, by how far it is open (1 open, 0 closed).
// Ball and butterfly: angle closed = 90 degrees x (1 - opening); gate: part of the lift. ln K is straight between the
// rows of the tables, K itself below the first row; beyond the last row the last line goes on (marked extrapolated).
// At 80 degrees or 95 % of the gate the valve counts as closed and the link leaves the network.
// Source: Weisbach's classical tables for metal plug cocks, gates and butterflies, from memory; plastic ball valves
// differ by 30 % either way. Key: weisbach-valves.
#pragma once

#include <optional>

#include "core/base/outcome.hpp"
#include "core/hydraulics/fittings.hpp"

namespace sumpwright::hydraulics
{

enum class ThrottleKind { Ball, Gate, Butterfly };

struct ValveLoss {
    bool closed = false;
    double added = 0.0;        // K on top of the open valve's; 0 when closed
    bool extrapolated = false; // beyond the published table
};

// Refusal: "hydraulics.opening-out-of-range", place "opening", outside 0 to 1.
base::Outcome<ValveLoss> throttlingLoss(ThrottleKind kind, double opening);

// The table a fitting is throttled by: ball, gate and butterfly valves; none for all others.
std::optional<ThrottleKind> throttleOf(FittingKind kind);

} // namespace sumpwright::hydraulics

// The opening of a throttling valve that adds a wanted K, and the most it can add: valve_opening.hpp read backwards.
// Opening 1 open ... 0 closed; K on the velocity in the pipe. Same tables, same range, same source: weisbach-valves.
#pragma once

#include "core/hydraulics/valve_opening.hpp"

namespace sumpwright::hydraulics
{

double leastOpening(ThrottleKind kind); // a hair before the valve counts as closed
double mostAdded(ThrottleKind kind);    // K there
// 1 for nothing to add, leastOpening() where no opening adds so much. Promise of the caller: added is a number.
double openingFor(ThrottleKind kind, double added);

// A plastic ball valve's K may lie this part above or below the table. Source: our own inference, weisbach-valves.
constexpr double ballValveSpread = 0.3;

} // namespace sumpwright::hydraulics

// Throttles: the valves that can be set by hand, and which outlets each of them commands.
//
// A run commands the outlets that no other way leads to: taking it out leaves them without any pump or other supply.
// A run in a ring commands none. A valve whose K the person typed cannot be set: its opening tells nothing.
#pragma once

#include <cstddef>
#include <vector>

#include "core/assessment/circuit.hpp"
#include "core/assessment/network_of.hpp"
#include "core/design/outlet.hpp"
#include "core/hydraulics/valve_opening.hpp"
#include "core/plan/edits/valve.hpp"

namespace sumpwright::design
{

struct Throttle {
    plan::ValveRef valve;
    hydraulics::ThrottleKind kind = hydraulics::ThrottleKind::Ball;
    double opening = 1.0; // as drawn
};

// Gate valves first, for they are set more finely; otherwise from the run's start.
std::vector<Throttle> throttlesOf(const plan::Run& run);

// An outlet of one circuit, with the place of its run there.
struct CircuitOutlet {
    Outlet outlet;
    std::size_t run = 0; // index into the circuit's runs
};
std::vector<CircuitOutlet> outletsIn(const assessment::Circuit& circuit, const assessment::Pipework& pipework,
                                     const std::vector<Outlet>& outlets);

struct CommandingRun {
    std::size_t run = 0;              // index into the circuit's runs
    std::vector<std::size_t> outlets; // indices into the outlets given; never empty
    std::vector<Throttle> throttles;  // never empty
};

// Upstream before downstream. `network`: of this circuit, with every throttle open so that no run is missing.
std::vector<CommandingRun> commandingRuns(const plan::Plan& plan, const assessment::Pipework& pipework,
                                          const assessment::Circuit& circuit, const assessment::CircuitNetwork& network,
                                          const std::vector<CircuitOutlet>& outlets);

} // namespace sumpwright::design

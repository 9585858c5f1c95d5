// The two running states of a circuit: who holds how much water at which level while the pump runs, and what flows.
//
// runningMost: every sump at its entry, every bed with a drain level emptied to it. runningLeast: the same water, every
// bed at its flood level; the sump's level follows from the water that is left, found by a secant on the level, to
// 1e-11 m. Levels over submerged mouths and flows are settled together. Several sumps in one circuit: the water
// cannot be shared out between them, so only runningMost is computed.
#pragma once

#include <memory>
#include <vector>

#include "core/assessment/circuit.hpp"
#include "core/assessment/gravity.hpp"
#include "core/assessment/network_of.hpp"
#include "core/assessment/stage.hpp"
#include "core/assessment/states.hpp"

namespace sumpwright::assessment
{

// Vectors are indexed as the circuit's basins or runs.
struct CircuitState {
    std::vector<Stage<Standing>> standing; // sumps too
    std::vector<Stage<units::Flow>> inflow;
    std::vector<PumpedFlow> pumped;
    std::vector<Stage<units::Flow>> gravityRuns;
    std::vector<bool> meanOfTide;
    std::vector<std::optional<OpenFlow>> open;              // of each gravity run
    std::vector<std::optional<units::Elevation>> teeLevels; // that gravity water needs at each tee
    CircuitNetwork network;                                 // solved
    units::Volume inVessels;                                // of those whose level is known

    friend bool operator==(const CircuitState& a, const CircuitState& b);
};

struct SolvedCircuit {
    Circuit circuit;
    PerRunningState<Stage<CircuitState>> state;

    friend bool operator==(const SolvedCircuit&, const SolvedCircuit&) = default;
};

struct Circuits {
    // What the networks inside were made from: equal flows of other pipes are not the same circuits.
    std::shared_ptr<const Pipework> pipework;
    std::vector<SolvedCircuit> all;
    friend bool operator==(const Circuits&, const Circuits&) = default;
};

Circuits solveCircuits(std::shared_ptr<const Pipework> pipework, const std::vector<Basin>& basins,
                       const Stage<units::KinematicViscosity>& viscosity);

} // namespace sumpwright::assessment

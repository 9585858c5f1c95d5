// What comes down when the pump stops, circuit by circuit; the rules are those told in sump_result.hpp.
// Every circuit with a pump running and one sump; without a pump running the pipes count as empty.
#pragma once

#include <vector>

#include "core/assessment/running.hpp"
#include "core/assessment/sump_result.hpp"

namespace sumpwright::assessment
{

struct StoppedCircuit {
    Stage<PumpStop> stop;                  // not computed without a sump, or with several
    std::vector<Stage<Standing>> standing; // of the circuit's basins, sump included
    std::vector<RunContent> pipes;         // what stays in each of the circuit's runs

    friend bool operator==(const StoppedCircuit&, const StoppedCircuit&) = default;
};

struct StoppedCircuits {
    std::vector<StoppedCircuit> all; // as the solved circuits
    friend bool operator==(const StoppedCircuits&, const StoppedCircuits&) = default;
};

StoppedCircuits stopPumps(const Pipework& pipework, const std::vector<Basin>& basins, const Circuits& circuits);

// Water in each run of a circuit while it runs, the same in both states: pressure runs full, gravity runs that carry
// water at most flow half full.
std::vector<RunContent> runningContents(const Pipework& pipework, const SolvedCircuit& circuit);
bool pumpRuns(const Pipework& pipework, const Circuit& circuit);

} // namespace sumpwright::assessment

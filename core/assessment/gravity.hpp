// Gravity: how the water that reaches vessels runs on from vessel to vessel by itself, and the level each stands at.
// Beds with a bell siphon pass on their mean inflow. Sumps take and keep. A tee in gravity runs joins what comes in;
// one that divides, and a loop, are not computed.
#pragma once

#include <cstddef>
#include <vector>

#include "core/assessment/circuit.hpp"
#include "core/assessment/standing.hpp"

namespace sumpwright::assessment
{

// Indexed as the circuit's basins and runs.
struct GravityFlows {
    std::vector<Stage<units::Flow>> inflow; // into each basin, pumped and by gravity
    std::vector<Stage<Standing>> standing;  // of each basin that is no sump; sumps: not asked
    std::vector<Stage<units::Flow>> runs;   // gravity runs, positive as drawn; others: not asked
    std::vector<bool> meanOfTide;           // of each run
};

class Gravity
{
public:
    // All three outlive this object.
    Gravity(const Pipework& pipework, const std::vector<Basin>& basins, const Circuit& circuit);

    // `pumped`: of each basin of the circuit.
    GravityFlows flowsFor(const std::vector<PumpedFlow>& pumped, RunningState state) const;

private:
    struct Leg {
        std::size_t run = 0; // index into the circuit's runs
        bool forward = true; // the water runs as drawn
    };
    struct Node { // basins of the circuit first, then its tees
        std::vector<Leg> in;
        std::vector<Leg> out; // tees only; basins by their outlets
    };
    struct Ends {
        std::size_t source;
        std::size_t target;
        bool forward;
    };

    std::size_t nodeOf(const DrawnEnd& end) const;
    Ends endsOf(const DrawnRun& run) const;
    void order(const std::vector<Ends>& ends);
    Stage<units::Flow> arriving(std::size_t node, const GravityFlows& flows, bool& tide) const;
    void passBasin(std::size_t node, PumpedFlow pumped, RunningState state, GravityFlows& flows) const;
    void passTee(std::size_t node, GravityFlows& flows) const;
    void send(Leg leg, const Stage<units::Flow>& flow, bool tide, GravityFlows& flows) const;

    const Pipework& m_pipework;
    const std::vector<Basin>& m_basins;
    const Circuit& m_circuit;
    std::vector<Node> m_nodes;
    std::vector<std::size_t> m_order; // upstream first; nodes in a loop are left out
};

} // namespace sumpwright::assessment

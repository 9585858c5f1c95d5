// Gravity: how the water that reaches vessels runs on from vessel to vessel by itself, and the level each stands at.
//
// Vessels and tees are settled together, upstream and back, to 1e-12 m: a vessel stands as high as its outlets, and the
// runs behind them, need for what it receives; water that stands at the end of a run holds back what comes. At a tee
// that divides, the runs that lead on share the flow so that all need the same level there: by levels and by losses.
// Beds with a bell siphon pass on their mean inflow. Sumps take and keep. Runs that lead in a circle are not computed.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/assessment/circuit.hpp"
#include "core/assessment/open_flow.hpp"
#include "core/assessment/standing.hpp"
#include "core/hydraulics/gravity_run.hpp"

namespace sumpwright::assessment
{

// Indexed as the circuit's basins, runs and tees.
struct GravityFlows {
    std::vector<Stage<units::Flow>> inflow;                 // into each basin, pumped and by gravity
    std::vector<Stage<Standing>> standing;                  // of each basin that is no sump; sumps: not asked
    std::vector<Stage<units::Flow>> runs;                   // gravity runs, positive as drawn; others: not asked
    std::vector<bool> meanOfTide;                           // of each run
    std::vector<std::optional<units::Elevation>> teeLevels; // that the water needs at each tee; none: no gravity water
};

class Gravity
{
public:
    // All three outlive this object.
    Gravity(const Pipework& pipework, const std::vector<Basin>& basins, const Circuit& circuit,
            units::KinematicViscosity viscosity);

    // `pumped` and `levels` of each basin of the circuit; of the levels only those of sumps are read.
    GravityFlows flowsFor(const std::vector<PumpedFlow>& pumped, const std::vector<units::Elevation>& levels,
                          RunningState state) const;
    // The water along each gravity run; none where its flow is not known, or its pipe is not.
    std::vector<std::optional<OpenFlow>> waterIn(const GravityFlows& flows,
                                                 const std::vector<units::Elevation>& levels) const;

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
        std::size_t source = 0;
        std::size_t target = 0;
        bool forward = true;
    };
    // One settling: what each node was last worked out from.
    struct Work;

    std::size_t nodeOf(const DrawnEnd& end) const;
    Ends endsOf(const DrawnRun& run) const;
    void order();
    bool isBasin(std::size_t node) const { return node < m_circuit.basins.size(); }
    const Basin& basinAt(std::size_t node) const { return m_basins[m_circuit.basins[node]]; }
    std::size_t placeOfRun(std::size_t run) const; // of a run of the pipework among the circuit's
    Stage<units::Flow> arriving(std::size_t node, const GravityFlows& flows, bool& tide) const;
    std::optional<units::Elevation> tailOf(std::size_t run, const GravityFlows& flows,
                                           const std::vector<units::Elevation>& levels) const;
    std::vector<std::size_t> runsOutOf(std::size_t node) const;
    bool unchanged(std::size_t node, const Stage<units::Flow>& arrived, Work& work) const;
    bool pass(std::size_t node, Work& work) const; // true when anything was worked out anew
    void passBasin(std::size_t node, const Stage<units::Flow>& arrived, bool tide, Work& work) const;
    void passTee(std::size_t node, Stage<units::Flow> flow, bool tide, Work& work) const;
    // How the water behind a run is taken: it stands where it stood last, or it answers to the flow at once.
    enum class Behind { holds, answers };
    units::Elevation needOf(std::size_t run, units::Flow flow, const Work& work, Behind behind) const;
    struct Passing { // a tee
        units::Elevation level;
        units::Flow flow;
        std::vector<units::Flow> runs; // that lead on
    };
    Passing passing(std::size_t tee, units::Flow last, units::Flow most, const Work& work) const;
    Passing teeNeeds(std::size_t tee, units::Flow flow, const Work& work) const;
    units::Flow takenBy(std::size_t run, units::Elevation level, units::Flow most, const Work& work) const;
    units::Flow besides(std::size_t run, std::size_t tee, const Work& work) const;
    bool leadsToTee(std::size_t run) const;
    std::size_t mainRun(std::size_t tee) const;
    static void send(Leg leg, const Stage<units::Flow>& flow, bool tide, GravityFlows& flows);
    void tellLoops(GravityFlows& flows) const;

    const Pipework& m_pipework;
    const std::vector<Basin>& m_basins;
    const Circuit& m_circuit;
    units::KinematicViscosity m_viscosity;
    std::vector<Ends> m_ends;                                    // of each run
    std::vector<std::optional<hydraulics::GravityPipe>> m_pipes; // of each run that carries gravity water
    std::vector<Node> m_nodes;
    std::vector<std::size_t> m_order; // upstream first; nodes in a loop are left out
};

} // namespace sumpwright::assessment

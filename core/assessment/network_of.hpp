// The network of one circuit's pressure runs, ready to be solved for given water levels.
//
// Every end at a vessel is a level of its own: a submerged mouth at the water's level, a free one at its own level
// and one-way. Pumps lift from their vessel's water. A run that rises above what standing water or a pump at no flow
// can reach never fills, and is closed. Tees are junctions. A run with a closed valve, an open end or a
// fault is left out; so is a pump that is off. Indices of basins, runs, pumps and tees are those of the circuit.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/assessment/circuit.hpp"
#include "core/hydraulics/network.hpp"
#include "core/plan/run_ends.hpp"

namespace sumpwright::assessment
{

class CircuitNetwork
{
public:
    CircuitNetwork(const Pipework& pipework, const std::vector<Basin>& basins, const Circuit& circuit,
                   units::KinematicViscosity viscosity);

    void setLevels(const std::vector<units::Elevation>& levels); // of the basins
    // In place of the pump, put this flow in at its outlet; and back to the pump.
    void impose(std::size_t pump, units::Flow flow);
    void release(std::size_t pump);
    // In place of the water at a run's mouth, draw this flow there, until levels are set again. Gives the level that
    // the grade there has to reach for the water to come out; nothing where the run is not in the network or ends at
    // no mouth on that side.
    std::optional<units::Elevation> drawAt(std::size_t run, plan::RunSide side, units::Flow flow);
    void solve() { m_result = hydraulics::solve(m_network); }

    const hydraulics::NetworkResult& result() const { return m_result; }
    // Null: not in the network. The link's flow is along the link; flowAlong() is along the run as drawn.
    const hydraulics::LinkFlow* runLink(std::size_t run) const { return linkAt(m_runs[run].link); }
    const hydraulics::LinkFlow* pumpLink(std::size_t pump) const { return linkAt(m_pumps[pump].link); }
    units::Flow flowAlong(std::size_t run) const;
    std::optional<units::Elevation> gradeAtNode(std::size_t node) const;

    static constexpr std::size_t none = static_cast<std::size_t>(-1);
    std::size_t startNode(std::size_t run) const { return m_runs[run].start.node; }
    std::size_t endNode(std::size_t run) const { return m_runs[run].end.node; }
    std::size_t pumpOutlet(std::size_t pump) const { return m_pumps[pump].outlet; }
    std::size_t pumpSuction(std::size_t pump) const { return m_pumps[pump].suction; }
    std::size_t mouthNode(std::size_t run, plan::RunSide side) const
    {
        return side == plan::RunSide::from ? startNode(run) : endNode(run);
    }
    std::size_t teeNode(std::size_t tee) const { return m_tees[tee]; }
    std::size_t nodeCount() const { return m_network.nodes.size(); }
    std::size_t linkCount() const { return m_network.links.size(); }
    units::KinematicViscosity viscosity() const { return m_network.viscosity; }

    // What pressure runs bring into each basin, and what they and its pumps take out of it.
    std::vector<PumpedFlow> pumpedFlows() const;
    // Can the water of this basin, at this level, cover a mouth of a pressure run?
    bool covers(std::size_t basin, units::Elevation level) const
    {
        return m_lowestMouths[basin] && *m_lowestMouths[basin] < level;
    }

private:
    struct End {
        std::size_t node = none;
        std::size_t basin = none; // none: no mouth
        units::Elevation mouth;
    };
    struct RunLink {
        std::size_t link = none;
        End start;
        End end;
        units::Elevation crest; // highest centre line
        bool check = false;     // non-return valve
        hydraulics::PipeLink pipe;
    };
    struct PumpParts {
        std::size_t link = none;
        std::size_t suction = none;
        std::size_t outlet = none;
        std::size_t basin = none;
        hydraulics::LinkPart part;
    };

    void addPump(const DrawnPump& pump, const std::vector<Basin>& basins, const Circuit& circuit);
    void addRun(const DrawnRun& run, const Pipework& pipework, const std::vector<Basin>& basins,
                const Circuit& circuit);
    End endOf(const DrawnEnd& end, const Pipework& pipework, const std::vector<Basin>& basins, const Circuit& circuit);
    void raiseReach(const std::vector<units::Elevation>& levels);
    void direct(const RunLink& run, const std::vector<units::Elevation>& levels);
    const hydraulics::LinkFlow* linkAt(std::size_t link) const;

    hydraulics::Network m_network;
    hydraulics::NetworkResult m_result;
    std::vector<RunLink> m_runs;
    std::vector<PumpParts> m_pumps;
    std::vector<std::size_t> m_tees;                             // nodes
    std::vector<std::optional<units::Elevation>> m_lowestMouths; // by basin
    std::optional<units::Elevation> m_reach;                     // none: no water stands anywhere
};

} // namespace sumpwright::assessment

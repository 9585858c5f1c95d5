#include "core/design/throttles.hpp"

#include <algorithm>
#include <array>

#include "core/assessment/place_in.hpp"
#include "core/hydraulics/fittings.hpp"

namespace sumpwright::design
{
namespace
{

using assessment::CircuitNetwork;

// The nodes of a circuit's network and what hangs on them.
class Ways
{
public:
    Ways(const assessment::Pipework& pipework, const assessment::Circuit& circuit, const CircuitNetwork& network,
         const std::vector<CircuitOutlet>& outlets)
        : m_network(network), m_runsAt(network.nodeCount()), m_supply(network.nodeCount(), false),
          m_outletsAt(network.nodeCount())
    {
        for (std::size_t run = 0; run < circuit.runs.size(); ++run) {
            if (network.startNode(run) == CircuitNetwork::none || network.endNode(run) == CircuitNetwork::none)
                continue;
            m_runsAt[network.startNode(run)].push_back(run);
            m_runsAt[network.endNode(run)].push_back(run);
            const assessment::DrawnRun& drawn = pipework.runs[circuit.runs[run]];
            if (drawn.from.kind == assessment::EndKind::vessel && drawn.from.portKind != plan::PortKind::inlet)
                m_supply[network.startNode(run)] = true;
            if (drawn.to.kind == assessment::EndKind::vessel && drawn.to.portKind != plan::PortKind::inlet)
                m_supply[network.endNode(run)] = true;
        }
        for (std::size_t pump = 0; pump < circuit.pumps.size(); ++pump)
            m_supply[network.pumpOutlet(pump)] = true;
        for (std::size_t i = 0; i < outlets.size(); ++i)
            if (const auto node = network.mouthNode(outlets[i].run, outlets[i].outlet.side);
                node != CircuitNetwork::none)
                m_outletsAt[node].push_back(i);
    }

    // The outlets that only this run leads to; empty where it commands none.
    std::vector<std::size_t> commandedBy(std::size_t run) const
    {
        const std::size_t start = m_network.startNode(run), end = m_network.endNode(run);
        if (start == CircuitNetwork::none || end == CircuitNetwork::none || start == end)
            return {};
        const Side fromStart = sideOf(start, run, end), fromEnd = sideOf(end, run, start);
        if (fromStart.meetsOther || fromStart.supplied == fromEnd.supplied)
            return {};
        return fromStart.supplied ? fromEnd.outlets : fromStart.outlets;
    }

private:
    struct Side {
        bool meetsOther = false;
        bool supplied = false;
        std::vector<std::size_t> outlets;
    };

    // All that can be reached from a node without passing through the run left out.
    Side sideOf(std::size_t node, std::size_t leftOut, std::size_t other) const
    {
        Side side;
        std::vector<bool> seen(m_runsAt.size(), false);
        std::vector<std::size_t> waiting{node};
        seen[node] = true;
        while (!waiting.empty()) {
            const std::size_t at = waiting.back();
            waiting.pop_back();
            side.meetsOther = side.meetsOther || at == other;
            side.supplied = side.supplied || m_supply[at];
            side.outlets.insert(side.outlets.end(), m_outletsAt[at].begin(), m_outletsAt[at].end());
            for (const std::size_t run : m_runsAt[at])
                for (const std::size_t next : {m_network.startNode(run), m_network.endNode(run)})
                    if (run != leftOut && !seen[next]) {
                        seen[next] = true;
                        waiting.push_back(next);
                    }
        }
        std::sort(side.outlets.begin(), side.outlets.end());
        return side;
    }

    const CircuitNetwork& m_network;
    std::vector<std::vector<std::size_t>> m_runsAt;
    std::vector<bool> m_supply;
    std::vector<std::vector<std::size_t>> m_outletsAt;
};

} // namespace

std::vector<Throttle> throttlesOf(const plan::Run& run)
{
    std::vector<Throttle> throttles;
    for (const plan::Valve& valve : run.valves) {
        const auto fitting = hydraulics::fittingFromId(valve.fittingId);
        const auto kind = fitting ? hydraulics::throttleOf(*fitting) : std::nullopt;
        if (kind && !valve.lossCoefficient)
            throttles.push_back({{run.id, valve.id}, *kind, valve.opening});
    }
    std::stable_sort(throttles.begin(), throttles.end(), [](const Throttle& a, const Throttle& b) {
        return (a.kind == hydraulics::ThrottleKind::Gate) > (b.kind == hydraulics::ThrottleKind::Gate);
    });
    return throttles;
}

std::vector<CircuitOutlet> outletsIn(const assessment::Circuit& circuit, const assessment::Pipework& pipework,
                                     const std::vector<Outlet>& outlets)
{
    std::vector<CircuitOutlet> here;
    for (const Outlet& outlet : outlets)
        if (const std::size_t run = assessment::placeIn(circuit.runs, pipework.runs, outlet.run);
            run != circuit.runs.size())
            here.push_back({outlet, run});
    return here;
}

std::vector<CommandingRun> commandingRuns(const plan::Plan& plan, const assessment::Pipework& pipework,
                                          const assessment::Circuit& circuit, const CircuitNetwork& network,
                                          const std::vector<CircuitOutlet>& outlets)
{
    const Ways ways(pipework, circuit, network, outlets);
    std::vector<CommandingRun> commanding;
    for (std::size_t run = 0; run < circuit.runs.size(); ++run) {
        const plan::Run* drawn = plan.runs.find(pipework.runs[circuit.runs[run]].id);
        std::vector<Throttle> throttles = drawn ? throttlesOf(*drawn) : std::vector<Throttle>();
        if (throttles.empty())
            continue;
        std::vector<std::size_t> commanded = ways.commandedBy(run);
        if (!commanded.empty())
            commanding.push_back({run, std::move(commanded), std::move(throttles)});
    }
    std::stable_sort(commanding.begin(), commanding.end(), [](const CommandingRun& a, const CommandingRun& b) {
        return a.outlets.size() > b.outlets.size();
    });
    return commanding;
}

} // namespace sumpwright::design

#include "core/assessment/head_path.hpp"

#include <algorithm>
#include <optional>

#include "core/assessment/pumping.hpp"
#include "core/hydraulics/fittings.hpp"

namespace sumpwright::assessment
{
namespace
{

constexpr std::size_t none = CircuitNetwork::none;

// The circuit's pressure runs by the way the water takes.
class Ways
{
public:
    Ways(const Pipework& pipework, const SolvedCircuit& solved, const CircuitState& state)
        : m_pipework(pipework), m_circuit(solved.circuit), m_network(state.network),
          m_feeder(state.network.nodeCount(), none)
    {
        for (std::size_t run = 0; run < m_circuit.runs.size(); ++run) {
            const units::Flow flow = sizeOfFlow(run);
            if (flow <= units::Flow())
                continue;
            std::size_t& feeder = m_feeder[target(run)];
            if (feeder == none || sizeOfFlow(feeder) < flow)
                feeder = run;
        }
    }

    units::Flow sizeOfFlow(std::size_t run) const
    {
        const units::Flow flow = m_network.flowAlong(run);
        return flow < units::Flow() ? -flow : flow;
    }
    bool forward(std::size_t run) const { return m_network.flowAlong(run) > units::Flow(); }
    std::size_t source(std::size_t run) const
    {
        return forward(run) ? m_network.startNode(run) : m_network.endNode(run);
    }
    std::size_t target(std::size_t run) const
    {
        return forward(run) ? m_network.endNode(run) : m_network.startNode(run);
    }
    const DrawnRun& drawn(std::size_t run) const { return m_pipework.runs[m_circuit.runs[run]]; }
    const DrawnEnd& outlet(std::size_t run) const { return forward(run) ? drawn(run).to : drawn(run).from; }
    bool leaves(std::size_t run) const
    {
        return sizeOfFlow(run) > units::Flow() && outlet(run).kind == EndKind::vessel;
    }

    // Runs from a pump's outlet to this run, by the strongest feeder at every tee; empty when another source feeds it.
    std::vector<std::size_t> pathFrom(std::size_t pumpOutlet, std::size_t run) const
    {
        std::vector<std::size_t> path{run};
        while (source(path.back()) != pumpOutlet) {
            const std::size_t feeder = m_feeder[source(path.back())];
            if (feeder == none || path.size() > m_circuit.runs.size())
                return {};
            path.push_back(feeder);
        }
        std::reverse(path.begin(), path.end());
        return path;
    }

    units::Head toSpare(std::size_t run) const
    {
        return units::liftBetween(*m_network.gradeAtNode(target(run)), *m_network.gradeAtNode(source(run)));
    }

private:
    const Pipework& m_pipework;
    const Circuit& m_circuit;
    const CircuitNetwork& m_network;
    std::vector<std::size_t> m_feeder; // of each node: the run that brings it most water
};

void addLosses(HeadPath& path, const DrawnRun& run, const hydraulics::LinkFlow& link, bool forward)
{
    const units::Head friction = link.frictionLoss < units::Head() ? -link.frictionLoss : link.frictionLoss;
    path.steps.push_back({HeadStepKind::friction, run.id, 0, friction});
    units::Head opening = run.openingHead;
    for (std::size_t step = 0; step < run.fittings.size(); ++step) {
        const std::size_t i = forward ? step : run.fittings.size() - 1 - step;
        const FittingLoss& fitting = run.fittings[i];
        units::Head head = hydraulics::fittingLoss(fitting.k * fitting.count, link.velocity);
        if (fitting.oneWay) {
            head += opening;
            opening = units::Head();
        }
        const bool exit = fitting.role == FittingRole::exit;
        path.steps.push_back({exit ? HeadStepKind::exit : HeadStepKind::fitting, run.id, i, head});
    }
}

Stage<HeadPath> pathOf(const Pipework& pipework, const SolvedCircuit& solved, const CircuitState& state,
                       std::size_t place)
{
    const DrawnPump& pump = pipework.pumps[solved.circuit.pumps[place]];
    const hydraulics::LinkFlow* link = state.network.pumpLink(place);
    const Reason nowhere{"no-path", "the pump brings water to no outlet", pump.id};
    if (!link || link->flow <= units::Flow())
        return Stage<HeadPath>::notSolved(nowhere);
    const Ways ways(pipework, solved, state);
    std::vector<std::size_t> worst;
    std::optional<units::Head> least;
    for (std::size_t run = 0; run < solved.circuit.runs.size(); ++run) {
        if (!ways.leaves(run) || (least && ways.toSpare(run) >= *least))
            continue;
        std::vector<std::size_t> runs = ways.pathFrom(state.network.pumpOutlet(place), run);
        if (runs.empty())
            continue;
        least = ways.toSpare(run);
        worst = std::move(runs);
    }
    if (worst.empty())
        return Stage<HeadPath>::notSolved(nowhere);
    HeadPath path;
    path.vessel = ways.outlet(worst.back()).element;
    path.port = ways.outlet(worst.back()).port;
    path.pumpHead = link->headGained;
    path.toSpare = *least;
    path.steps.push_back({HeadStepKind::lift, path.vessel, 0,
                          units::liftBetween(*state.network.gradeAtNode(state.network.pumpSuction(place)),
                                             *state.network.gradeAtNode(ways.target(worst.back())))});
    for (const std::size_t run : worst) {
        path.runs.push_back(ways.drawn(run).id);
        addLosses(path, ways.drawn(run), *state.network.runLink(run), ways.forward(run));
    }
    return path;
}

} // namespace

HeadPaths headPathsOf(const Pipework& pipework, const Circuits& circuits)
{
    HeadPaths paths;
    for (const SolvedCircuit& solved : circuits.all) {
        const Stage<CircuitState>& least = solved.state[RunningState::least];
        for (std::size_t i = 0; i < solved.circuit.pumps.size(); ++i) {
            const DrawnPump& pump = pipework.pumps[solved.circuit.pumps[i]];
            Stage<HeadPath> path = Stage<HeadPath>::missingAs(Stage<HeadPath>());
            if (pump.fault)
                path = Stage<HeadPath>::notComputed(*pump.fault);
            else if (!pump.running)
                path = Stage<HeadPath>::notComputed({"pump-off", "the pump is switched off", pump.id});
            else
                path = least ? pathOf(pipework, solved, *least, i) : Stage<HeadPath>::missingAs(least);
            paths.pumps.push_back({pump.id, path});
        }
    }
    std::sort(paths.pumps.begin(), paths.pumps.end(),
              [](const PumpHeadPath& a, const PumpHeadPath& b) { return a.id < b.id; });
    return paths;
}

} // namespace sumpwright::assessment

#include <cmath>

#include "core/assessment/water_and_flow.hpp"
#include "core/hydraulics/fittings.hpp"
#include "core/hydraulics/friction.hpp"

namespace sumpwright::assessment
{
namespace
{

FlowRegime regimeOf(hydraulics::FlowRegime regime)
{
    switch (regime) {
    case hydraulics::FlowRegime::Still:
        return FlowRegime::still;
    case hydraulics::FlowRegime::Laminar:
        return FlowRegime::laminar;
    case hydraulics::FlowRegime::Transition:
        return FlowRegime::transition;
    case hydraulics::FlowRegime::Turbulent:
        return FlowRegime::turbulent;
    }
    return FlowRegime::still;
}

units::Head sizeOf(units::Head head) { return head < units::Head() ? -head : head; }

RunLosses lossesOf(const hydraulics::LinkFlow& link, const DrawnRun& run)
{
    RunLosses losses;
    losses.velocity = link.velocity;
    losses.reynolds = link.reynolds;
    losses.regime = regimeOf(link.regime);
    if (link.reynolds > 0.0)
        losses.frictionFactor = run.corrugatedFactor > 0.0
                                    ? hydraulics::corrugatedFrictionFactor(link.reynolds, run.corrugatedFactor)
                                    : hydraulics::frictionFactor(link.reynolds, run.roughness / run.bore);
    losses.velocityHead = hydraulics::fittingLoss(1.0, link.velocity);
    losses.friction = sizeOf(link.frictionLoss);
    losses.fittings = sizeOf(link.fittingLoss);
    return losses;
}

// Without a pump that runs nothing moves; with one, or without a vessel, a run that no water reaches is an island.
Stage<RunFlow> pressureFlow(const DrawnRun& run, const CircuitState& state, std::size_t place, bool pumped)
{
    if (run.fault)
        return Stage<RunFlow>::notComputed(*run.fault);
    const hydraulics::LinkFlow* link = state.network.runLink(place);
    if (!link)
        return RunFlow{units::Flow(), RunLosses{}, std::nullopt, false}; // closed, or an open end: nothing runs
    if (state.standing.empty() || (link->state == hydraulics::LinkState::Unfed && pumped))
        return Stage<RunFlow>::notSolved({"run-unfed", "no vessel's water reaches this run", run.id});
    return RunFlow{state.network.flowAlong(place), lossesOf(*link, run), std::nullopt, false};
}

Stage<RunFlow> gravityFlow(const CircuitState& state, std::size_t place)
{
    const Stage<units::Flow>& flow = state.gravityRuns[place];
    return flow ? Stage<RunFlow>(RunFlow{*flow, std::nullopt, state.open[place], state.meanOfTide[place]})
                : Stage<RunFlow>::missingAs(flow);
}

Stage<units::Elevation> gradeOf(const CircuitState& state, const DrawnTee& tee, std::size_t place)
{
    const auto grade = state.network.gradeAtNode(state.network.teeNode(place));
    if (grade)
        return *grade;
    if (state.teeLevels[place])
        return *state.teeLevels[place];
    return Stage<units::Elevation>::notSolved({"tee-unfed", "no run leads water to this tee", tee.id});
}

RunResult withoutFlow(const DrawnRun& run)
{
    RunResult result;
    result.id = run.id;
    result.service = run.service;
    result.length = run.length;
    result.bore = run.bore;
    result.roughness = run.roughness;
    result.corrugatedFactor = run.corrugatedFactor;
    result.content = contentOf(run);
    result.fittings = run.fittings;
    result.sumK = run.sumK;
    return result;
}

} // namespace

FlowResult flowResultOf(const Pipework& pipework, const Circuits& circuits)
{
    FlowResult result;
    for (const DrawnRun& run : pipework.runs)
        result.runs.push_back(withoutFlow(run));
    for (const DrawnTee& tee : pipework.tees)
        result.tees.push_back({tee.id, {}});
    for (const SolvedCircuit& solved : circuits.all)
        for (const RunningState which : allRunningStates) {
            const Stage<CircuitState>& state = solved.state[which];
            const bool pumped = pumpRuns(pipework, solved.circuit);
            for (std::size_t i = 0; i < solved.circuit.runs.size(); ++i) {
                const DrawnRun& run = pipework.runs[solved.circuit.runs[i]];
                Stage<RunFlow>& flow = result.runs[solved.circuit.runs[i]].flow[which];
                flow = !state                                   ? Stage<RunFlow>::missingAs(state)
                       : run.service == plan::Service::pressure ? pressureFlow(run, *state, i, pumped)
                                                                : gravityFlow(*state, i);
            }
            for (std::size_t i = 0; i < solved.circuit.tees.size(); ++i) {
                const DrawnTee& tee = pipework.tees[solved.circuit.tees[i]];
                result.tees[solved.circuit.tees[i]].grade[which] =
                    state ? gradeOf(*state, tee, i) : Stage<units::Elevation>::missingAs(state);
            }
        }
    return result;
}

} // namespace sumpwright::assessment

#include <algorithm>

#include "core/assessment/water_and_flow.hpp"
#include "core/hydraulics/flow_balance.hpp"

namespace sumpwright::assessment
{
namespace
{

VesselWater waterOf(const Basin& basin, const Standing& standing)
{
    VesselWater water;
    water.level = standing.level;
    water.volume = volumeAt(basin, standing.level);
    water.depth = std::max(standing.level - basin.bottom, units::Length());
    water.freeBoard = basin.rim - standing.level;
    water.overLip = standing.overLip;
    water.heldBy = standing.heldBy;
    return water;
}

Stage<VesselWater> stageOf(const Basin& basin, const Stage<Standing>& standing)
{
    return standing ? Stage<VesselWater>(waterOf(basin, *standing)) : Stage<VesselWater>::missingAs(standing);
}

Stage<VesselWater> brimFull(const Basin& basin)
{
    if (basin.fault)
        return Stage<VesselWater>::notComputed(*basin.fault);
    Standing standing{basin.rim, HeldBy::rim, {}};
    if (!basin.outlets.empty())
        standing.overLip = std::max(basin.rim - basin.outlets.front().holds, units::Length());
    return waterOf(basin, standing);
}

void takeCircuit(WaterResult& result, std::size_t number, const std::vector<Basin>& basins, const SolvedCircuit& solved,
                 const StoppedCircuit& stopped)
{
    for (std::size_t i = 0; i < solved.circuit.basins.size(); ++i) {
        const std::size_t index = solved.circuit.basins[i];
        VesselResult& vessel = result.vessels[index];
        vessel.id = basins[index].id;
        vessel.circuit = number;
        for (const RunningState state : allRunningStates) {
            const Stage<CircuitState>& circuit = solved.state[state];
            const WaterState as = state == RunningState::least ? WaterState::runningLeast : WaterState::runningMost;
            vessel.water[as] =
                circuit ? stageOf(basins[index], circuit->standing[i]) : Stage<VesselWater>::missingAs(circuit);
            vessel.inflow[state] = circuit ? circuit->inflow[i] : Stage<units::Flow>::missingAs(circuit);
            vessel.pumpedOut[state] =
                circuit ? Stage<units::Flow>(circuit->pumped[i].out) : Stage<units::Flow>::missingAs(circuit);
        }
        vessel.water[WaterState::pumpStopped] = stageOf(basins[index], stopped.standing[i]);
        vessel.water[WaterState::toRim] = brimFull(basins[index]);
    }
}

// Adds a vessel to the total: what is not known for itself is left out and named, anything else spoils the total.
// Returns that one, or null.
const Stage<VesselWater>* addVessel(WaterTotal& total, const VesselResult& vessel, WaterState state)
{
    const Stage<VesselWater>& water = vessel.water[state];
    if (water) {
        total.inVessels += water->volume;
        return nullptr;
    }
    const Reason& reason = water.reason();
    const bool ofItself = reason.id == "level-unknown" || reason.element == vessel.id;
    if (!ofItself || reason.id.rfind("sump-", 0) == 0)
        return &water;
    total.leftOut.push_back(vessel.id);
    return nullptr;
}

std::vector<RunContent> contentsIn(const Pipework& pipework, const SolvedCircuit& solved, const StoppedCircuit& stopped,
                                   WaterState state)
{
    switch (state) {
    case WaterState::runningLeast:
    case WaterState::runningMost:
    case WaterState::toRim:
        return runningContents(pipework, solved);
    case WaterState::pumpStopped:
        return stopped.pipes;
    }
    return {};
}

Stage<WaterTotal> totalOf(const WaterResult& result, const Pipework& pipework, const Circuits& circuits,
                          const StoppedCircuits& stopped, WaterState state)
{
    WaterTotal total;
    for (const VesselResult& vessel : result.vessels)
        if (const Stage<VesselWater>* missing = addVessel(total, vessel, state))
            return Stage<WaterTotal>::missingAs(*missing);
    for (std::size_t i = 0; i < circuits.all.size(); ++i) {
        for (const RunContent& content : contentsIn(pipework, circuits.all[i], stopped.all[i], state)) {
            if (content.volume <= units::Volume())
                continue;
            total.inPipes += content.volume;
            total.pipes.push_back(content);
        }
        if (state == WaterState::pumpStopped && stopped.all[i].stop)
            total.spilled += stopped.all[i].stop->spilled;
    }
    return total;
}

Stage<std::vector<PumpCover>> coverOf(const Pipework& pipework, const std::vector<Basin>& basins,
                                      const SolvedCircuit& solved, std::size_t place)
{
    using Cover = Stage<std::vector<PumpCover>>;
    const Stage<CircuitState>& least = solved.state[RunningState::least];
    if (!least)
        return Cover::missingAs(least);
    if (!least->standing[place])
        return Cover::missingAs(least->standing[place]);
    const Basin& sump = basins[solved.circuit.basins[place]];
    std::vector<PumpCover> covers;
    for (const std::size_t index : solved.circuit.pumps) {
        const DrawnPump& pump = pipework.pumps[index];
        if (pump.vessel == sump.id)
            covers.push_back({pump.id, least->standing[place]->level - sump.bottom, pump.leastDepth});
    }
    return covers;
}

} // namespace

Stage<units::Flow> VesselResult::leftOver(RunningState state) const
{
    if (!inflow[state] || !pumpedOut[state])
        return inflow[state] ? pumpedOut[state] : inflow[state];
    return hydraulics::flowBalance(*inflow[state], *pumpedOut[state]);
}

WaterResult waterResultOf(const Pipework& pipework, const std::vector<Basin>& basins, const Circuits& circuits,
                          const StoppedCircuits& stopped)
{
    WaterResult result;
    result.vessels.resize(basins.size());
    for (std::size_t i = 0; i < circuits.all.size(); ++i)
        takeCircuit(result, i, basins, circuits.all[i], stopped.all[i]);
    for (const WaterState state : allWaterStates)
        result.totals[state] = totalOf(result, pipework, circuits, stopped, state);
    return result;
}

SumpResults sumpResultsOf(const Pipework& pipework, const std::vector<Basin>& basins, const Circuits& circuits,
                          const StoppedCircuits& stopped)
{
    SumpResults results;
    for (std::size_t i = 0; i < circuits.all.size(); ++i)
        for (std::size_t place = 0; place < circuits.all[i].circuit.basins.size(); ++place)
            if (const Basin& basin = basins[circuits.all[i].circuit.basins[place]]; basin.isSump())
                results.sumps.push_back(
                    {basin.id, coverOf(pipework, basins, circuits.all[i], place), stopped.all[i].stop});
    std::sort(results.sumps.begin(), results.sumps.end(),
              [](const SumpResult& a, const SumpResult& b) { return a.id < b.id; });
    return results;
}

} // namespace sumpwright::assessment

#include "core/assessment/season.hpp"

#include "core/assessment/pump_curve_of.hpp"
#include "core/assessment/site.hpp"

namespace sumpwright::assessment
{
namespace
{

const Walls& wallsOf(const DrawnRun& run, YearEnd end)
{
    return end == YearEnd::fouledCold ? run.whenFouled : run.whenNew;
}

std::shared_ptr<const Pipework> pipeworkAt(const Pipework& today, YearEnd end)
{
    auto pipework = std::make_shared<Pipework>(today);
    for (DrawnRun& run : pipework->runs) {
        run.roughness = wallsOf(run, end).roughness;
        run.manningN = wallsOf(run, end).manningN;
    }
    return pipework;
}

Stage<YearDuty> dutyOf(const Stage<CircuitState>& state, std::size_t place, const DrawnPump& pump)
{
    if (pump.fault)
        return Stage<YearDuty>::notComputed(*pump.fault);
    if (!pump.running)
        return Stage<YearDuty>::notComputed({"pump-off", "the pump is switched off", pump.id});
    if (!state)
        return Stage<YearDuty>::missingAs(state);
    const hydraulics::LinkFlow* link = state->network.pumpLink(place);
    const auto curve = curveOf(pump);
    if (!link || link->state == hydraulics::LinkState::Unfed || !curve)
        return Stage<YearDuty>::notSolved({"pump-unfed", "no water reaches the pump", pump.id});
    return YearDuty{link->flow, link->flow > units::Flow() ? link->headGained : curve->shutOffHead(pump.speed)};
}

Stage<units::Flow> flowOf(const Stage<CircuitState>& state, std::size_t place, const DrawnRun& run)
{
    if (run.fault)
        return Stage<units::Flow>::notComputed(*run.fault);
    if (!state)
        return Stage<units::Flow>::missingAs(state);
    return state->network.flowAlong(place);
}

void take(SeasonResult& result, const Pipework& pipework, const Circuits& circuits, YearEnd end)
{
    std::vector<Stage<YearDuty>> duties(pipework.pumps.size());
    std::vector<Stage<units::Flow>> flows(pipework.runs.size());
    for (const SolvedCircuit& solved : circuits.all) {
        const Stage<CircuitState>& state = solved.state[RunningState::least];
        for (std::size_t i = 0; i < solved.circuit.pumps.size(); ++i)
            duties[solved.circuit.pumps[i]] = dutyOf(state, i, pipework.pumps[solved.circuit.pumps[i]]);
        for (std::size_t i = 0; i < solved.circuit.runs.size(); ++i)
            flows[solved.circuit.runs[i]] = flowOf(state, i, pipework.runs[solved.circuit.runs[i]]);
    }
    for (std::size_t i = 0; i < result.pumps.size(); ++i)
        result.pumps[i].duty[end] = duties[i];
    std::size_t next = 0;
    for (std::size_t i = 0; i < pipework.runs.size(); ++i)
        if (pipework.runs[i].service == plan::Service::pressure) {
            result.runs[next].roughness[end] = pipework.runs[i].roughness;
            result.runs[next++].flow[end] = flows[i];
        }
}

} // namespace

PerYearEnd<units::Temperature> yearsWaterOf(units::Temperature design, const std::optional<units::Temperature>& coldest,
                                            const std::optional<units::Temperature>& warmest)
{
    PerYearEnd<units::Temperature> water;
    water[YearEnd::fouledCold] = std::min(coldest.value_or(design), design);
    water[YearEnd::newWarm] = std::max(warmest.value_or(design), design);
    return water;
}

SeasonResult seasonOf(const Pipework& pipework, const std::vector<Basin>& basins,
                      const PerYearEnd<units::Temperature>& water)
{
    SeasonResult result;
    result.water = water;
    for (const DrawnPump& pump : pipework.pumps)
        result.pumps.push_back({pump.id, {}});
    for (const DrawnRun& run : pipework.runs)
        if (run.service == plan::Service::pressure)
            result.runs.push_back({run.id, {}, {}});
    for (const YearEnd end : bothYearEnds) {
        const auto then = pipeworkAt(pipework, end);
        take(result, *then, solveCircuits(then, basins, siteResultOf(water[end], std::nullopt).viscosity), end);
    }
    return result;
}

} // namespace sumpwright::assessment

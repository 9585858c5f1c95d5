#include "core/design/bench.hpp"

#include "core/assessment/site.hpp"

namespace sumpwright::design
{

assessment::Pipework pipesOf(const plan::Plan& plan, const CataloguePointer& catalogue)
{
    return assessment::pipeworkOf(
        {plan.runs, plan.tees, plan.pumps, plan.vessels, plan.site->pipeCondition, catalogue});
}

Bench benchOf(const plan::Plan& plan, const CataloguePointer& catalogue)
{
    Bench bench;
    bench.pipework = std::make_shared<const assessment::Pipework>(pipesOf(plan, catalogue));
    bench.basins = assessment::basinsOf(plan.vessels, *bench.pipework, *catalogue);
    bench.site = assessment::siteResultOf(plan.site->designWater, plan.site->altitude);
    bench.circuits = assessment::solveCircuits(bench.pipework, bench.basins, bench.site.viscosity);
    return bench;
}

const assessment::CircuitState* shownState(const assessment::SolvedCircuit& circuit)
{
    for (const auto state : assessment::allRunningStates)
        if (circuit.state[state])
            return &*circuit.state[state];
    return nullptr;
}

std::vector<units::Elevation> levelsIn(const Bench& bench, const assessment::SolvedCircuit& circuit,
                                       const assessment::CircuitState& state)
{
    std::vector<units::Elevation> levels;
    for (std::size_t i = 0; i < circuit.circuit.basins.size(); ++i) {
        const assessment::Basin& basin = bench.basins[circuit.circuit.basins[i]];
        if (state.standing[i])
            levels.push_back(state.standing[i]->level);
        else
            levels.push_back(basin.outlets.empty() ? basin.bottom : basin.outlets.front().lip);
    }
    return levels;
}

} // namespace sumpwright::design

#include "core/design/draw_off.hpp"

#include <utility>

namespace sumpwright::design
{
namespace
{

assessment::CircuitNetwork networkOf(const Bench& bench, const assessment::Pipework& pipework,
                                     const assessment::Circuit& circuit)
{
    return {pipework, bench.basins, circuit, *bench.site.viscosity};
}

} // namespace

DrawOff::DrawOff(const Bench& bench, const assessment::Circuit& circuit, const std::vector<CircuitOutlet>& outlets,
                 std::vector<units::Elevation> levels)
    : m_bench(bench), m_circuit(circuit), m_outlets(outlets), m_levels(std::move(levels)),
      m_network(networkOf(bench, *bench.pipework, circuit))
{
}

void DrawOff::setSpeed(double speed)
{
    assessment::Pipework changed = *m_bench.pipework;
    for (assessment::DrawnPump& pump : changed.pumps)
        if (pump.running)
            pump.speed = speed;
    m_network = networkOf(m_bench, changed, m_circuit);
}

DrawnOff DrawOff::draw(const Draws& draws)
{
    m_network.setLevels(m_levels);
    std::vector<std::optional<units::Elevation>> reached(draws.size());
    for (std::size_t i = 0; i < draws.size(); ++i)
        if (draws[i])
            reached[i] = m_network.drawAt(m_outlets[i].run, m_outlets[i].outlet.side, *draws[i]);
    m_network.solve();

    DrawnOff drawn;
    drawn.solved = m_network.result().solved();
    drawn.spare.resize(draws.size());
    for (std::size_t i = 0; i < draws.size(); ++i) {
        const CircuitOutlet& at = m_outlets[i];
        const units::Flow along = m_network.flowAlong(at.run);
        drawn.outlets.push_back(at.outlet.side == plan::RunSide::to ? along : -along);
        const auto grade = m_network.gradeAtNode(m_network.mouthNode(at.run, at.outlet.side));
        if (reached[i] && grade)
            drawn.spare[i] = units::liftBetween(*reached[i], *grade);
        else if (draws[i] && !reached[i])
            drawn.solved = false; // its run carries nothing
    }
    for (std::size_t run = 0; run < m_circuit.runs.size(); ++run)
        drawn.runs.push_back(m_network.flowAlong(run));
    return drawn;
}

} // namespace sumpwright::design

#include "core/assessment/running.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

#include "core/water/sump_filling.hpp"

namespace sumpwright::assessment
{
namespace
{

constexpr double settled = 1e-12;  // m, levels over submerged mouths
constexpr double balanced = 1e-11; // m, the sump's level
constexpr int mostRounds = 60;

class Solver
{
public:
    Solver(const Pipework& pipework, const std::vector<Basin>& basins, const Circuit& circuit,
           units::KinematicViscosity viscosity)
        : m_basins(basins), m_circuit(circuit), m_network(pipework, basins, circuit, viscosity),
          m_gravity(pipework, basins, circuit, viscosity), m_levels(circuit.basins.size())
    {
        for (std::size_t i = 0; i < m_levels.size(); ++i) {
            const Basin& basin = basinAt(i);
            m_levels[i] = basin.isSump()          ? basin.entry.value_or(basin.bottom)
                          : basin.outlets.empty() ? basin.bottom
                                                  : basin.outlets.front().holds;
        }
    }

    std::optional<Reason> sumpFault() const
    {
        for (const std::size_t index : m_circuit.sumps) {
            const Basin& sump = m_basins[index];
            if (sump.fault)
                return sump.fault;
            if (!sump.entry)
                return Reason{"sump-level-missing", "sump level while running missing", sump.id};
            if (*sump.entry < sump.bottom || *sump.entry > sump.rim)
                return Reason{"sump-level-outside", "sump level while running lies outside the sump", sump.id};
        }
        return std::nullopt;
    }

    Stage<CircuitState> most()
    {
        for (std::size_t i = 0; i < m_levels.size(); ++i)
            if (basinAt(i).isSump())
                m_levels[i] = *basinAt(i).entry;
        if (const auto fault = settle(RunningState::most))
            return Stage<CircuitState>::notSolved(*fault);
        return stateOf(HeldBy::entry);
    }

    // The same water as `all`, every bed flooded.
    Stage<CircuitState> least(units::Volume all)
    {
        const std::size_t sump = sumpPlace();
        if (sump == m_circuit.basins.size()) {
            if (const auto fault = settle(RunningState::least))
                return Stage<CircuitState>::notSolved(*fault);
            return stateOf(HeldBy::entry);
        }
        if (const Stage<Standing>* spoilt = spoiltBalance())
            return Stage<CircuitState>::missingAs(*spoilt);
        if (const auto fault = balance(sump, all))
            return Stage<CircuitState>::notSolved(*fault);
        return stateOf(HeldBy::balance);
    }

private:
    // A vessel that takes part in the circulation and whose level is not known: it spoils the balance of the water.
    const Stage<Standing>* spoiltBalance() const
    {
        for (std::size_t i = 0; i < m_levels.size(); ++i)
            if (!basinAt(i).isSump() && !m_flows.standing[i] && m_flows.standing[i].reason().id != "level-unknown")
                return &m_flows.standing[i];
        return nullptr;
    }

    const Basin& basinAt(std::size_t place) const { return m_basins[m_circuit.basins[place]]; }

    std::size_t sumpPlace() const
    {
        std::size_t place = 0;
        while (place < m_circuit.basins.size() && !basinAt(place).isSump())
            ++place;
        return place;
    }

    // Levels and flows at given sump levels, together.
    std::optional<Reason> settle(RunningState state)
    {
        for (int round = 0; round < mostRounds; ++round) {
            m_network.setLevels(m_levels);
            m_network.solve();
            if (const auto& refusal = m_network.result().notSolved)
                return Reason{refusal->id, "the pipe network has no solution: " + base::oneLine(*refusal), {}};
            m_pumped = m_network.pumpedFlows();
            m_flows = m_gravity.flowsFor(m_pumped, m_levels, state);
            if (takeLevels() <= settled)
                return std::nullopt;
        }
        return Reason{"levels-not-settled", "the levels over submerged inlets do not settle", {}};
    }

    // The largest change of a level that a mouth in the network feels.
    double takeLevels()
    {
        double change = 0.0;
        for (std::size_t i = 0; i < m_levels.size(); ++i) {
            if (basinAt(i).isSump() || !m_flows.standing[i])
                continue;
            const units::Elevation level = m_flows.standing[i]->level;
            if (m_network.covers(i, std::max(level, m_levels[i])))
                change = std::max(change, std::fabs(units::inMetres(level - m_levels[i])));
            m_levels[i] = level;
        }
        return change;
    }

    units::Volume besides(std::size_t sump) const
    {
        units::Volume sum;
        for (std::size_t i = 0; i < m_levels.size(); ++i)
            if (i != sump && (basinAt(i).isSump() || m_flows.standing[i]))
                sum += volumeAt(basinAt(i), m_levels[i]);
        return sum;
    }

    // The sump's level that the water left over gives; below the bottom as if the walls went on.
    double levelFor(std::size_t sump, units::Volume water) const
    {
        const Basin& basin = basinAt(sump);
        return units::inMetres(basin.bottom + water::sumpDepth(shapeOf(basin), water));
    }

    std::optional<Reason> balance(std::size_t sump, units::Volume all)
    {
        double level = units::inMetres(m_levels[sump]), lastLevel = 0.0, lastMisfit = 0.0;
        for (int round = 0; round < mostRounds; ++round) {
            m_levels[sump] = units::elevationMetres(level);
            if (const auto fault = settle(RunningState::least))
                return fault;
            if (const Stage<Standing>* spoilt = spoiltBalance())
                return spoilt->reason();
            const double wanted = levelFor(sump, all - besides(sump)), misfit = wanted - level;
            if (std::fabs(misfit) <= balanced) {
                m_levels[sump] = units::elevationMetres(wanted);
                if (m_levels[sump] < basinAt(sump).bottom)
                    return Reason{"sump-runs-dry", "the sump runs dry before all beds are flooded", basinAt(sump).id};
                return std::nullopt;
            }
            const double slope = round == 0 ? 0.0 : (misfit - lastMisfit) / (level - lastLevel);
            lastLevel = level;
            lastMisfit = misfit;
            level = slope < -0.05 ? level - misfit / slope : wanted;
        }
        return Reason{"water-not-balanced", "no sump level balances the water", basinAt(sump).id};
    }

    CircuitState stateOf(HeldBy sumpHeldBy) const
    {
        CircuitState state{m_flows.standing,  m_flows.inflow,     m_pumped,
                           m_flows.runs,      m_flows.meanOfTide, m_gravity.waterIn(m_flows, m_levels),
                           m_flows.teeLevels, m_network,          {}};
        for (std::size_t i = 0; i < m_levels.size(); ++i) {
            if (basinAt(i).isSump())
                state.standing[i] = Standing{m_levels[i], sumpHeldBy, {}};
            if (state.standing[i])
                state.inVessels += volumeAt(basinAt(i), m_levels[i]);
        }
        return state;
    }

    const std::vector<Basin>& m_basins;
    const Circuit& m_circuit;
    CircuitNetwork m_network;
    Gravity m_gravity;
    std::vector<units::Elevation> m_levels;
    GravityFlows m_flows;
    std::vector<PumpedFlow> m_pumped;
};

PerRunningState<Stage<CircuitState>> bothMissing(const Reason& reason)
{
    const auto missing = Stage<CircuitState>::notComputed(reason);
    return {{missing, missing}};
}

PerRunningState<Stage<CircuitState>> statesOf(const Pipework& pipework, const std::vector<Basin>& basins,
                                              const Circuit& circuit, const Stage<units::KinematicViscosity>& viscosity)
{
    if (!viscosity)
        return bothMissing(viscosity.reason());
    Solver solver(pipework, basins, circuit, *viscosity);
    if (const auto fault = solver.sumpFault())
        return bothMissing(*fault);
    PerRunningState<Stage<CircuitState>> states;
    states[RunningState::most] = solver.most();
    const Stage<CircuitState>& most = states[RunningState::most];
    if (!most)
        states[RunningState::least] = most;
    else if (circuit.sumps.size() > 1)
        states[RunningState::least] = Stage<CircuitState>::notComputed(
            {"several-sumps", "several sumps share one water circuit", basins[circuit.sumps[1]].id});
    else
        states[RunningState::least] = solver.least(most->inVessels);
    return states;
}

// Of two networks of the same pipework: all that a further solve of either depends on.
bool sameFlows(const CircuitNetwork& a, const CircuitNetwork& b)
{
    const auto &x = a.result(), &y = b.result();
    const auto sameLink = [](const hydraulics::LinkFlow& l, const hydraulics::LinkFlow& r) {
        return l.flow == r.flow && l.state == r.state && l.frictionLoss == r.frictionLoss &&
               l.fittingLoss == r.fittingLoss && l.headGained == r.headGained;
    };
    const auto sameNode = [](const hydraulics::NodeGrade& l, const hydraulics::NodeGrade& r) {
        return l.grade == r.grade && l.state == r.state && l.lowPressure == r.lowPressure;
    };
    return a.viscosity() == b.viscosity() &&
           std::equal(x.links.begin(), x.links.end(), y.links.begin(), y.links.end(), sameLink) &&
           std::equal(x.nodes.begin(), x.nodes.end(), y.nodes.begin(), y.nodes.end(), sameNode);
}

} // namespace

bool operator==(const CircuitState& a, const CircuitState& b)
{
    return a.standing == b.standing && a.inflow == b.inflow && a.pumped == b.pumped && a.gravityRuns == b.gravityRuns &&
           a.meanOfTide == b.meanOfTide && a.open == b.open && a.teeLevels == b.teeLevels &&
           a.inVessels == b.inVessels && sameFlows(a.network, b.network);
}

Circuits solveCircuits(std::shared_ptr<const Pipework> pipework, const std::vector<Basin>& basins,
                       const Stage<units::KinematicViscosity>& viscosity)
{
    Circuits solved;
    for (Circuit& circuit : circuitsOf(*pipework, basins)) {
        const auto states = statesOf(*pipework, basins, circuit, viscosity);
        solved.all.push_back({std::move(circuit), states});
    }
    solved.pipework = std::move(pipework);
    return solved;
}

} // namespace sumpwright::assessment

#include "core/assessment/pump_stop.hpp"

#include <algorithm>

#include "core/assessment/place_in.hpp"
#include "core/assessment/stop_course_of.hpp"
#include "core/water/sump_filling.hpp"

namespace sumpwright::assessment
{
namespace
{

constexpr double designFill = 0.5; // of a gravity run, en-12056-2

units::Volume gravityShare(const DrawnRun& run, const Stage<units::Flow>& flow, units::Volume content)
{
    const bool dry = flow && *flow == units::Flow();
    return run.service == plan::Service::gravity && !run.shut && !dry ? designFill * content : units::Volume();
}

// A vessel that its submerged inlet may empty, down to the lowest mouth or vent.
struct Siphon {
    std::size_t place = 0; // in the circuit's basins
    base::Id port;
    units::Elevation from;
    units::Elevation to;
};

class Stop
{
public:
    Stop(const Pipework& pipework, const std::vector<Basin>& basins, const SolvedCircuit& solved)
        : m_pipework(pipework), m_basins(basins), m_circuit(solved.circuit), m_solved(solved),
          m_state(*solved.state[RunningState::most])
    {
    }

    StoppedCircuit run()
    {
        m_stopped.standing = m_state.standing;
        m_stopped.pipes = runningContents(m_pipework, m_solved);
        drainOverLips();
        if (m_circuit.sumps.size() != 1) {
            m_stopped.stop = Stage<PumpStop>::notComputed(
                m_circuit.sumps.empty()
                    ? Reason{"no-sump", "no sump in this water circuit", {}}
                    : Reason{"several-sumps", "several sumps share one water circuit", basinAt(sump()).id});
            if (!m_circuit.sumps.empty())
                for (Stage<Standing>& standing : m_stopped.standing)
                    standing = Stage<Standing>::missingAs(m_stopped.stop);
            return m_stopped;
        }
        const Basin& basin = basinAt(sump());
        m_stop.startLevel = m_state.standing[sump()]->level;
        m_stop.startVolume = volumeAt(basin, m_stop.startLevel);
        m_stop.spillLevel = basin.outlets.empty() ? basin.rim : std::min(basin.rim, basin.outlets.front().holds);
        drainPipes();
        findSiphons();
        fill(basin);
        m_stopped.stop = m_stop;
        return m_stopped;
    }

private:
    const Basin& basinAt(std::size_t place) const { return m_basins[m_circuit.basins[place]]; }

    std::size_t sump() const
    {
        const auto at = std::lower_bound(m_circuit.basins.begin(), m_circuit.basins.end(), m_circuit.sumps.front());
        return static_cast<std::size_t>(at - m_circuit.basins.begin());
    }

    void add(ComesDown kind, base::Id element, base::Id port, units::Volume volume)
    {
        if (volume > units::Volume())
            m_stop.contributions.push_back({kind, element, port, volume});
    }

    void drainOverLips()
    {
        for (std::size_t i = 0; i < m_circuit.basins.size(); ++i) {
            Stage<Standing>& standing = m_stopped.standing[i];
            if (basinAt(i).isSump() || !standing || standing->overLip <= units::Length())
                continue;
            const BasinOutlet& lowest = basinAt(i).outlets.front();
            add(ComesDown::overLip, basinAt(i).id, lowest.port,
                volumeAt(basinAt(i), standing->level) - volumeAt(basinAt(i), lowest.holds));
            standing = Standing{lowest.holds, lowest.side ? HeldBy::sideOutlet : HeldBy::lip, {}};
        }
    }

    void drainPipes()
    {
        const bool runs = pumpRuns(m_pipework, m_circuit);
        for (std::size_t i = 0; i < m_circuit.runs.size(); ++i) {
            const DrawnRun& run = m_pipework.runs[m_circuit.runs[i]];
            const units::Volume above = contentAbove(run, m_stop.startLevel);
            const bool pressure = run.service == plan::Service::pressure;
            const units::Volume volume =
                pressure ? (runs ? above : units::Volume()) : gravityShare(run, m_state.gravityRuns[i], above);
            add(pressure ? ComesDown::pipe : ComesDown::gravityRun, run.id, {}, volume);
            m_stopped.pipes[i].volume -= volume;
        }
    }

    void findSiphons()
    {
        if (m_circuit.pumps.empty())
            return;
        for (const std::size_t index : m_circuit.runs) {
            const DrawnRun& run = m_pipework.runs[index];
            if (run.service != plan::Service::pressure || run.shut || run.fault)
                continue;
            for (const DrawnEnd* end : {&run.from, &run.to})
                if (end->kind == EndKind::vessel && end->portKind == plan::PortKind::inlet)
                    addSiphon(*end);
        }
    }

    void addSiphon(const DrawnEnd& end)
    {
        const std::size_t place = placeIn(m_circuit.basins, m_basins, end.element);
        const Basin& basin = basinAt(place);
        if (basin.isSump() || !m_stopped.standing[place])
            return;
        units::Elevation breaks = std::max(end.level, basin.bottom);
        for (const BasinInlet& inlet : basin.inlets)
            if (inlet.port == end.port && inlet.ventLevel)
                breaks = std::max(breaks, *inlet.ventLevel);
        const units::Elevation level = m_stopped.standing[place]->level;
        if (breaks >= level)
            return;
        for (Siphon& known : m_siphons)
            if (known.place == place) {
                if (breaks < known.to)
                    known = {place, end.port, level, breaks};
                return;
            }
        m_siphons.push_back({place, end.port, level, breaks});
    }

    // What a siphon brings while the sump stands at a level: it stops where the levels meet.
    units::Volume broughtBy(const Siphon& siphon, units::Elevation sumpLevel) const
    {
        const units::Elevation down = std::clamp(std::max(siphon.to, sumpLevel), siphon.to, siphon.from);
        return volumeAt(basinAt(siphon.place), siphon.from) - volumeAt(basinAt(siphon.place), down);
    }

    units::Volume broughtAt(units::Elevation sumpLevel) const
    {
        units::Volume sum = m_stop.startVolume;
        for (const Contribution& contribution : m_stop.contributions)
            sum += contribution.volume;
        for (const Siphon& siphon : m_siphons)
            sum += broughtBy(siphon, sumpLevel);
        return sum;
    }

    void fill(const Basin& basin)
    {
        double low = units::inMetres(m_stop.startLevel), high = units::inMetres(m_stop.spillLevel);
        const bool spills = broughtAt(m_stop.spillLevel) > volumeAt(basin, m_stop.spillLevel);
        for (int step = 0; !spills && !m_siphons.empty() && step < 200; ++step) {
            const double middle = 0.5 * (low + high);
            if (middle <= low || middle >= high)
                break;
            const units::Elevation level = units::elevationMetres(middle);
            (volumeAt(basin, level) < broughtAt(level) ? low : high) = middle;
        }
        const units::Elevation meets = units::elevationMetres(high);
        for (const Siphon& siphon : m_siphons) {
            const units::Volume volume = broughtBy(siphon, meets);
            m_stopped.standing[siphon.place] =
                Standing{std::clamp(std::max(siphon.to, meets), siphon.to, siphon.from), HeldBy::siphonBack, {}};
            m_fromSiphons.push_back({ComesDown::siphonBack, basinAt(siphon.place).id, siphon.port, volume});
        }
        const auto filling = water::fillSump(shapeOf(basin), m_stop.spillLevel - basin.bottom, broughtAt(meets));
        for (const Contribution& contribution : m_fromSiphons)
            add(contribution.kind, contribution.element, contribution.port, contribution.volume);
        m_stop.roomLeft = filling.roomLeft;
        m_stop.spilled = filling.spilled;
        m_stop.volume = filling.volume;
        m_stop.level = m_stop.spilled > units::Volume() ? m_stop.spillLevel : basin.bottom + filling.depth;
        m_stopped.standing[sump()] =
            Standing{m_stop.level, m_stop.spilled > units::Volume() ? HeldBy::rim : HeldBy::balance, {}};
    }

    const Pipework& m_pipework;
    const std::vector<Basin>& m_basins;
    const Circuit& m_circuit;
    const SolvedCircuit& m_solved;
    const CircuitState& m_state;
    PumpStop m_stop;
    StoppedCircuit m_stopped;
    std::vector<Siphon> m_siphons;
    std::vector<Contribution> m_fromSiphons;
};

} // namespace

bool pumpRuns(const Pipework& pipework, const Circuit& circuit)
{
    return std::any_of(circuit.pumps.begin(), circuit.pumps.end(), [&pipework](std::size_t index) {
        return pipework.pumps[index].running && !pipework.pumps[index].fault;
    });
}

std::vector<RunContent> runningContents(const Pipework& pipework, const SolvedCircuit& circuit)
{
    const bool runs = pumpRuns(pipework, circuit.circuit);
    const Stage<CircuitState>& most = circuit.state[RunningState::most];
    std::vector<RunContent> contents;
    for (std::size_t i = 0; i < circuit.circuit.runs.size(); ++i) {
        const DrawnRun& run = pipework.runs[circuit.circuit.runs[i]];
        units::Volume volume;
        if (run.service == plan::Service::pressure)
            volume = runs ? contentOf(run) : units::Volume();
        else if (most)
            volume = gravityShare(run, most->gravityRuns[i], contentOf(run));
        contents.push_back({run.id, volume});
    }
    return contents;
}

StoppedCircuits stopPumps(const Pipework& pipework, const std::vector<Basin>& basins, const Circuits& circuits)
{
    StoppedCircuits stopped;
    for (const SolvedCircuit& solved : circuits.all) {
        const Stage<CircuitState>& most = solved.state[RunningState::most];
        if (most) {
            stopped.all.push_back(Stop(pipework, basins, solved).run());
            if (Stage<PumpStop>& stop = stopped.all.back().stop; stop && pumpRuns(pipework, solved.circuit)) {
                PumpStop told = *stop;
                told.course = stopCourseOf(pipework, basins, solved, told);
                stop = std::move(told);
            }
            continue;
        }
        StoppedCircuit missing;
        missing.stop = Stage<PumpStop>::missingAs(most);
        missing.standing.assign(solved.circuit.basins.size(), Stage<Standing>::missingAs(most));
        stopped.all.push_back(std::move(missing));
    }
    return stopped;
}

} // namespace sumpwright::assessment

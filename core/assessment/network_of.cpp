#include "core/assessment/network_of.hpp"

#include <algorithm>

#include "core/assessment/place_in.hpp"
#include "core/assessment/pump_curve_of.hpp"

namespace sumpwright::assessment
{

CircuitNetwork::CircuitNetwork(const Pipework& pipework, const std::vector<Basin>& basins, const Circuit& circuit,
                               units::KinematicViscosity viscosity)
    : m_lowestMouths(circuit.basins.size())
{
    m_network.viscosity = viscosity;
    for (const std::size_t tee : circuit.tees)
        m_tees.push_back(m_network.addJunction({}, pipework.tees[tee].level));
    for (const std::size_t pump : circuit.pumps)
        addPump(pipework.pumps[pump], basins, circuit);
    for (const std::size_t run : circuit.runs)
        addRun(pipework.runs[run], pipework, basins, circuit);
}

void CircuitNetwork::addPump(const DrawnPump& pump, const std::vector<Basin>& basins, const Circuit& circuit)
{
    PumpParts parts;
    parts.outlet = m_network.addJunction({}, pump.outletLevel);
    parts.basin = placeIn(circuit.basins, basins, pump.vessel);
    if (parts.basin == circuit.basins.size()) {
        parts.basin = none;
    } else {
        parts.suction = m_network.addFixedGrade(units::Elevation());
        const auto curve = curveOf(pump);
        if (pump.running && curve)
            parts.part = hydraulics::PumpLink{*curve, pump.speed};
        else
            parts.part = hydraulics::ClosedLink{};
        parts.link = m_network.addLink(parts.suction, parts.outlet, parts.part);
    }
    m_pumps.push_back(std::move(parts));
}

CircuitNetwork::End CircuitNetwork::endOf(const DrawnEnd& end, const Pipework& pipework,
                                          const std::vector<Basin>& basins, const Circuit& circuit)
{
    switch (end.kind) {
    case EndKind::open:
        break;
    case EndKind::vessel:
        return {m_network.addFixedGrade(end.level), placeIn(circuit.basins, basins, end.element), end.level};
    case EndKind::pump:
        return {m_pumps[placeIn(circuit.pumps, pipework.pumps, end.element)].outlet, none, end.level};
    case EndKind::tee:
        return {m_tees[placeIn(circuit.tees, pipework.tees, end.element)], none, end.level};
    }
    return {};
}

void CircuitNetwork::addRun(const DrawnRun& run, const Pipework& pipework, const std::vector<Basin>& basins,
                            const Circuit& circuit)
{
    RunLink parts;
    if (run.service == plan::Service::pressure && !run.fault && !run.shut && run.from.kind != EndKind::open &&
        run.to.kind != EndKind::open) {
        parts.start = endOf(run.from, pipework, basins, circuit);
        parts.end = endOf(run.to, pipework, basins, circuit);
        parts.crest = highestCentre(run);
        parts.check = run.oneWay;
        parts.pipe = {run.bore, run.length, run.roughness, run.sumK, run.oneWay, run.openingHead, run.corrugatedFactor};
        if (parts.start.node != parts.end.node)
            parts.link = m_network.addLink(parts.start.node, parts.end.node, parts.pipe);
        for (const End* end : {&parts.start, &parts.end})
            if (end->basin != none && parts.link != none) {
                auto& lowest = m_lowestMouths[end->basin];
                lowest = lowest ? std::min(*lowest, end->mouth) : end->mouth;
            }
    }
    m_runs.push_back(parts);
}

void CircuitNetwork::setLevels(const std::vector<units::Elevation>& levels)
{
    for (const PumpParts& pump : m_pumps)
        if (pump.suction != none)
            m_network.nodes[pump.suction] = hydraulics::FixedGrade{levels[pump.basin]};
    raiseReach(levels);
    for (const RunLink& run : m_runs)
        if (run.link != none)
            direct(run, levels);
}

// The highest place that water could come to by itself at any levels set so far, lifted by a pump at no flow or
// standing over a mouth: a run once full stays full when the sump falls a little.
void CircuitNetwork::raiseReach(const std::vector<units::Elevation>& levels)
{
    const auto raise = [this](units::Elevation level) { m_reach = m_reach ? std::max(*m_reach, level) : level; };
    for (const PumpParts& pump : m_pumps)
        if (const auto* part = std::get_if<hydraulics::PumpLink>(&pump.part))
            raise(units::elevationMetres(units::inMetres(levels[pump.basin]) +
                                         units::inMetresHead(part->curve.shutOffHead(part->speed))));
    for (const RunLink& run : m_runs)
        for (const End* end : {&run.start, &run.end})
            if (end->basin != none && levels[end->basin] > end->mouth)
                raise(levels[end->basin]);
}

// Out of a mouth above the water nothing is drawn, so the run carries water towards it only.
void CircuitNetwork::direct(const RunLink& run, const std::vector<units::Elevation>& levels)
{
    const auto isFree = [&](const End& end) { return end.basin != none && levels[end.basin] <= end.mouth; };
    for (const End* end : {&run.start, &run.end})
        if (end->basin != none)
            m_network.nodes[end->node] = hydraulics::FixedGrade{std::max(end->mouth, levels[end->basin])};
    const bool forwardOnly = run.check || isFree(run.end);
    const bool backwardOnly = isFree(run.start);
    hydraulics::NetworkLink& link = m_network.links[run.link];
    link.from = backwardOnly ? run.end.node : run.start.node;
    link.to = backwardOnly ? run.start.node : run.end.node;
    hydraulics::PipeLink pipe = run.pipe;
    pipe.oneWay = forwardOnly || backwardOnly;
    if (!run.check)
        pipe.openingHead = units::Head();
    if ((forwardOnly && backwardOnly) || !m_reach || run.crest > *m_reach)
        link.part = hydraulics::ClosedLink{};
    else
        link.part = pipe;
}

void CircuitNetwork::impose(std::size_t pump, units::Flow flow)
{
    const PumpParts& parts = m_pumps[pump];
    if (parts.link != none)
        m_network.links[parts.link].part = hydraulics::ClosedLink{};
    std::get<hydraulics::Junction>(m_network.nodes[parts.outlet]).supply = flow;
}

void CircuitNetwork::release(std::size_t pump)
{
    const PumpParts& parts = m_pumps[pump];
    if (parts.link != none)
        m_network.links[parts.link].part = parts.part;
    std::get<hydraulics::Junction>(m_network.nodes[parts.outlet]).supply = units::Flow();
}

std::optional<units::Elevation> CircuitNetwork::drawAt(std::size_t run, plan::RunSide side, units::Flow flow)
{
    const End& end = side == plan::RunSide::from ? m_runs[run].start : m_runs[run].end;
    if (m_runs[run].link == none || end.basin == none)
        return std::nullopt;
    const auto* level = std::get_if<hydraulics::FixedGrade>(&m_network.nodes[end.node]);
    if (!level)
        return std::nullopt;
    const units::Elevation reached = level->grade;
    m_network.nodes[end.node] = hydraulics::Junction{-flow, {}};
    return reached;
}

const hydraulics::LinkFlow* CircuitNetwork::linkAt(std::size_t link) const
{
    return link == none || link >= m_result.links.size() ? nullptr : &m_result.links[link];
}

units::Flow CircuitNetwork::flowAlong(std::size_t run) const
{
    const hydraulics::LinkFlow* link = runLink(run);
    if (!link)
        return units::Flow();
    const bool forward = m_network.links[m_runs[run].link].from == m_runs[run].start.node;
    return forward ? link->flow : -link->flow;
}

std::optional<units::Elevation> CircuitNetwork::gradeAtNode(std::size_t node) const
{
    return node == none || node >= m_result.nodes.size() ? std::nullopt : m_result.nodes[node].grade;
}

std::vector<PumpedFlow> CircuitNetwork::pumpedFlows() const
{
    std::vector<PumpedFlow> flows(m_lowestMouths.size());
    const auto add = [&flows](std::size_t basin, units::Flow comesIn) {
        if (basin != none && comesIn > units::Flow())
            flows[basin].in += comesIn;
        else if (basin != none)
            flows[basin].out -= comesIn;
    };
    for (std::size_t run = 0; run < m_runs.size(); ++run) {
        add(m_runs[run].start.basin, -flowAlong(run));
        add(m_runs[run].end.basin, flowAlong(run));
    }
    for (const PumpParts& pump : m_pumps)
        if (const hydraulics::LinkFlow* link = linkAt(pump.link))
            add(pump.basin, -link->flow);
    return flows;
}

} // namespace sumpwright::assessment

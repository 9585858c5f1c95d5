#include "core/assessment/gravity.hpp"

#include <algorithm>

#include "core/assessment/place_in.hpp"
#include "core/hydraulics/flow_balance.hpp"

namespace sumpwright::assessment
{
namespace
{

bool isGravity(const DrawnRun& run) { return run.service == plan::Service::gravity; }

bool givesWater(const DrawnEnd& end) { return end.kind == EndKind::vessel && end.portKind != plan::PortKind::inlet; }
bool takesWater(const DrawnEnd& end) { return end.kind == EndKind::vessel && end.portKind == plan::PortKind::inlet; }

// What a run carries before any vessel sends water into it.
Stage<units::Flow> beforeAnything(const DrawnRun& run)
{
    if (!isGravity(run))
        return {};
    const bool led =
        givesWater(run.from) || givesWater(run.to) || run.from.kind == EndKind::tee || run.to.kind == EndKind::tee;
    if (run.shut || !led)
        return units::Flow();
    return Stage<units::Flow>::notComputed({"gravity-loop", "gravity runs lead in a circle", run.id});
}

} // namespace

Gravity::Gravity(const Pipework& pipework, const std::vector<Basin>& basins, const Circuit& circuit)
    : m_pipework(pipework), m_basins(basins), m_circuit(circuit), m_nodes(circuit.basins.size() + circuit.tees.size())
{
    std::vector<Ends> ends(circuit.runs.size());
    for (std::size_t i = 0; i < circuit.runs.size(); ++i) {
        ends[i] = endsOf(pipework.runs[circuit.runs[i]]);
        if (ends[i].source < m_nodes.size())
            m_nodes[ends[i].source].out.push_back({i, ends[i].forward});
        if (ends[i].target < m_nodes.size())
            m_nodes[ends[i].target].in.push_back({i, ends[i].forward});
    }
    order(ends);
}

std::size_t Gravity::nodeOf(const DrawnEnd& end) const
{
    if (end.kind == EndKind::vessel)
        return placeIn(m_circuit.basins, m_basins, end.element);
    if (end.kind == EndKind::tee)
        return m_circuit.basins.size() + placeIn(m_circuit.tees, m_pipework.tees, end.element);
    return m_nodes.size();
}

// Water leaves vessels by lips and outlets and enters them by inlets, however the run was drawn.
Gravity::Ends Gravity::endsOf(const DrawnRun& run) const
{
    if (!isGravity(run) || run.shut)
        return {m_nodes.size(), m_nodes.size(), true};
    const bool backward = !givesWater(run.from) && (givesWater(run.to) || takesWater(run.from));
    const DrawnEnd& source = backward ? run.to : run.from;
    const DrawnEnd& target = backward ? run.from : run.to;
    return {nodeOf(source), nodeOf(target), !backward};
}

void Gravity::order(const std::vector<Ends>& ends)
{
    const auto isSump = [this](std::size_t node) {
        return node < m_circuit.basins.size() && m_basins[m_circuit.basins[node]].isSump();
    };
    std::vector<std::size_t> waiting(m_nodes.size(), 0);
    for (const Ends& run : ends)
        if (run.target < m_nodes.size() && run.source < m_nodes.size() && !isSump(run.source))
            ++waiting[run.target];
    for (std::size_t node = 0; node < m_nodes.size(); ++node)
        if (waiting[node] == 0)
            m_order.push_back(node);
    for (std::size_t done = 0; done < m_order.size(); ++done) {
        if (isSump(m_order[done]))
            continue;
        for (const Leg leg : m_nodes[m_order[done]].out)
            if (const std::size_t target = ends[leg.run].target; target < m_nodes.size() && --waiting[target] == 0)
                m_order.push_back(target);
    }
}

Stage<units::Flow> Gravity::arriving(std::size_t node, const GravityFlows& flows, bool& tide) const
{
    units::Flow sum;
    for (const Leg leg : m_nodes[node].in) {
        const Stage<units::Flow>& run = flows.runs[leg.run];
        if (!run)
            return run;
        sum += leg.forward ? *run : -*run;
        tide = tide || flows.meanOfTide[leg.run];
    }
    return sum;
}

void Gravity::send(Leg leg, const Stage<units::Flow>& flow, bool tide, GravityFlows& flows) const
{
    flows.runs[leg.run] = flow && !leg.forward ? Stage<units::Flow>(-*flow) : flow;
    flows.meanOfTide[leg.run] = tide;
}

void Gravity::passBasin(std::size_t node, PumpedFlow pumped, RunningState state, GravityFlows& flows) const
{
    const Basin& basin = m_basins[m_circuit.basins[node]];
    bool tide = false;
    const Stage<units::Flow> arrived = arriving(node, flows, tide);
    flows.inflow[node] = arrived ? Stage<units::Flow>(pumped.in + *arrived) : arrived;
    Throughflow through{Stage<Standing>::missingAs(Stage<units::Flow>()), {}};
    if (!basin.isSump())
        through = arrived ? throughflowOf(basin, hydraulics::flowBalance(*flows.inflow[node], pumped.out), state)
                          : Throughflow{Stage<Standing>::missingAs(arrived),
                                        std::vector<Stage<units::Flow>>(basin.outlets.size(), arrived)};
    else
        through.outlets.assign(basin.outlets.size(), units::Flow());
    flows.standing[node] = through.standing;
    for (std::size_t i = 0; i < through.outlets.size(); ++i) {
        const BasinOutlet& outlet = basin.outlets[i];
        if (!outlet.run)
            continue;
        const auto at = std::lower_bound(m_circuit.runs.begin(), m_circuit.runs.end(), *outlet.run);
        send({static_cast<std::size_t>(at - m_circuit.runs.begin()), outlet.runsForward}, through.outlets[i],
             tide || outlet.drainLevel.has_value(), flows);
    }
}

void Gravity::passTee(std::size_t node, GravityFlows& flows) const
{
    const std::vector<Leg>& out = m_nodes[node].out;
    bool tide = false;
    Stage<units::Flow> flow = arriving(node, flows, tide);
    const base::Id tee = m_pipework.tees[m_circuit.tees[node - m_circuit.basins.size()]].id;
    if (out.size() > 1 && flow && *flow > units::Flow())
        flow = Stage<units::Flow>::notComputed(
            {"gravity-tee-divides", "how a gravity run divides at a tee is not modelled", tee});
    for (const Leg leg : out)
        send(leg, flow, tide, flows);
}

GravityFlows Gravity::flowsFor(const std::vector<PumpedFlow>& pumped, RunningState state) const
{
    GravityFlows flows;
    flows.inflow.resize(m_circuit.basins.size());
    flows.standing.resize(m_circuit.basins.size());
    flows.meanOfTide.assign(m_circuit.runs.size(), false);
    for (const std::size_t run : m_circuit.runs)
        flows.runs.push_back(beforeAnything(m_pipework.runs[run]));
    std::vector<bool> passed(m_nodes.size(), false);
    for (const std::size_t node : m_order) {
        passed[node] = true;
        if (node < m_circuit.basins.size())
            passBasin(node, pumped[node], state, flows);
        else
            passTee(node, flows);
    }
    for (std::size_t node = 0; node < m_circuit.basins.size(); ++node)
        if (!passed[node]) {
            const Reason loop{"gravity-loop", "gravity runs lead in a circle", m_basins[m_circuit.basins[node]].id};
            flows.inflow[node] = Stage<units::Flow>::notComputed(loop);
            flows.standing[node] = Stage<Standing>::notComputed(loop);
        }
    return flows;
}

} // namespace sumpwright::assessment

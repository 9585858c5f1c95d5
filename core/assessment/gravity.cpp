#include "core/assessment/gravity.hpp"

#include <algorithm>
#include <cmath>

#include "core/assessment/gravity_pipe.hpp"
#include "core/assessment/open_flow_of.hpp"
#include "core/assessment/place_in.hpp"
#include "core/hydraulics/flow_balance.hpp"
#include "core/hydraulics/shared_level.hpp"

namespace sumpwright::assessment
{
namespace
{

constexpr double settled = 1e-12; // m, water at the end of a run
constexpr int mostRounds = 100;   // there and back

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

struct Gravity::Work {
    const std::vector<PumpedFlow>& pumped;
    const std::vector<units::Elevation>& levels;
    RunningState state;
    GravityFlows& flows;
    std::vector<std::optional<Stage<units::Flow>>> arrived; // at each node; none: not yet
    std::vector<std::optional<units::Elevation>> tails;     // of each run
};

Gravity::Gravity(const Pipework& pipework, const std::vector<Basin>& basins, const Circuit& circuit,
                 units::KinematicViscosity viscosity)
    : m_pipework(pipework), m_basins(basins), m_circuit(circuit), m_viscosity(viscosity), m_ends(circuit.runs.size()),
      m_pipes(circuit.runs.size()), m_nodes(circuit.basins.size() + circuit.tees.size())
{
    for (std::size_t i = 0; i < circuit.runs.size(); ++i) {
        const DrawnRun& run = pipework.runs[circuit.runs[i]];
        m_ends[i] = endsOf(run);
        if (isGravity(run) && !run.shut && !run.fault && run.bore > units::Length())
            m_pipes[i] = gravityPipeOf(run, m_ends[i].forward);
        if (m_ends[i].source < m_nodes.size())
            m_nodes[m_ends[i].source].out.push_back({i, m_ends[i].forward});
        if (m_ends[i].target < m_nodes.size())
            m_nodes[m_ends[i].target].in.push_back({i, m_ends[i].forward});
    }
    order();
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

void Gravity::order()
{
    const auto isSump = [this](std::size_t node) { return isBasin(node) && basinAt(node).isSump(); };
    std::vector<std::size_t> waiting(m_nodes.size(), 0);
    for (const Ends& run : m_ends)
        if (run.target < m_nodes.size() && run.source < m_nodes.size() && !isSump(run.source))
            ++waiting[run.target];
    for (std::size_t node = 0; node < m_nodes.size(); ++node)
        if (waiting[node] == 0)
            m_order.push_back(node);
    for (std::size_t done = 0; done < m_order.size(); ++done) {
        if (isSump(m_order[done]))
            continue;
        for (const Leg leg : m_nodes[m_order[done]].out)
            if (const std::size_t target = m_ends[leg.run].target; target < m_nodes.size() && --waiting[target] == 0)
                m_order.push_back(target);
    }
}

std::size_t Gravity::placeOfRun(std::size_t run) const
{
    const auto at = std::lower_bound(m_circuit.runs.begin(), m_circuit.runs.end(), run);
    return static_cast<std::size_t>(at - m_circuit.runs.begin());
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

// The water at the end of a run, where it stands above the invert there.
std::optional<units::Elevation> Gravity::tailOf(std::size_t run, const GravityFlows& flows,
                                                const std::vector<units::Elevation>& levels) const
{
    const std::size_t target = m_ends[run].target;
    std::optional<units::Elevation> level;
    if (target >= m_nodes.size())
        return level;
    if (!isBasin(target))
        level = flows.teeLevels[target - m_circuit.basins.size()];
    else if (basinAt(target).isSump())
        level = levels[target];
    else if (flows.standing[target])
        level = flows.standing[target]->level;
    return level && m_pipes[run] && *level > m_pipes[run]->reaches.back().endInvert ? level : std::nullopt;
}

std::vector<std::size_t> Gravity::runsOutOf(std::size_t node) const
{
    std::vector<std::size_t> runs;
    if (!isBasin(node))
        for (const Leg leg : m_nodes[node].out)
            runs.push_back(leg.run);
    else
        for (const BasinOutlet& outlet : basinAt(node).outlets)
            if (outlet.run)
                runs.push_back(placeOfRun(*outlet.run));
    return runs;
}

// What joins at a tee by all but one of its runs.
units::Flow Gravity::besides(std::size_t run, std::size_t tee, const Work& work) const
{
    units::Flow sum;
    for (const Leg leg : m_nodes[tee].in)
        if (const Stage<units::Flow>& flow = work.flows.runs[leg.run]; leg.run != run && flow)
            sum += leg.forward ? *flow : -*flow;
    return sum;
}

bool Gravity::leadsToTee(std::size_t run) const
{
    const std::size_t target = m_ends[run].target;
    if (target >= m_nodes.size() || isBasin(target) || m_nodes[target].out.empty())
        return false;
    const std::vector<Leg>& out = m_nodes[target].out;
    return std::all_of(out.begin(), out.end(), [this](Leg leg) { return m_pipes[leg.run].has_value(); });
}

units::Elevation Gravity::needOf(std::size_t run, units::Flow flow, const Work& work, Behind behind) const
{
    std::optional<units::Elevation> tail = work.tails[run];
    if (behind == Behind::answers && leadsToTee(run)) {
        const std::size_t tee = m_ends[run].target;
        tail = teeNeeds(tee, flow + besides(run, tee, work), work).level;
    }
    return hydraulics::levelNeeded(*m_pipes[run], flow, tail, m_viscosity);
}

// The run that leads on to further tees, on which the others hang; the first where none does.
std::size_t Gravity::mainRun(std::size_t tee) const
{
    const std::vector<Leg>& out = m_nodes[tee].out;
    const auto found = std::find_if(out.begin(), out.end(), [this](Leg leg) { return leadsToTee(leg.run); });
    return found == out.end() ? out.front().run : found->run;
}

units::Flow Gravity::takenBy(std::size_t run, units::Elevation level, units::Flow most, const Work& work) const
{
    return hydraulics::takenAt(
        run, level, most, [&](std::size_t way, units::Flow flow) { return needOf(way, flow, work, Behind::answers); });
}

// The level at a tee and what passes it, when its main run and those behind it end with this flow: from the far end
// back every level follows from the one before, and all of them rise with the flow.
Gravity::Passing Gravity::passing(std::size_t tee, units::Flow last, units::Flow most, const Work& work) const
{
    const std::size_t main = mainRun(tee);
    Passing at;
    units::Flow flow = last;
    if (leadsToTee(main)) {
        const std::size_t next = m_ends[main].target;
        const Passing beyond = passing(next, last, most, work);
        flow = std::max(beyond.flow - besides(main, next, work), units::Flow());
        at.level = hydraulics::levelNeeded(*m_pipes[main], flow, beyond.level, m_viscosity);
    } else {
        at.level = hydraulics::levelNeeded(*m_pipes[main], flow, work.tails[main], m_viscosity);
    }
    at.flow = flow;
    for (const Leg leg : m_nodes[tee].out) {
        at.runs.push_back(leg.run == main ? flow : takenBy(leg.run, at.level, most, work));
        at.flow += leg.run == main ? units::Flow() : at.runs.back();
    }
    return at;
}

Gravity::Passing Gravity::teeNeeds(std::size_t tee, units::Flow flow, const Work& work) const
{
    const std::vector<Leg>& out = m_nodes[tee].out;
    if (out.size() == 1)
        return {needOf(out.front().run, flow, work, Behind::answers), flow, {flow}};
    units::Flow most = flow;
    for (const Stage<units::Flow>& other : work.flows.runs)
        if (other)
            most += std::max(*other, -*other);
    const units::Flow last =
        hydraulics::risesThrough([&](units::Flow end) { return passing(tee, end, most, work).flow - flow; }, {}, most);
    Passing at = passing(tee, last, most, work);
    // What is left at a level where a run takes any of several flows is shared out by how far each would go.
    const Passing beyond = passing(tee, last * (1.0 + 1e-12), most, work);
    const units::Flow jump = beyond.flow - at.flow, rest = flow - at.flow;
    const double part = jump > units::Flow() ? std::clamp(static_cast<double>(rest / jump), 0.0, 1.0) : 0.0;
    units::Flow sum;
    std::size_t largest = 0;
    for (std::size_t i = 0; i < at.runs.size(); ++i) {
        at.runs[i] += part * (beyond.runs[i] - at.runs[i]);
        sum += at.runs[i];
        largest = at.runs[i] > at.runs[largest] ? i : largest;
    }
    at.runs[largest] += flow - sum; // rounding
    at.flow = flow;
    return at;
}

void Gravity::send(Leg leg, const Stage<units::Flow>& flow, bool tide, GravityFlows& flows)
{
    flows.runs[leg.run] = flow && !leg.forward ? Stage<units::Flow>(-*flow) : flow;
    flows.meanOfTide[leg.run] = tide;
}

void Gravity::passBasin(std::size_t node, const Stage<units::Flow>& arrived, bool tide, Work& work) const
{
    const Basin& basin = basinAt(node);
    const PumpedFlow pumped = work.pumped[node];
    GravityFlows& flows = work.flows;
    flows.inflow[node] = arrived ? Stage<units::Flow>(pumped.in + *arrived) : arrived;
    Throughflow through{Stage<Standing>::missingAs(Stage<units::Flow>()), {}};
    const auto passOn = [&](Behind behind) {
        return throughflowOf(basin, hydraulics::flowBalance(*flows.inflow[node], pumped.out), work.state,
                             [&](const BasinOutlet& outlet, units::Flow flow) {
                                 const std::size_t run = outlet.run ? placeOfRun(*outlet.run) : m_pipes.size();
                                 const bool known = run < m_pipes.size() && m_pipes[run];
                                 return known ? needOf(run, flow, work, behind) : outlet.holds;
                             });
    };
    if (basin.isSump()) {
        through.outlets.assign(basin.outlets.size(), units::Flow());
    } else if (arrived) {
        through = passOn(Behind::holds);
        if (basin.outlets.size() > 1 || (through.standing && through.standing->heldBy == HeldBy::rim))
            through = passOn(Behind::answers); // what one outlet takes changes what stands behind it
    } else {
        through = {Stage<Standing>::missingAs(arrived), std::vector<Stage<units::Flow>>(basin.outlets.size(), arrived)};
    }
    flows.standing[node] = through.standing;
    for (std::size_t i = 0; i < through.outlets.size(); ++i)
        if (const BasinOutlet& outlet = basin.outlets[i]; outlet.run)
            send({placeOfRun(*outlet.run), outlet.runsForward}, through.outlets[i],
                 tide || outlet.drainLevel.has_value(), flows);
}

void Gravity::passTee(std::size_t node, Stage<units::Flow> flow, bool tide, Work& work) const
{
    const std::vector<Leg>& out = m_nodes[node].out;
    const std::size_t tee = node - m_circuit.basins.size();
    const bool known = std::all_of(out.begin(), out.end(), [this](Leg leg) { return m_pipes[leg.run].has_value(); });
    if (out.size() > 1 && flow && *flow > units::Flow() && !known)
        flow = Stage<units::Flow>::notComputed({"gravity-tee-divides", "a pipe at a tee that divides is not known",
                                                m_pipework.tees[m_circuit.tees[tee]].id});
    if (!flow || out.empty() || !known) {
        for (const Leg leg : out)
            send(leg, flow, tide, work.flows);
        return;
    }
    const Passing at = out.size() == 1 ? Passing{needOf(out.front().run, *flow, work, Behind::holds), *flow, {*flow}}
                                       : teeNeeds(node, *flow, work);
    work.flows.teeLevels[tee] = at.level;
    for (std::size_t way = 0; way < out.size(); ++way)
        send(out[way], at.runs[way], tide, work.flows);
}

// Nothing new reaches the node, and nothing new stands behind the runs that lead on from it.
bool Gravity::unchanged(std::size_t node, const Stage<units::Flow>& arrived, Work& work) const
{
    bool same = work.arrived[node] && *work.arrived[node] == arrived;
    for (const std::size_t run : runsOutOf(node)) {
        const auto tail = tailOf(run, work.flows, work.levels);
        const auto& last = work.tails[run];
        const bool moved = tail.has_value() != last.has_value() ||
                           (tail && std::fabs(units::inMetres(*tail) - units::inMetres(*last)) > settled);
        if (moved)
            work.tails[run] = tail;
        same = same && !moved;
    }
    work.arrived[node] = arrived;
    return same;
}

bool Gravity::pass(std::size_t node, Work& work) const
{
    bool tide = false;
    const Stage<units::Flow> arrived = arriving(node, work.flows, tide);
    if (unchanged(node, arrived, work))
        return false;
    if (isBasin(node))
        passBasin(node, arrived, tide, work);
    else
        passTee(node, arrived, tide, work);
    return true;
}

void Gravity::tellLoops(GravityFlows& flows) const
{
    std::vector<bool> passed(m_nodes.size(), false);
    for (const std::size_t node : m_order)
        passed[node] = true;
    for (std::size_t node = 0; node < m_circuit.basins.size(); ++node)
        if (!passed[node]) {
            const Reason loop{"gravity-loop", "gravity runs lead in a circle", basinAt(node).id};
            flows.inflow[node] = Stage<units::Flow>::notComputed(loop);
            flows.standing[node] = Stage<Standing>::notComputed(loop);
        }
}

GravityFlows Gravity::flowsFor(const std::vector<PumpedFlow>& pumped, const std::vector<units::Elevation>& levels,
                               RunningState state) const
{
    GravityFlows flows;
    flows.inflow.resize(m_circuit.basins.size());
    flows.standing.resize(m_circuit.basins.size());
    flows.teeLevels.resize(m_circuit.tees.size());
    flows.meanOfTide.assign(m_circuit.runs.size(), false);
    for (const std::size_t run : m_circuit.runs)
        flows.runs.push_back(beforeAnything(m_pipework.runs[run]));
    Work work{pumped, levels, state, flows, {}, {}};
    work.arrived.resize(m_nodes.size());
    work.tails.resize(m_circuit.runs.size());
    bool again = true;
    for (int round = 0; again && round < mostRounds; ++round) {
        again = false;
        for (const std::size_t node : m_order)
            again = pass(node, work) || again;
        if (!again)
            break;
        again = false;
        for (auto node = m_order.rbegin(); node != m_order.rend(); ++node)
            again = pass(*node, work) || again;
    }
    if (again)
        for (std::size_t node = 0; node < m_circuit.basins.size(); ++node)
            if (flows.standing[node])
                flows.standing[node] = Stage<Standing>::notSolved(
                    {"levels-not-settled", "the levels of gravity runs do not settle", basinAt(node).id});
    tellLoops(flows);
    return flows;
}

std::vector<std::optional<OpenFlow>> Gravity::waterIn(const GravityFlows& flows,
                                                      const std::vector<units::Elevation>& levels) const
{
    std::vector<std::optional<OpenFlow>> open(m_circuit.runs.size());
    for (std::size_t run = 0; run < open.size(); ++run) {
        if (!m_pipes[run] || !flows.runs[run])
            continue;
        const bool forward = m_ends[run].forward;
        const units::Flow flow = forward ? *flows.runs[run] : -*flows.runs[run];
        const auto tail = tailOf(run, flows, levels);
        open[run] = openFlowOf(m_pipework.runs[m_circuit.runs[run]], forward, flow,
                               hydraulics::waterAlong(*m_pipes[run], flow, tail, m_viscosity), tail);
    }
    return open;
}

} // namespace sumpwright::assessment

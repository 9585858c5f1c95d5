#include "core/report/water_way.hpp"

#include <algorithm>
#include <deque>
#include <map>
#include <set>

#include "core/plan/run_ends.hpp"

namespace sumpwright::report
{

namespace
{

using plan::Run;

// What an end meets: port, pump or tee; their ids differ over all kinds. Invalid: open.
base::Id nodeOf(const plan::RunEnd& end)
{
    if (const auto* port = std::get_if<plan::PortEnd>(&end))
        return port->port;
    if (const auto* pump = std::get_if<plan::PumpEnd>(&end))
        return pump->pump;
    if (const auto* tee = std::get_if<plan::TeeEnd>(&end))
        return tee->tee;
    return {};
}

bool carries(const assessment::Assessment* results, base::Id run)
{
    const auto* result = results ? assessment::find(results->flow->runs, run) : nullptr;
    if (!result)
        return true;
    const auto& flow = result->flow[assessment::RunningState::least];
    return !flow || flow->flow != units::Flow();
}

// From the pump over tees; every node by its least effort, a run without water counting as a long way round.
struct Reached {
    int effort = 0;
    base::Id from;
    const Run* by = nullptr;
};

class PressureWays
{
public:
    PressureWays(const plan::Plan& plan, const assessment::Assessment* results, base::Id pump)
    {
        std::multimap<base::Id, const Run*> meeting;
        for (const auto& run : plan.runs)
            if (run->service == plan::Service::pressure)
                for (const plan::RunEnd* end : {&run->from, &run->to})
                    if (nodeOf(*end).valid())
                        meeting.emplace(nodeOf(*end), run.get());
        m_reached[pump] = {};
        std::set<std::pair<int, base::Id>> open{{0, pump}};
        while (!open.empty()) {
            const auto [effort, node] = *open.begin();
            open.erase(open.begin());
            m_order.push_back(node);
            if (node != pump && !plan.tees.find(node))
                continue; // a port or another pump: the way ends there
            const auto [first, last] = meeting.equal_range(node);
            for (auto each = first; each != last; ++each)
                spread(*each->second, node, effort + (carries(results, each->second->id) ? 1 : 1000), open);
        }
    }

    const std::vector<base::Id>& order() const { return m_order; } // nearest first, the pump itself included
    std::optional<std::vector<WayRun>> to(base::Id node) const
    {
        if (!m_reached.count(node))
            return std::nullopt;
        std::vector<WayRun> runs;
        for (const Reached* at = &m_reached.at(node); at->by; at = &m_reached.at(at->from))
            runs.push_back({at->by->id, nodeOf(at->by->from) == at->from});
        std::reverse(runs.begin(), runs.end());
        return runs;
    }

private:
    void spread(const Run& run, base::Id node, int effort, std::set<std::pair<int, base::Id>>& open)
    {
        const base::Id other = nodeOf(run.from) == node ? nodeOf(run.to) : nodeOf(run.from);
        if (!other.valid())
            return;
        const auto known = m_reached.find(other);
        if (known != m_reached.end() && known->second.effort <= effort)
            return;
        if (known != m_reached.end())
            open.erase({known->second.effort, other});
        m_reached[other] = {effort, node, &run};
        open.insert({effort, other});
    }

    std::map<base::Id, Reached> m_reached;
    std::vector<base::Id> m_order;
};

std::map<base::Id, base::Id> vesselsByPort(const plan::Plan& plan)
{
    std::map<base::Id, base::Id> homes;
    for (const auto& vessel : plan.vessels)
        for (const plan::Port& port : vessel->ports)
            homes.emplace(port.id, vessel->id);
    return homes;
}

std::optional<plan::PortKind> portKindAt(const plan::Plan& plan, const plan::RunEnd& end)
{
    const auto* at = std::get_if<plan::PortEnd>(&end);
    const plan::Vessel* vessel = at ? plan.vessels.find(at->vessel) : nullptr;
    const plan::Port* port = vessel ? plan::findPort(*vessel, at->port) : nullptr;
    return port ? std::optional(port->kind) : std::nullopt;
}

// Gravity runs by the node the water comes from: a vessel or a tee.
class GravityWays
{
public:
    struct Leg {
        const Run* run = nullptr;
        bool forward = true;
        base::Id leftBy{};    // port, where it starts at a vessel
        base::Id enteredBy{}; // port, where it ends at one
        base::Id to{};        // vessel or tee
        units::Elevation start = units::elevationMetres(0.0);
    };

    explicit GravityWays(const plan::Plan& plan) : m_plan(plan)
    {
        for (const auto& run : plan.runs) {
            if (run->service != plan::Service::gravity || run->vertices.size() < 2)
                continue;
            Leg leg;
            leg.run = run.get();
            leg.forward = !drawnAgainst(plan, *run);
            const plan::RunEnd& from = leg.forward ? run->from : run->to;
            const plan::RunEnd& to = leg.forward ? run->to : run->from;
            leg.start = (leg.forward ? run->vertices.front() : run->vertices.back()).level;
            base::Id source = nodeOf(from);
            leg.to = nodeOf(to);
            if (const auto* port = std::get_if<plan::PortEnd>(&from)) {
                leg.leftBy = port->port;
                source = port->vessel;
            }
            if (const auto* port = std::get_if<plan::PortEnd>(&to)) {
                leg.enteredBy = port->port;
                leg.to = port->vessel;
            }
            if (source.valid() && leg.to.valid())
                m_legs[source].push_back(leg);
        }
        for (auto& [source, legs] : m_legs)
            std::stable_sort(legs.begin(), legs.end(), [](const Leg& a, const Leg& b) { return a.start < b.start; });
    }

    // The shortest way to a sump, else the longest there is; the lowest outlet first.
    std::vector<const Leg*> from(base::Id vessel) const
    {
        std::map<base::Id, std::pair<base::Id, const Leg*>> reached{{vessel, {}}};
        std::deque<base::Id> open{vessel};
        base::Id last = vessel;
        while (!open.empty()) {
            last = open.front();
            open.pop_front();
            const plan::Vessel* at = m_plan.vessels.find(last);
            if (last != vessel && at && at->kind == plan::VesselKind::sump)
                break;
            const auto legs = m_legs.find(last);
            if (legs == m_legs.end())
                continue;
            for (const Leg& leg : legs->second)
                if (reached.emplace(leg.to, std::pair{last, &leg}).second)
                    open.push_back(leg.to);
        }
        std::vector<const Leg*> way;
        for (base::Id node = last; node != vessel; node = reached.at(node).first)
            way.push_back(reached.at(node).second);
        std::reverse(way.begin(), way.end());
        while (!way.empty() && !m_plan.vessels.find(way.back()->to))
            way.pop_back(); // ends at a tee that leads nowhere
        return way;
    }

private:
    const plan::Plan& m_plan;
    std::map<base::Id, std::vector<Leg>> m_legs;
};

void addDescent(WaterWay& way, const plan::Plan& plan)
{
    const auto isSump = [&](base::Id id) {
        const plan::Vessel* vessel = plan.vessels.find(id);
        return vessel && vessel->kind == plan::VesselKind::sump;
    };
    way.stops.push_back({way.choice.vessel, way.choice.port});
    const GravityWays ways(plan);
    const auto legs = isSump(way.choice.vessel) ? std::vector<const GravityWays::Leg*>() : ways.from(way.choice.vessel);
    for (const GravityWays::Leg* leg : legs) {
        WayStop& stop = way.stops.back();
        if (stop.onward.empty())
            stop.leftBy = leg->leftBy;
        stop.onward.push_back({leg->run->id, leg->forward});
        if (leg->enteredBy.valid())
            way.stops.push_back({leg->to, leg->enteredBy});
    }
    way.closed = isSump(way.stops.back().vessel);
}

} // namespace

bool drawnAgainst(const plan::Plan& plan, const plan::Run& gravity)
{
    const auto from = portKindAt(plan, gravity.from), to = portKindAt(plan, gravity.to);
    const bool fromGives = from && *from != plan::PortKind::inlet, toGives = to && *to != plan::PortKind::inlet;
    return !fromGives && (toGives || from == plan::PortKind::inlet);
}

std::vector<WayChoice> waysOf(const plan::Plan& plan, const assessment::Assessment* results)
{
    const auto homes = vesselsByPort(plan);
    std::vector<WayChoice> choices;
    for (const auto& pump : plan.pumps) {
        const PressureWays ways(plan, results, pump->id);
        for (const base::Id node : ways.order())
            if (const auto home = homes.find(node); home != homes.end())
                choices.push_back({pump->id, home->second, node});
    }
    return choices;
}

std::optional<WayChoice> usualWay(const plan::Plan& plan, const assessment::Assessment* results, base::Id pump)
{
    const std::vector<WayChoice> choices = waysOf(plan, results);
    const auto ofPump = std::find_if(choices.begin(), choices.end(),
                                     [pump](const WayChoice& choice) { return !pump.valid() || choice.pump == pump; });
    if (ofPump == choices.end())
        return std::nullopt;
    const auto* worst = results ? assessment::find(results->headPaths->pumps, ofPump->pump) : nullptr;
    if (worst && worst->path) {
        const WayChoice choice{ofPump->pump, worst->path->vessel, worst->path->port};
        if (std::find(choices.begin(), choices.end(), choice) != choices.end())
            return choice;
    }
    return *ofPump;
}

std::optional<WaterWay> wayOf(const plan::Plan& plan, const assessment::Assessment* results, const WayChoice& choice)
{
    const plan::Pump* pump = plan.pumps.find(choice.pump);
    const plan::Vessel* end = plan.vessels.find(choice.vessel);
    if (!pump || !plan.vessels.find(pump->vessel) || !end || !plan::findPort(*end, choice.port))
        return std::nullopt;
    auto lift = PressureWays(plan, results, choice.pump).to(choice.port);
    if (!lift || lift->empty())
        return std::nullopt;
    WaterWay way{choice, pump->vessel, std::move(*lift), {}};
    addDescent(way, plan);
    return way;
}

} // namespace sumpwright::report

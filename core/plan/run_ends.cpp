#include "core/plan/run_ends.hpp"

#include "core/plan/tidy.hpp"

namespace sumpwright::plan
{

const RunEnd& endOf(const Run& run, RunSide side) { return side == RunSide::from ? run.from : run.to; }

RunEnd& endOf(Run& run, RunSide side) { return side == RunSide::from ? run.from : run.to; }

Point placeOf(const Vessel& vessel, const Pump& pump) { return vessel.centre + turned(pump.offset, vessel.turn); }

namespace
{

Vertex vertexAt(Point at, units::Elevation level)
{
    Vertex vertex;
    vertex.at = tidy(at);
    vertex.level = tidy(level);
    return vertex;
}

} // namespace

std::optional<Vertex> placeOf(const Plan& plan, const RunEnd& end)
{
    if (const auto* at = std::get_if<PortEnd>(&end)) {
        const Vessel* vessel = plan.vessels.find(at->vessel);
        const Port* port = vessel ? findPort(*vessel, at->port) : nullptr;
        if (port)
            return vertexAt(placeOf(*vessel, *port), port->level);
    } else if (const auto* standing = std::get_if<PumpEnd>(&end)) {
        const Pump* pump = plan.pumps.find(standing->pump);
        const Vessel* vessel = pump ? plan.vessels.find(pump->vessel) : nullptr;
        if (vessel)
            return vertexAt(placeOf(*vessel, *pump), pump->outletLevel);
    } else if (const auto* meeting = std::get_if<TeeEnd>(&end)) {
        if (const Tee* tee = plan.tees.find(meeting->tee))
            return vertexAt(tee->at, tee->level);
    }
    return std::nullopt;
}

const Run* runAtPort(const Plan& plan, base::Id vessel, base::Id port)
{
    for (const auto& run : plan.runs)
        for (const RunEnd* end : {&run->from, &run->to})
            if (const auto* at = std::get_if<PortEnd>(end); at && at->vessel == vessel && at->port == port)
                return run.get();
    return nullptr;
}

const Run* runAtPump(const Plan& plan, base::Id pump)
{
    for (const auto& run : plan.runs)
        for (const RunEnd* end : {&run->from, &run->to})
            if (const auto* at = std::get_if<PumpEnd>(end); at && at->pump == pump)
                return run.get();
    return nullptr;
}

Meetings meetingsAtTees(const Plan& plan)
{
    Meetings meetings;
    for (const auto& run : plan.runs)
        for (const RunSide side : {RunSide::from, RunSide::to})
            if (const auto* at = std::get_if<TeeEnd>(&endOf(*run, side)))
                meetings[at->tee].push_back({run->id, side});
    return meetings;
}

std::vector<Meeting> meetingsAt(const Plan& plan, base::Id tee)
{
    std::vector<Meeting> meetings;
    for (const auto& run : plan.runs)
        for (const RunSide side : {RunSide::from, RunSide::to})
            if (const auto* at = std::get_if<TeeEnd>(&endOf(*run, side)); at && at->tee == tee)
                meetings.push_back({run->id, side});
    return meetings;
}

} // namespace sumpwright::plan

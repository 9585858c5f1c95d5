#include "core/plan/edits/motion.hpp"

#include <algorithm>
#include <optional>
#include <set>

#include "core/plan/run_ends.hpp"
#include "core/plan/tidy.hpp"

namespace sumpwright::plan
{

namespace
{

Point moved(Point place, const Motion& motion)
{
    const bool turns = units::inRadians(motion.turn) != 0.0;
    return tidy((turns ? turnedAbout(place, motion.about, motion.turn) : place) + motion.shift);
}

units::Elevation lifted(units::Elevation level, const Motion& motion) { return tidy(level + motion.lift); }

void lift(std::optional<units::Elevation>& level, const Motion& motion)
{
    if (level)
        level = lifted(*level, motion);
}

// What goes along: the elements named, and tees all of whose runs go along.
class Movers
{
public:
    Movers(const Plan& plan, const std::vector<base::Id>& named)
        : m_plan(plan), m_named(named.begin(), named.end()), m_meetings(meetingsAtTees(plan))
    {
        std::set<base::Id> carried;
        for (const auto& [tee, meetings] : m_meetings) {
            carried.insert(carried.end(), tee);
            if (m_named.count(tee) || runsNamed(meetings) >= 2)
                m_tees.insert(tee);
        }
        while (dropHeld(carried)) {
        }
        while (spread(carried)) {
        }
    }

    bool named(base::Id id) const { return m_named.count(id) > 0; }
    bool tee(base::Id id) const { return m_tees.count(id) > 0; }
    bool meets(const RunEnd& end) const
    {
        if (const auto* port = std::get_if<PortEnd>(&end))
            return named(port->vessel);
        if (const auto* tee = std::get_if<TeeEnd>(&end))
            return m_tees.count(tee->tee) > 0;
        if (const auto* standing = std::get_if<PumpEnd>(&end)) {
            const Pump* pump = m_plan.pumps.find(standing->pump);
            return named(standing->pump) || (pump && named(pump->vessel));
        }
        return false;
    }

private:
    int runsNamed(const std::vector<Meeting>& meetings) const
    {
        int count = 0;
        for (const Meeting& meeting : meetings)
            count += named(meeting.run) ? 1 : 0;
        return count;
    }
    const RunEnd& farEnd(const Meeting& meeting) const
    {
        return endOf(*m_plan.runs.find(meeting.run), otherSide(meeting.side));
    }
    bool held(base::Id tee, const std::set<base::Id>& carried) const
    {
        const auto& meetings = m_meetings.at(tee);
        return std::any_of(meetings.begin(), meetings.end(), [&](const Meeting& meeting) {
            const auto* far = std::get_if<TeeEnd>(&farEnd(meeting));
            return !named(meeting.run) && !meets(farEnd(meeting)) && !(far && carried.count(far->tee));
        });
    }
    // Takes out tees held back by a run whose far end stays. True when some were.
    bool dropHeld(std::set<base::Id>& carried) const
    {
        std::vector<base::Id> back;
        for (const base::Id tee : carried)
            if (held(tee, carried))
                back.push_back(tee);
        for (const base::Id tee : back)
            carried.erase(tee);
        return !back.empty();
    }
    // Of the tees not held back, those go along that hang on something that does. True when some were added.
    bool spread(const std::set<base::Id>& carried)
    {
        const std::size_t before = m_tees.size();
        for (const base::Id tee : carried) {
            const auto& meetings = m_meetings.at(tee);
            if (std::any_of(meetings.begin(), meetings.end(),
                            [&](const Meeting& meeting) { return named(meeting.run) || meets(farEnd(meeting)); }))
                m_tees.insert(tee);
        }
        return m_tees.size() > before;
    }

    const Plan& m_plan;
    std::set<base::Id> m_named;
    Meetings m_meetings;
    std::set<base::Id> m_tees;
};

void moveVessel(Draft& draft, base::Id id, const Motion& motion)
{
    draft.change<Vessel>(id, [&](Vessel& vessel) {
        vessel.centre = moved(vessel.centre, motion);
        if (units::inRadians(motion.turn) != 0.0)
            vessel.turn = tidy(vessel.turn + motion.turn);
        vessel.baseLevel = lifted(vessel.baseLevel, motion);
        lift(vessel.runningLevel, motion);
        for (Port& port : vessel.ports) {
            port.level = lifted(port.level, motion);
            lift(port.drainLevel, motion);
            lift(port.ventLevel, motion);
        }
    });
}

void movePump(Draft& draft, const Pump& pump, const Movers& movers, const Motion& motion)
{
    Pump changed = pump;
    changed.outletLevel = lifted(pump.outletLevel, motion);
    if (!movers.named(pump.vessel)) {
        const Vessel& vessel = draft.the<Vessel>(pump.vessel);
        const Point place = moved(placeOf(vessel, pump), motion);
        changed.offset = tidy(turned(place - vessel.centre, -vessel.turn));
    }
    draft.put(std::move(changed));
}

void moveRun(Draft& draft, base::Id id, const Motion& motion)
{
    draft.change<Run>(id, [&](Run& run) {
        for (Vertex& vertex : run.vertices) {
            vertex.at = moved(vertex.at, motion);
            vertex.level = lifted(vertex.level, motion);
        }
    });
}

void moveSurroundings(Draft& draft, base::Id id, const Motion& motion)
{
    if (draft.plan.fixtures.find(id))
        draft.change<Fixture>(id, [&](Fixture& fixture) {
            fixture.from = moved(fixture.from, motion);
            fixture.to = moved(fixture.to, motion);
            fixture.level = lifted(fixture.level, motion);
        });
    else if (draft.plan.notes.find(id))
        draft.change<Note>(id, [&](Note& note) { note.at = moved(note.at, motion); });
    else if (draft.plan.dimensions.find(id))
        draft.change<DimensionLine>(id, [&](DimensionLine& line) {
            line.from = moved(line.from, motion);
            line.to = moved(line.to, motion);
        });
}

} // namespace

void moveAll(Draft& draft, const std::vector<base::Id>& elements, const Motion& motion)
{
    for (const base::Id id : elements)
        if (!kindOf(draft.plan, id))
            refuseUnknown(id, "element");
    const Plan start = draft.plan;
    const Movers movers(start, elements);
    for (const auto& pump : start.pumps)
        if (movers.named(pump->id) || movers.named(pump->vessel))
            movePump(draft, *pump, movers, motion);
    for (const auto& vessel : start.vessels)
        if (movers.named(vessel->id))
            moveVessel(draft, vessel->id, motion);
    for (const auto& tee : start.tees)
        if (movers.tee(tee->id))
            draft.change<Tee>(tee->id, [&](Tee& changed) {
                changed.at = moved(tee->at, motion);
                changed.level = lifted(tee->level, motion);
            });
    for (const auto& run : start.runs)
        if (movers.named(run->id) || (movers.meets(run->from) && movers.meets(run->to)))
            moveRun(draft, run->id, motion);
    for (const base::Id id : elements)
        moveSurroundings(draft, id, motion);
}

} // namespace sumpwright::plan

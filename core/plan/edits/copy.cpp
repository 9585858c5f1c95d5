#include "core/plan/edits/copy.hpp"

#include <map>
#include <set>

#include "core/plan/edits/draft.hpp"
#include "core/plan/limits.hpp"
#include "core/plan/run_ends.hpp"
#include "core/plan/tidy.hpp"

namespace sumpwright::plan
{

namespace
{

// What a set of named elements takes along when copied.
class CopySet
{
public:
    CopySet(const Plan& plan, const std::vector<base::Id>& elements)
        : m_plan(plan), m_named(elements.begin(), elements.end())
    {
        for (const base::Id id : m_named)
            if (plan.runs.find(id))
                m_runs.insert(id);
        for (const auto& tee : plan.tees)
            m_tees.insert(tee->id);
        while (dropTees() || dropRuns()) {
        }
    }

    bool copies(base::Id id) const
    {
        if (const Pump* pump = m_plan.pumps.find(id))
            return m_named.count(id) || m_named.count(pump->vessel);
        if (m_plan.runs.find(id))
            return m_runs.count(id) > 0;
        if (m_plan.tees.find(id))
            return m_tees.count(id) > 0;
        return m_named.count(id) > 0;
    }
    std::vector<base::Id> leftBehind() const
    {
        std::vector<base::Id> left;
        for (const base::Id id : m_named)
            if (m_plan.runs.find(id) && !m_runs.count(id))
                left.push_back(id);
        return left;
    }

private:
    bool copiesEnd(const RunEnd& end) const
    {
        if (const auto* port = std::get_if<PortEnd>(&end))
            return m_named.count(port->vessel) > 0;
        if (const auto* pump = std::get_if<PumpEnd>(&end))
            return copies(pump->pump);
        if (const auto* tee = std::get_if<TeeEnd>(&end))
            return m_tees.count(tee->tee) > 0;
        return true;
    }
    bool dropTees()
    {
        return std::erase_if(m_tees, [&](base::Id tee) {
                   for (const Meeting& meeting : meetingsAt(m_plan, tee))
                       if (!m_runs.count(meeting.run))
                           return true;
                   return false;
               }) > 0;
    }
    bool dropRuns()
    {
        return std::erase_if(m_runs, [&](base::Id id) {
                   const Run* run = m_plan.runs.find(id);
                   return !copiesEnd(run->from) || !copiesEnd(run->to);
               }) > 0;
    }

    const Plan& m_plan;
    std::set<base::Id> m_named;
    std::set<base::Id> m_runs;
    std::set<base::Id> m_tees;
};

class Copier
{
public:
    Copier(Draft& draft, const CopySet& set, const Plan& source) : m_draft(draft), m_set(set), m_source(source) {}

    void copyAll(Point by)
    {
        m_new.clear();
        each(m_source.vessels, [&](Vessel& vessel) {
            vessel.tag = m_draft.newTag(tagPrefix(vessel.kind));
            vessel.centre = tidy(vessel.centre + by);
            for (Port& port : vessel.ports)
                port.id = fresh(port.id);
        });
        each(m_source.pumps, [&](Pump& pump) {
            pump.tag = m_draft.newTag("P");
            movePump(pump, by);
        });
        each(m_source.tees, [&](Tee& tee) {
            tee.tag = m_draft.newTag("J");
            tee.at = tidy(tee.at + by);
        });
        each(m_source.runs, [&](Run& run) { moveRun(run, by); });
        each(m_source.fixtures, [&](Fixture& fixture) {
            fixture.tag = m_draft.newTag(tagPrefix(fixture.kind));
            fixture.from = tidy(fixture.from + by);
            fixture.to = tidy(fixture.to + by);
        });
        each(m_source.notes, [&](Note& note) { note.at = tidy(note.at + by); });
        each(m_source.dimensions, [&](DimensionLine& line) {
            line.from = tidy(line.from + by);
            line.to = tidy(line.to + by);
        });
    }

private:
    template <class Element, class Change> void each(const Table<Element>& table, Change change)
    {
        for (const auto& element : table) {
            if (!m_set.copies(element->id))
                continue;
            Element copy = *element;
            copy.id = fresh(element->id);
            change(copy);
            m_draft.put(std::move(copy));
        }
    }
    base::Id fresh(base::Id old) { return m_new[old] = m_draft.newId(); }
    base::Id newOf(base::Id old) const
    {
        const auto at = m_new.find(old);
        return at == m_new.end() ? old : at->second;
    }
    void movePump(Pump& pump, Point by)
    {
        const base::Id home = newOf(pump.vessel);
        if (home == pump.vessel) { // copied without its vessel: stands in the same one
            const Vessel& vessel = m_draft.the<Vessel>(home);
            pump.offset = tidy(turned(placeOf(vessel, pump) + by - vessel.centre, -vessel.turn));
        }
        pump.vessel = home;
    }
    void moveRun(Run& run, Point by)
    {
        run.tag = m_draft.newTag("R");
        for (RunEnd* end : {&run.from, &run.to}) {
            if (auto* port = std::get_if<PortEnd>(end))
                *port = {newOf(port->vessel), newOf(port->port), port->lossCoefficient};
            else if (auto* pump = std::get_if<PumpEnd>(end))
                pump->pump = newOf(pump->pump);
            else if (auto* tee = std::get_if<TeeEnd>(end))
                tee->tee = newOf(tee->tee);
        }
        for (Vertex& vertex : run.vertices)
            vertex.at = tidy(vertex.at + by);
        for (Valve& valve : run.valves) {
            valve.id = m_draft.newId();
            valve.tag = m_draft.newTag("V");
        }
    }

    Draft& m_draft;
    const CopySet& m_set;
    const Plan& m_source;
    std::map<base::Id, base::Id> m_new;
};

void requireAll(const Draft& draft, const std::vector<base::Id>& elements)
{
    for (const base::Id id : elements)
        if (!kindOf(draft.plan, id))
            refuseUnknown(id, "element");
}

} // namespace

Edit duplicate(std::vector<base::Id> elements, Point by)
{
    return makeEdit("edit.duplicate", elements, [elements, by](Draft& draft) {
        requireAll(draft, elements);
        const CopySet set(draft.before, elements);
        Copier(draft, set, draft.before).copyAll(by);
    });
}

Edit arrayCopy(std::vector<base::Id> elements, int columns, int rows, Point columnStep, Point rowStep)
{
    return makeEdit("edit.array", elements, [=](Draft& draft) {
        requireAll(draft, elements);
        if (columns < 1 || rows < 1 || columns > limits::mostCopies || rows > limits::mostCopies ||
            columns * rows < 2 || columns * rows > limits::mostCopies)
            refuse("plan.copy-count", "array", std::to_string(columns) + " x " + std::to_string(rows) + " copies",
                   "2 to " + std::to_string(limits::mostCopies) + " in all");
        const CopySet set(draft.before, elements);
        Copier copier(draft, set, draft.before);
        for (int row = 0; row < rows; ++row)
            for (int column = 0; column < columns; ++column)
                if (row > 0 || column > 0)
                    copier.copyAll({static_cast<double>(column) * columnStep.x + static_cast<double>(row) * rowStep.x,
                                    static_cast<double>(column) * columnStep.y + static_cast<double>(row) * rowStep.y});
    });
}

std::vector<base::Id> runsLeftBehind(const Plan& plan, const std::vector<base::Id>& elements)
{
    return CopySet(plan, elements).leftBehind();
}

} // namespace sumpwright::plan

// Checks over the whole plan: ids, tags, references, and run ends at the place of what they meet.
#include "core/plan/check.hpp"

#include <algorithm>
#include <cmath>
#include <set>
#include <unordered_map>
#include <unordered_set>

#include "core/plan/check_elements.hpp"
#include "core/plan/limits.hpp"
#include "core/plan/run_ends.hpp"
#include "core/plan/tags.hpp"

namespace sumpwright::plan
{

namespace
{

// Calls each(element) for all elements of a table that are not the same in the other plan.
template <class Element, class Each> void forChanged(const Table<Element>& now, const Table<Element>* was, Each each)
{
    for (const auto& element : now)
        if (!was || was->share(element->id) != element)
            each(*element);
}

template <class T> bool changed(const std::shared_ptr<const T>& now, const std::shared_ptr<const T>* was)
{
    return now && (!was || *was != now);
}

void checkEach(const Plan& plan, const Plan* was, FaultFinder& faults)
{
    if (changed(plan.site, was ? &was->site : nullptr))
        checkSite(*plan.site, faults);
    if (changed(plan.floor, was ? &was->floor : nullptr))
        checkFloor(*plan.floor, faults);
    if (changed(plan.underlay, was ? &was->underlay : nullptr))
        checkUnderlay(*plan.underlay, faults);
    if (changed(plan.ownParts, was ? &was->ownParts : nullptr))
        checkOwnParts(*plan.ownParts, faults);
    forChanged(plan.fixtures, was ? &was->fixtures : nullptr, [&](const Fixture& e) { checkFixture(e, faults); });
    forChanged(plan.vessels, was ? &was->vessels : nullptr, [&](const Vessel& e) { checkVessel(e, faults); });
    forChanged(plan.pumps, was ? &was->pumps : nullptr, [&](const Pump& e) { checkPump(e, faults); });
    forChanged(plan.tees, was ? &was->tees : nullptr, [&](const Tee& e) { checkTee(e, faults); });
    forChanged(plan.runs, was ? &was->runs : nullptr, [&](const Run& e) { checkRun(e, faults); });
    forChanged(plan.notes, was ? &was->notes : nullptr, [&](const Note& e) { checkNote(e, faults); });
    forChanged(plan.dimensions, was ? &was->dimensions : nullptr,
               [&](const DimensionLine& e) { checkDimension(e, faults); });
}

class NameBook
{
public:
    explicit NameBook(FaultFinder& faults) : m_faults(faults) {}
    void enter(base::Id id, const char* key)
    {
        if (!id.valid() || !m_ids.insert(id).second)
            m_faults.fault(key, "plan.id-clash", "id " + std::to_string(id.number) + " is zero or used twice",
                           "a number of its own, 1 or more");
    }
    void enter(const std::string& tag)
    {
        if (!m_tags.insert(tag).second)
            m_faults.fault("tag", "plan.tag-clash", "tag " + tag + " is used twice", "a free tag");
    }

private:
    FaultFinder& m_faults;
    std::set<base::Id> m_ids;
    Tags m_tags;
};

void checkNames(const Plan& plan, FaultFinder& faults)
{
    NameBook book(faults);
    const auto tagged = [&](const auto& table, const char* part, auto within) {
        for (const auto& element : table) {
            faults.at(element->id, part, element->tag);
            book.enter(element->id, "id");
            book.enter(element->tag);
            within(*element);
        }
    };
    const auto nothing = [](const auto&) {};
    tagged(plan.fixtures, "fixture", nothing);
    tagged(plan.vessels, "vessel", [&](const Vessel& vessel) {
        for (std::size_t i = 0; i < vessel.ports.size(); ++i)
            book.enter(vessel.ports[i].id, ("ports/" + std::to_string(i) + "/id").c_str());
    });
    tagged(plan.pumps, "pump", nothing);
    tagged(plan.tees, "tee", nothing);
    tagged(plan.runs, "run", [&](const Run& run) {
        for (std::size_t i = 0; i < run.valves.size(); ++i) {
            faults.inside("valves/" + std::to_string(i), run.valves[i].tag);
            book.enter(run.valves[i].id, "id");
            book.enter(run.valves[i].tag);
        }
        faults.inside({}, {});
    });
    for (const auto& note : plan.notes) {
        faults.at(note->id, "note", "note");
        book.enter(note->id, "id");
    }
    for (const auto& dimension : plan.dimensions) {
        faults.at(dimension->id, "dimension", "dimension line");
        book.enter(dimension->id, "id");
    }
}

// Who has been met so far by an end of a run.
struct Met {
    std::unordered_set<base::Id> ports;
    std::unordered_set<base::Id> pumps;
    std::unordered_map<base::Id, int> tees;
};

void checkMeeting(const RunEnd& end, const char* key, Met& met, FaultFinder& faults)
{
    if (const auto* port = std::get_if<PortEnd>(&end)) {
        if (!met.ports.insert(port->port).second)
            faults.fault(key, "plan.port-taken", "the port already has a run", "one run to a port; meet runs in a tee");
    } else if (const auto* pump = std::get_if<PumpEnd>(&end)) {
        if (!met.pumps.insert(pump->pump).second)
            faults.fault(key, "plan.pump-taken", "the pump already has a run",
                         "one run to a pump; split it with a tee");
        if (std::string_view(key) == "to")
            faults.fault(key, "plan.pump-at-end", "the run leads into a pump", "a run that starts at the pump");
    } else if (const auto* tee = std::get_if<TeeEnd>(&end)) {
        ++met.tees[tee->tee];
    }
}

void checkEnd(const Plan& plan, const Run& run, RunSide side, FaultFinder& faults)
{
    const char* key = side == RunSide::from ? "from" : "to";
    const RunEnd& end = endOf(run, side);
    if (std::holds_alternative<OpenEnd>(end))
        return;
    const std::optional<Vertex> met = placeOf(plan, end);
    if (!met) {
        faults.fault(key, "plan.dangling", "the run leads to something that is not in the plan",
                     "a vessel and its port, a pump, or a tee of this plan");
        return;
    }
    if (run.vertices.size() < 2)
        return;
    const Vertex& vertex = side == RunSide::from ? run.vertices.front() : run.vertices.back();
    const double lift = units::inMetres(vertex.level) - units::inMetres(met->level);
    if (distanceBetween(vertex.at, met->at) <= limits::endTolerance &&
        std::abs(lift) <= units::inMetres(limits::endTolerance))
        return;
    const std::size_t index = side == RunSide::from ? 0 : run.vertices.size() - 1;
    faults.fault("vertices/" + std::to_string(index), "plan.end-off-place",
                 "the run ends " + units::format(distanceBetween(vertex.at, met->at)) + " beside and " +
                     units::format(units::metres(lift)) + " above what it meets",
                 "the place and level of the port, pump or tee");
}

void checkReferences(const Plan& plan, FaultFinder& faults)
{
    for (const auto& pump : plan.pumps) {
        faults.at(pump->id, "pump", pump->tag);
        const Vessel* vessel = plan.vessels.find(pump->vessel);
        if (!vessel)
            faults.fault("vessel", "plan.dangling", "the pump stands in a vessel that is not in the plan",
                         "the id of a vessel");
        else if (!withinOutline(*vessel, pump->offset))
            faults.fault("offset", "plan.pump-outside", "the pump lies outside " + vessel->tag,
                         "a place within the vessel's outline");
        else if (pump->outletLevel < vessel->baseLevel)
            faults.fault("outlet_level", "plan.port-below-base", "the outlet is under " + vessel->tag,
                         "above the base at " + units::format(vessel->baseLevel));
    }
    Met met;
    for (const auto& run : plan.runs) {
        faults.at(run->id, "run", run->tag);
        checkMeeting(run->from, "from", met, faults);
        checkMeeting(run->to, "to", met, faults);
        checkEnd(plan, *run, RunSide::from, faults);
        checkEnd(plan, *run, RunSide::to, faults);
    }
    for (const auto& tee : plan.tees) {
        faults.at(tee->id, "tee", tee->tag);
        if (met.tees[tee->id] < 2)
            faults.fault("", "plan.lonely-tee", "a tee with fewer than two run ends", "two run ends or more");
    }
}

} // namespace

std::vector<Fault> check(const Plan& plan)
{
    FaultFinder faults;
    checkEach(plan, nullptr, faults);
    checkNames(plan, faults);
    checkReferences(plan, faults);
    return faults.take();
}

namespace
{

// Whether an element is new or has another tag or other ids inside than before.
bool namesDiffer(const Vessel& a, const Vessel& b)
{
    return a.tag != b.tag || !std::equal(a.ports.begin(), a.ports.end(), b.ports.begin(), b.ports.end(),
                                         [](const Port& p, const Port& q) { return p.id == q.id; });
}
bool namesDiffer(const Run& a, const Run& b)
{
    return a.tag != b.tag || !std::equal(a.valves.begin(), a.valves.end(), b.valves.begin(), b.valves.end(),
                                         [](const Valve& v, const Valve& w) { return v.id == w.id && v.tag == w.tag; });
}
template <class Element> bool namesDiffer(const Element& a, const Element& b)
{
    if constexpr (requires { a.tag; })
        return a.tag != b.tag;
    return false;
}
template <class Element> bool namesTouched(const Table<Element>& before, const Table<Element>& after)
{
    return std::any_of(after.begin(), after.end(), [&before](const auto& now) {
        const auto was = before.share(now->id);
        return was != now && (!was || namesDiffer(*was, *now));
    });
}
bool namesTouched(const Plan& before, const Plan& after)
{
    return namesTouched(before.vessels, after.vessels) || namesTouched(before.runs, after.runs) ||
           namesTouched(before.pumps, after.pumps) || namesTouched(before.tees, after.tees) ||
           namesTouched(before.fixtures, after.fixtures) || namesTouched(before.notes, after.notes) ||
           namesTouched(before.dimensions, after.dimensions);
}
bool piecesTouched(const Plan& before, const Plan& after)
{
    return !(after.vessels.sameElements(before.vessels) && after.runs.sameElements(before.runs) &&
             after.pumps.sameElements(before.pumps) && after.tees.sameElements(before.tees));
}

} // namespace

std::optional<Fault> firstNewFault(const Plan& before, const Plan& after)
{
    FaultFinder each;
    checkEach(after, &before, each);
    if (!each.faults().empty())
        return each.faults().front();
    FaultFinder whole;
    if (namesTouched(before, after))
        checkNames(after, whole);
    if (piecesTouched(before, after))
        checkReferences(after, whole);
    const std::vector<Fault> now = whole.take();
    if (now.empty())
        return std::nullopt;
    FaultFinder earlier;
    checkNames(before, earlier);
    checkReferences(before, earlier);
    for (const Fault& fault : now) {
        const auto sameFault = [&fault](const Fault& f) {
            return f.element == fault.element && f.key == fault.key && f.refusal.id == fault.refusal.id;
        };
        if (std::none_of(earlier.faults().begin(), earlier.faults().end(), sameFault))
            return fault;
    }
    return std::nullopt;
}

} // namespace sumpwright::plan

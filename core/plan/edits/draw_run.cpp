#include "core/plan/edits/draw_run.hpp"

#include <cmath>
#include <tuple>

#include "core/plan/edits/draft.hpp"
#include "core/plan/edits/port_making.hpp"
#include "core/plan/edits/run_shape.hpp"
#include "core/plan/edits/tees.hpp"
#include "core/plan/limits.hpp"
#include "core/plan/tidy.hpp"

namespace sumpwright::plan
{

namespace
{

// Makes what a target asks for - a tee, a port - and tells the end that meets it.
struct Resolver {
    Draft& draft;

    RunEnd operator()(const Nowhere&) const { return OpenEnd{}; }
    RunEnd operator()(const AtPort& at) const
    {
        if (!findPort(draft.the<Vessel>(at.vessel), at.port))
            refuseUnknown(at.port, "port");
        return PortEnd{at.vessel, at.port, std::nullopt};
    }
    RunEnd operator()(const AtPump& at) const { return PumpEnd{draft.the<Pump>(at.pump).id}; }
    RunEnd operator()(const AtTee& at) const { return TeeEnd{draft.the<Tee>(at.tee).id, std::nullopt}; }
    RunEnd operator()(const OntoRun& onto) const
    {
        return TeeEnd{splitRun(draft, onto.run, onto.station).tee, std::nullopt};
    }
    RunEnd operator()(const NewPort& wish) const
    {
        return PortEnd{wish.vessel, makePort(draft, wish.vessel, wish.kind, wish.offset, wish.level), std::nullopt};
    }
};

RunEnd resolve(Draft& draft, const Target& target) { return std::visit(Resolver{draft}, target); }

// Both ends onto one run: the second place is looked for on the halves the first one made.
std::pair<RunEnd, RunEnd> resolveBoth(Draft& draft, const Target& from, const Target& to)
{
    const auto* first = std::get_if<OntoRun>(&from);
    const auto* second = std::get_if<OntoRun>(&to);
    if (!first || !second || first->run != second->run) {
        const RunEnd start = resolve(draft, from);
        return {start, resolve(draft, to)};
    }
    const double length = units::inMetres(lengthOf(draft.the<Run>(first->run)));
    const Split split = splitRun(draft, first->run, first->station);
    const double splitAt = units::inMetres(split.at);
    const double at = second->station * length - splitAt;
    const Run& half = draft.the<Run>(at <= 0.0 ? split.first : split.second);
    const double halfLength = units::inMetres(lengthOf(half));
    const bool whole = split.first == split.second;
    const double station = whole ? second->station : (at <= 0.0 ? (at + splitAt) / halfLength : at / halfLength);
    return {TeeEnd{split.tee, std::nullopt}, resolve(draft, OntoRun{half.id, station})};
}

// Puts the drawn end at the place it meets; a vertical leg makes up for another level.
void meet(const Draft& draft, Run& run, RunSide side)
{
    const std::optional<Vertex> place = placeOf(draft.plan, endOf(run, side));
    if (!place)
        return;
    auto& vertices = run.vertices;
    Vertex& end = side == RunSide::from ? vertices.front() : vertices.back();
    const double lift = units::inMetres(end.level) - units::inMetres(place->level);
    end.at = place->at;
    if (std::abs(lift) < units::inMetres(limits::leastLeg))
        end.level = place->level;
    else
        vertices.insert(side == RunSide::from ? vertices.begin() : vertices.end(), *place);
}

// Where the water can come from (+1), where it goes (-1), either (0).
int sourceRank(const Plan& plan, const RunEnd& end)
{
    if (std::holds_alternative<PumpEnd>(end))
        return 1;
    if (const auto* at = std::get_if<PortEnd>(&end)) {
        const Vessel* vessel = plan.vessels.find(at->vessel);
        const Port* port = vessel ? findPort(*vessel, at->port) : nullptr;
        return !port ? 0 : port->kind == PortKind::inlet ? -1 : 1;
    }
    return 0;
}

Run led(const Plan& plan, Run run)
{
    const bool pumpAtEnd = std::holds_alternative<PumpEnd>(run.to) && !std::holds_alternative<PumpEnd>(run.from);
    const bool pumpAtStart = std::holds_alternative<PumpEnd>(run.from);
    if (pumpAtEnd || (!pumpAtStart && sourceRank(plan, run.to) > sourceRank(plan, run.from)))
        return reversed(std::move(run));
    return run;
}

} // namespace

Edit drawRun(const RunWish& wish)
{
    return makeEdit("edit.draw-run", {}, [wish](Draft& draft) {
        if (wish.vertices.size() < 2)
            refuse("plan.vertex-count", "pipe run", "fewer than two places", "a start and an end");
        Run run;
        run.id = draft.newId();
        run.tag = draft.newTag("R");
        run.service = wish.service;
        run.pipeId = wish.pipeId;
        run.vertices = wish.vertices;
        for (Vertex& vertex : run.vertices)
            vertex.at = tidy(vertex.at);
        std::tie(run.from, run.to) = resolveBoth(draft, wish.from, wish.to);
        meet(draft, run, RunSide::from);
        meet(draft, run, RunSide::to);
        dropZeroLegs(run);
        draft.put(led(draft.plan, std::move(run)));
    });
}

Edit connectEnd(base::Id id, RunSide side, const Target& target)
{
    return makeEdit("edit.connect", {id}, [id, side, target](Draft& draft) {
        draft.the<Run>(id);
        const auto* onto = std::get_if<OntoRun>(&target);
        if (onto && onto->run == id)
            refuse("plan.onto-itself", tagOf(draft.plan, id), "the run would end on itself", "another run");
        const RunEnd end = resolve(draft, target);
        Run run = draft.the<Run>(id);
        const auto* tee = std::get_if<TeeEnd>(&end);
        const auto* held = std::get_if<TeeEnd>(&endOf(run, side));
        if (tee && held && tee->tee == held->tee)
            return;
        endOf(run, side) = end;
        if (const auto place = placeOf(draft.plan, end)) {
            carryEnd(run, side, *place);
            dropZeroLegs(run);
        }
        draft.put(led(draft.plan, std::move(run)));
    });
}

Edit detachEnd(base::Id run, RunSide side)
{
    return makeEdit("edit.detach", {run}, [run, side](Draft& draft) { openEnd(draft, {run, side}); });
}

} // namespace sumpwright::plan

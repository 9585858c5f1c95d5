#include "core/plan/edits/fall.hpp"

#include <algorithm>
#include <cmath>

#include "core/plan/edits/draft.hpp"
#include "core/plan/edits/run_shape.hpp"
#include "core/plan/limits.hpp"
#include "core/plan/tidy.hpp"

namespace sumpwright::plan
{

namespace
{

using Vertices = std::vector<Vertex>;

double levelOf(const Vertex& vertex) { return units::inMetres(vertex.level); }
void setLevel(Vertex& vertex, double metres) { vertex.level = tidy(units::elevationMetres(metres)); }

// Levels from vertex 0 on; `step` is the change of level per metre in plan. Vertical legs keep their drop.
void layLevels(Vertices& vertices, double step)
{
    const Vertices was = vertices;
    for (std::size_t i = 1; i < vertices.size(); ++i) {
        const double change = sameInPlan(was[i - 1], was[i])
                                  ? levelOf(was[i]) - levelOf(was[i - 1])
                                  : step * units::inMetres(distanceBetween(was[i - 1].at, was[i].at));
        setLevel(vertices[i], levelOf(vertices[i - 1]) + change);
    }
}

// Brings the far end back to the level it is held at: by the last vertical leg, else by a new one at that end.
// `down`: +1 when the water runs towards the far end. False when it would have to climb.
bool meetFarEnd(Vertices& vertices, double heldAt, double down)
{
    const double off = heldAt - levelOf(vertices.back());
    if (std::abs(off) < units::inMetres(limits::leastLeg)) {
        setLevel(vertices.back(), heldAt);
        return true;
    }
    for (std::size_t i = vertices.size() - 1; i > 0; --i) {
        if (!sameInPlan(vertices[i - 1], vertices[i]))
            continue;
        for (std::size_t j = i; j < vertices.size(); ++j)
            setLevel(vertices[j], levelOf(vertices[j]) + off);
        return down * (levelOf(vertices[i - 1]) - levelOf(vertices[i])) >= 0.0;
    }
    Vertex end = vertices.back();
    setLevel(end, heldAt);
    end.bendFittingId.clear();
    end.lossCoefficient.reset();
    vertices.push_back(end);
    return down * off < 0.0;
}

void setFallOf(Run& run, double fall, RunSide kept)
{
    if (run.service != Service::gravity)
        refuse("plan.not-gravity", run.tag, "a pressure run",
               "a gravity run; pressure runs take a level at each vertex");
    const Run was = run;
    const bool fromStart = kept == RunSide::from;
    Vertices& vertices = run.vertices;
    if (!fromStart)
        std::reverse(vertices.begin(), vertices.end());
    const double heldAt = levelOf(vertices.back());
    layLevels(vertices, fromStart ? -fall : fall);
    const bool held = !std::holds_alternative<OpenEnd>(endOf(run, otherSide(kept)));
    if (held && !meetFarEnd(vertices, heldAt, fromStart ? 1.0 : -1.0))
        refuse("plan.climbs", run.tag, "with this fall the water would have to climb to what the run meets",
               "a smaller fall, or another level of what it meets");
    const std::size_t added = fromStart ? 0 : vertices.size() - was.vertices.size();
    if (!fromStart)
        std::reverse(vertices.begin(), vertices.end());
    dropZeroLegs(run);
    if (run.vertices.size() < was.vertices.size() + added)
        return; // a vertical leg closed up: valves keep their share of the whole
    KeptVertices pairs = allKept(was.vertices.size());
    for (auto& pair : pairs)
        pair.second += added;
    keepStations(was, run, pairs);
}

} // namespace

Edit setFall(std::vector<base::Id> runs, units::Slope fall, RunSide kept)
{
    return makeEdit("edit.fall", runs, [=](Draft& draft) {
        const double slope = units::inMetresPerMetre(fall);
        if (!(slope >= 0.0 && slope <= 1.0))
            refuse("plan.out-of-range", "fall", "a fall that rises, or is steeper than 1:1", "0 to 1:1, e.g. 1:60");
        for (const base::Id id : runs)
            draft.change<Run>(id, [&](Run& run) { setFallOf(run, slope, kept); });
    });
}

Edit setInvert(base::Id id, RunSide side, units::Elevation invert, units::Length bore)
{
    return makeEdit("edit.invert", {id}, [=](Draft& draft) {
        draft.change<Run>(id, [&](Run& run) {
            if (!std::holds_alternative<OpenEnd>(endOf(run, side)))
                refuse("plan.end-held", run.tag, "this end is held by the port, pump or tee it meets",
                       "change the level of that, or detach the end");
            const Vertex& end = side == RunSide::from ? run.vertices.front() : run.vertices.back();
            const units::Length lift = invert + bore / 2.0 - end.level;
            for (Vertex& vertex : run.vertices)
                vertex.level = tidy(vertex.level + lift);
        });
    });
}

} // namespace sumpwright::plan

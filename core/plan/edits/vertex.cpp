#include "core/plan/edits/vertex.hpp"

#include "core/plan/edits/draft.hpp"
#include "core/plan/edits/run_shape.hpp"
#include "core/plan/level_ref.hpp"
#include "core/plan/tidy.hpp"

namespace sumpwright::plan
{

namespace
{

using RunChange = std::function<void(Run&)>;

Edit changeRun(const char* intent, base::Id id, RunChange how)
{
    return makeEdit(intent, {id}, [id, how](Draft& draft) { draft.change<Run>(id, how); });
}

Vertex& vertexAt(Run& run, std::size_t index)
{
    if (index >= run.vertices.size())
        refuse("plan.no-such-vertex", run.tag, "the run has no vertex " + std::to_string(index + 1),
               "1 to " + std::to_string(run.vertices.size()));
    return run.vertices[index];
}

void refuseHeld(const Run& run, std::size_t index)
{
    if (isHeld(run, index))
        refuse("plan.end-held", run.tag, "this end is held by the port, pump or tee it meets",
               "move that, or detach the end");
}

void insertAt(Run& run, std::size_t before, Vertex vertex)
{
    const Run was = run;
    run.vertices.insert(run.vertices.begin() + static_cast<std::ptrdiff_t>(before), std::move(vertex));
    KeptVertices kept = allKept(was.vertices.size());
    for (auto& pair : kept)
        if (pair.first >= before)
            ++pair.second;
    keepStations(was, run, kept);
}

} // namespace

Edit insertVertex(base::Id id, double station)
{
    return changeRun("edit.insert-vertex", id, [station](Run& run) {
        if (!(station > 0.0 && station < 1.0))
            refuse("plan.out-of-range", run.tag + ", station", "the place is not between the ends", "between 0 and 1");
        Vertex vertex = placeAlong(run, station);
        vertex.at = tidy(vertex.at);
        vertex.level = tidy(vertex.level);
        const std::vector<double> reach = reaches(run.vertices);
        std::size_t before = 1;
        while (before + 1 < reach.size() && reach[before] < station * reach.back())
            ++before;
        insertAt(run, before, std::move(vertex));
    });
}

Edit insertVertexAt(base::Id id, std::size_t before, Point at, units::Elevation level)
{
    return changeRun("edit.insert-vertex", id, [=](Run& run) {
        if (before == 0 || before >= run.vertices.size())
            refuse("plan.no-such-vertex", run.tag, "a new vertex goes between two others",
                   "before vertex 2 to " + std::to_string(run.vertices.size()));
        Vertex vertex;
        vertex.at = tidy(at);
        vertex.level = level;
        insertAt(run, before, std::move(vertex));
    });
}

Edit moveVertex(base::Id id, std::size_t index, Point to)
{
    return changeRun("edit.move-vertex", id, [=](Run& run) {
        const Run was = run;
        const Vertex moved = vertexAt(run, index);
        std::size_t first = index;
        std::size_t last = index;
        while (first > 0 && sameInPlan(run.vertices[first - 1], moved))
            --first;
        while (last + 1 < run.vertices.size() && sameInPlan(run.vertices[last + 1], moved))
            ++last;
        refuseHeld(run, first);
        refuseHeld(run, last);
        for (std::size_t i = first; i <= last; ++i)
            run.vertices[i].at = tidy(to);
        keepStations(was, run, allKept(was.vertices.size()));
    });
}

Edit removeVertex(base::Id id, std::size_t index)
{
    return changeRun("edit.remove-vertex", id, [index](Run& run) {
        vertexAt(run, index);
        refuseHeld(run, index);
        if (run.vertices.size() <= 2)
            refuse("plan.vertex-count", run.tag, "a run needs its two ends", "delete the whole run");
        const Run was = run;
        run.vertices.erase(run.vertices.begin() + static_cast<std::ptrdiff_t>(index));
        KeptVertices kept;
        for (std::size_t i = 0; i < was.vertices.size(); ++i)
            if (i != index)
                kept.emplace_back(i, i < index ? i : i - 1);
        keepStations(was, run, kept);
    });
}

Edit setVertexLevel(base::Id id, std::size_t index, units::Elevation centreLine)
{
    return changeRun("edit.vertex-level", id, [=](Run& run) {
        const Run was = run;
        vertexAt(run, index).level = centreLine;
        refuseHeld(run, index);
        keepStations(was, run, allKept(was.vertices.size()));
    });
}

Edit setVertexInvert(base::Id id, std::size_t index, units::Elevation invert, units::Length bore)
{
    Edit edit = setVertexLevel(id, index, tidy(invert + bore / 2.0));
    edit.intent = "edit.vertex-invert";
    return edit;
}

Edit setBendFitting(base::Id id, std::size_t index, std::string fittingId)
{
    return changeRun("edit.bend-fitting", id,
                     [index, fittingId](Run& run) { vertexAt(run, index).bendFittingId = fittingId; });
}

Edit setBendLoss(base::Id id, std::size_t index, std::optional<double> lossCoefficient)
{
    return changeRun("edit.bend-loss", id, [=](Run& run) { vertexAt(run, index).lossCoefficient = lossCoefficient; });
}

} // namespace sumpwright::plan

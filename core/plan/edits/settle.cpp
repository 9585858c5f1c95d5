#include "core/plan/edits/settle.hpp"

#include "core/plan/edits/run_shape.hpp"

namespace sumpwright::plan
{

namespace
{

// Whether what an end meets is the very same as before the edit.
bool untouched(const Draft& draft, const RunEnd& end)
{
    const auto same = [](const auto& now, const auto& was, base::Id id) { return now.share(id) == was.share(id); };
    const Plan& now = draft.plan;
    const Plan& was = draft.before;
    if (const auto* port = std::get_if<PortEnd>(&end))
        return same(now.vessels, was.vessels, port->vessel);
    if (const auto* tee = std::get_if<TeeEnd>(&end))
        return same(now.tees, was.tees, tee->tee);
    if (const auto* standing = std::get_if<PumpEnd>(&end)) {
        const Pump* pump = now.pumps.find(standing->pump);
        return same(now.pumps, was.pumps, standing->pump) && pump && same(now.vessels, was.vessels, pump->vessel);
    }
    return true;
}

} // namespace

void settleEnds(Draft& draft)
{
    std::vector<Run> carried;
    for (const auto& run : draft.plan.runs) {
        const bool same = draft.before.runs.share(run->id) == run;
        if (run->vertices.size() < 2 || (same && untouched(draft, run->from) && untouched(draft, run->to)))
            continue;
        Run settled = *run;
        bool moved = false;
        for (const RunSide side : {RunSide::from, RunSide::to}) {
            const std::optional<Vertex> place = placeOf(draft.plan, endOf(settled, side));
            const Vertex& end = side == RunSide::from ? settled.vertices.front() : settled.vertices.back();
            if (!place || (end.at == place->at && end.level == place->level))
                continue;
            carryEnd(settled, side, *place);
            moved = true;
        }
        if (!moved)
            continue;
        dropZeroLegs(settled);
        carried.push_back(std::move(settled));
    }
    for (Run& run : carried)
        draft.put(std::move(run));
}

} // namespace sumpwright::plan

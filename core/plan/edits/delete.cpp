#include "core/plan/edits/delete.hpp"

#include <set>

#include "core/plan/edits/draft.hpp"
#include "core/plan/edits/tees.hpp"
#include "core/plan/run_ends.hpp"

namespace sumpwright::plan
{

namespace
{

bool gone(const Plan& plan, const RunEnd& end) { return !std::holds_alternative<OpenEnd>(end) && !placeOf(plan, end); }

int openEnds(const Run& run)
{
    return (std::holds_alternative<OpenEnd>(run.from) ? 1 : 0) + (std::holds_alternative<OpenEnd>(run.to) ? 1 : 0);
}

void openEndsOfGone(Draft& draft)
{
    const auto runs = draft.plan.runs;
    for (const auto& run : runs)
        for (const RunSide side : {RunSide::from, RunSide::to})
            if (gone(draft.plan, endOf(*run, side)))
                openEnd(draft, {run->id, side});
}

} // namespace

Edit deleteElements(std::vector<base::Id> elements)
{
    return makeEdit("edit.delete", elements, [elements](Draft& draft) {
        std::set<base::Id> doomed(elements.begin(), elements.end());
        for (const base::Id id : doomed)
            if (!kindOf(draft.plan, id))
                refuseUnknown(id, "element");
        for (const auto& pump : draft.before.pumps)
            if (doomed.count(pump->vessel))
                doomed.insert(pump->id);
        for (const base::Id id : doomed) {
            draft.erase<Run>(id);
            draft.erase<Vessel>(id);
            draft.erase<Pump>(id);
            draft.erase<Fixture>(id);
            draft.erase<Note>(id);
            draft.erase<DimensionLine>(id);
        }
        openEndsOfGone(draft);
        for (const base::Id id : doomed)
            if (draft.plan.tees.find(id))
                dissolveTee(draft, id);
    });
}

std::vector<base::Id> detachedBy(const Plan& plan, const std::vector<base::Id>& elements)
{
    const auto after = deleteElements(elements).apply(plan);
    std::vector<base::Id> detached;
    if (!after)
        return detached;
    for (const auto& run : after->runs) {
        const Run* was = plan.runs.find(run->id);
        if (was && openEnds(*run) > openEnds(*was))
            detached.push_back(run->id);
    }
    return detached;
}

} // namespace sumpwright::plan

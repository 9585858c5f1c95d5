#include "core/plan/edits/move.hpp"

#include "core/plan/edits/motion.hpp"
#include "core/plan/run_ends.hpp"

namespace sumpwright::plan
{

namespace
{

Edit motionEdit(const char* intent, std::vector<base::Id> elements, Motion motion)
{
    return makeEdit(intent, elements, [elements, motion](Draft& draft) { moveAll(draft, elements, motion); });
}

} // namespace

Edit moveElements(std::vector<base::Id> elements, Point by)
{
    Motion motion;
    motion.shift = by;
    return motionEdit("edit.move", std::move(elements), motion);
}

Edit moveElementTo(base::Id element, Point place)
{
    return makeEdit("edit.move", {element}, [element, place](Draft& draft) {
        if (!kindOf(draft.plan, element))
            refuseUnknown(element, "element");
        Motion motion;
        motion.shift = place - anchorOf(draft.plan, element);
        moveAll(draft, {element}, motion);
    });
}

Edit turnElements(std::vector<base::Id> elements, Point about, units::Angle by)
{
    Motion motion;
    motion.about = about;
    motion.turn = by;
    return motionEdit("edit.turn", std::move(elements), motion);
}

Edit raiseElements(std::vector<base::Id> elements, units::Length by)
{
    Motion motion;
    motion.lift = by;
    return motionEdit("edit.raise", std::move(elements), motion);
}

Edit setTurn(std::vector<base::Id> vessels, units::Angle turn)
{
    return makeEdit("edit.turn", vessels, [vessels, turn](Draft& draft) {
        for (const base::Id id : vessels)
            draft.change<Vessel>(id, [turn](Vessel& vessel) { vessel.turn = turn; });
    });
}

Edit setBaseLevel(std::vector<base::Id> vessels, units::Elevation level)
{
    return makeEdit("edit.base-level", vessels, [vessels, level](Draft& draft) {
        for (const base::Id id : vessels) {
            Motion motion;
            motion.lift = level - draft.the<Vessel>(id).baseLevel;
            moveAll(draft, {id}, motion);
            draft.change<Vessel>(id, [level](Vessel& vessel) { vessel.baseLevel = level; });
        }
    });
}

Edit setTeeLevel(std::vector<base::Id> tees, units::Elevation level)
{
    return setEach<Tee>("edit.tee-level", std::move(tees), &Tee::level, level);
}

Point anchorOf(const Plan& plan, base::Id element)
{
    if (const auto* vessel = plan.vessels.find(element))
        return vessel->centre;
    if (const auto* pump = plan.pumps.find(element)) {
        const auto* vessel = plan.vessels.find(pump->vessel);
        return vessel ? placeOf(*vessel, *pump) : pump->offset;
    }
    if (const auto* run = plan.runs.find(element))
        return run->vertices.empty() ? Point{} : run->vertices.front().at;
    if (const auto* tee = plan.tees.find(element))
        return tee->at;
    if (const auto* fixture = plan.fixtures.find(element))
        return fixture->from;
    if (const auto* note = plan.notes.find(element))
        return note->at;
    if (const auto* dimension = plan.dimensions.find(element))
        return dimension->from;
    return {};
}

} // namespace sumpwright::plan

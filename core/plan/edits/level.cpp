#include "core/plan/edits/level.hpp"

#include "core/plan/edits/draft.hpp"
#include "core/plan/edits/move.hpp"
#include "core/plan/edits/port.hpp"
#include "core/plan/edits/pump.hpp"
#include "core/plan/edits/vertex.hpp"
#include "core/plan/edits/vessel.hpp"
#include "core/plan/tidy.hpp"

namespace sumpwright::plan
{

namespace
{

Edit setRim(base::Id vessel, units::Elevation to)
{
    return makeEdit("edit.wall-height", {vessel}, [vessel, to](Draft& draft) {
        draft.change<Vessel>(vessel, [to](Vessel& changed) { changed.wallHeight = tidy(to - changed.baseLevel); });
    });
}

Edit known(const LevelRef& level, Edit edit)
{
    edit.apply = [level, set = std::move(edit.apply)](const Plan& plan) -> base::Outcome<Plan> {
        if (!levelOf(plan, level))
            return base::Refusal{"plan.no-such-level", tagOf(plan, level.element), "there is no such level",
                                 "a level of the plan"};
        return set(plan);
    };
    return edit;
}

Edit edited(const LevelRef& level, units::Elevation to)
{
    const PortRef port{level.element, level.port};
    switch (level.kind) {
    case LevelKind::base:
        return setBaseLevel({level.element}, to);
    case LevelKind::rim:
        return setRim(level.element, to);
    case LevelKind::running:
        return setRunningLevel({level.element}, to);
    case LevelKind::lip:
    case LevelKind::inlet:
    case LevelKind::sideOutlet:
        return setPortLevel({port}, to);
    case LevelKind::drain:
        return setDrainLevel({port}, to);
    case LevelKind::vent:
        return setVentLevel({port}, to);
    case LevelKind::pumpOutlet:
        return setPumpOutlet({level.element}, to);
    case LevelKind::tee:
        return setTeeLevel({level.element}, to);
    case LevelKind::vertex:
        return setVertexLevel(level.element, level.vertex, to);
    }
    return {};
}

} // namespace

Edit setLevel(const LevelRef& level, units::Elevation to) { return known(level, edited(level, to)); }

} // namespace sumpwright::plan

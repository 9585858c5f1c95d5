#include "ui/tools/sketch_tools.hpp"

#include <cmath>

#include "core/plan/edits/sequence.hpp"
#include "core/plan/edits/underlay.hpp"
#include "ui/canvas/plan_view.hpp"
#include "ui/canvas/scene_point.hpp"

namespace sumpwright::ui::tools
{

namespace
{
// From the drawn edge to the nearest of the sheet's four directions.
units::Angle toStraight(plan::Point from, plan::Point to)
{
    const double bearing = units::inRadians(plan::bearingOf(to - from));
    return units::radians(-std::remainder(bearing, units::pi / 2.0));
}
} // namespace

QString UnderlayMoveTool::hint() const
{
    if (!plan().underlay)
        return tr("There is no site sketch under the plan yet: add one first.");
    return busy() ? tr("Click where this point of the sketch belongs, or type how far it moves.")
                  : tr("Click a point of the sketch, a corner of the building for example.");
}

Snapped UnderlayMoveTool::meant(const canvas::CanvasPointer& pointer) const
{
    return busy() ? snapped(pointer) : Snapped{canvas::toPlan(pointer.scene), std::nullopt};
}

void UnderlayMoveTool::showLine(plan::Point from, plan::Point to, canvas::Overlay& overlay)
{
    if (plan().underlay)
        document().preview(plan::moveUnderlay(plan().underlay->corner + (to - from)));
    overlay.sketch = {canvas::toScene(from), canvas::toScene(to)};
    overlay.readOut = view().figures().text(plan::distanceBetween(from, to));
    overlay.readOutAt = canvas::toScene(to);
}

void UnderlayMoveTool::lineDrawn(plan::Point from, plan::Point to, const canvas::CanvasPointer&)
{
    if (!plan().underlay)
        return document().say(hint());
    if (document().commit(plan::moveUnderlay(plan().underlay->corner + (to - from))))
        Q_EMIT finished();
}

void UnderlayMoveTool::giveBack()
{
    document().dropPreview();
    LinePointsTool::giveBack();
}

QString UnderlayTurnTool::hint() const
{
    if (!plan().underlay)
        return tr("There is no site sketch under the plan yet: add one first.");
    return busy() ? tr("Click the other end of that edge.")
                  : tr("Click one end of an edge of the sketch that should run straight across or up the sheet.");
}

// Points of a picture lie anywhere: nothing is snapped to.
Snapped UnderlayTurnTool::meant(const canvas::CanvasPointer& pointer) const
{
    return {canvas::toPlan(pointer.scene), std::nullopt};
}

void UnderlayTurnTool::showLine(plan::Point from, plan::Point to, canvas::Overlay& overlay)
{
    overlay.sketch = {canvas::toScene(from), canvas::toScene(to)};
    if (plan::distanceBetween(from, to) < units::millimetres(1.0))
        return;
    overlay.readOut = tr("turns by %1").arg(view().figures().text(toStraight(from, to)));
    overlay.readOutAt = canvas::toScene(to);
}

void UnderlayTurnTool::lineDrawn(plan::Point from, plan::Point to, const canvas::CanvasPointer&)
{
    if (!plan().underlay)
        return document().say(hint());
    if (plan::distanceBetween(from, to) < units::millimetres(1.0))
        return document().say(tr("The two points are one: the sketch was not turned."));
    const auto by = toStraight(from, to);
    const auto corner = plan::turnedAbout(plan().underlay->corner, from, by);
    const auto turn = units::radians(units::inRadians(plan().underlay->turn) + units::inRadians(by));
    if (document().commit(
            plan::inSequence("edit.turn-underlay", {plan::turnUnderlay(turn), plan::moveUnderlay(corner)})))
        Q_EMIT finished();
}

} // namespace sumpwright::ui::tools

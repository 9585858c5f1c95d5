#include "ui/tools/tool.hpp"

#include <QKeyEvent>

#include "ui/canvas/canvas_settings.hpp"
#include "ui/canvas/plan_scene.hpp"
#include "ui/canvas/plan_view.hpp"
#include "ui/canvas/scene_point.hpp"

namespace sumpwright::ui::tools
{

Tool::Tool(canvas::PlanView& view) : QObject(&view), m_view(view) {}

document::Document& Tool::document() const { return m_view.document(); }

SnapRules Tool::rulesFor(const canvas::CanvasPointer& pointer) const
{
    SnapRules rules;
    rules.grid = m_view.settings().gridStep();
    rules.reach = pointer.byKey ? keyReach : canvas::lengthFromScene(reachPixels * m_view.pixel());
    rules.on = m_view.settings().snapping() && !(pointer.modifiers & Qt::ControlModifier);
    rules.toGrid = !pointer.byKey; // the crosshair already moves by steps, or by 1 mm on purpose
    return rules;
}

Snapped Tool::snapped(const canvas::CanvasPointer& pointer) const
{
    return snap(plan(), canvas::toPlan(pointer.scene), rulesFor(pointer));
}

bool Tool::mayEdit()
{
    if (!document().readOnly())
        return true;
    document().say(tr("This plan is read-only here: nothing was changed."));
    return false;
}

bool Tool::takenOut(const canvas::CanvasPointer& released)
{
    if (released.byKey || m_view.viewport()->rect().contains(released.view))
        return false;
    document().say(tr("Let go outside the plan: nothing was changed."));
    return true;
}

void Tool::announce(const std::optional<canvas::SnapCue>& cue)
{
    const QString name = cue ? cue->name : QString();
    if (name == m_announced)
        return;
    m_announced = name;
    if (!name.isEmpty())
        document().say(name);
}

void PointingTool::end()
{
    Tool::end();
    m_place.clear();
    m_crosshair.reset();
    view().setOverlay({});
}

void PointingTool::press(const canvas::CanvasPointer& pointer)
{
    m_crosshair.reset();
    m_pointer = pointer;
    m_pointed = true;
    pressed(pointer);
}

void PointingTool::move(const canvas::CanvasPointer& pointer)
{
    m_crosshair.reset();
    m_pointer = pointer;
    m_pointed = true;
    moved(pointer);
}

void PointingTool::release(const canvas::CanvasPointer& pointer)
{
    m_pointer = pointer;
    released(pointer);
}

void PointingTool::show(canvas::Overlay overlay)
{
    if (m_crosshair)
        overlay.crosshair = canvas::toScene(*m_crosshair);
    view().setOverlay(std::move(overlay));
}

canvas::CanvasPointer PointingTool::crosshairPointer() const
{
    canvas::CanvasPointer pointer;
    pointer.scene = canvas::toScene(*m_crosshair);
    pointer.view = view().mapFromScene(pointer.scene);
    pointer.byKey = true;
    return pointer;
}

void PointingTool::putCrosshair(plan::Point place)
{
    m_crosshair = place;
    const QRectF visible = view().visibleScene();
    const double air = 24.0 * view().pixel();
    const QPointF at = canvas::toScene(place);
    if (!visible.adjusted(air, air, -air, -air).contains(at))
        view().panBy(view().mapFromScene(at) - view().viewport()->rect().center());
    m_pointer = crosshairPointer();
    moved(m_pointer);
    Q_EMIT view().pointerMoved(place);
}

bool PointingTool::moveCrosshair(const QKeyEvent& event)
{
    const auto grid = view().settings().gridStep();
    const auto step = event.modifiers() & Qt::ControlModifier ? units::millimetres(1.0)
                      : event.modifiers() & Qt::ShiftModifier ? grid * 10.0
                                                              : grid;
    plan::Point by;
    switch (event.key()) {
    case Qt::Key_Left:
        by.x = -step;
        break;
    case Qt::Key_Right:
        by.x = step;
        break;
    case Qt::Key_Up:
        by.y = step;
        break;
    case Qt::Key_Down:
        by.y = -step;
        break;
    default:
        return false;
    }
    if (!m_crosshair) {
        const QPointF start = m_pointed ? m_pointer.scene : view().visibleScene().center();
        putCrosshair(toGrid(canvas::toPlan(start), grid));
        return true;
    }
    const auto tidy = [](units::Length v) { return toStep(v, units::millimetres(0.001)); };
    putCrosshair({tidy(m_crosshair->x + by.x), tidy(m_crosshair->y + by.y)});
    return true;
}

// Where a gesture is under way numbers are lengths, the tool's own.
bool PointingTool::typePlace(const QKeyEvent& event)
{
    if (busy())
        return false;
    if (m_place.key(event)) {
        document().say(tr("Enter puts the crosshair at %1").arg(m_place.text()));
        return true;
    }
    if (m_place.empty())
        return false;
    const bool enter = event.key() == Qt::Key_Return || event.key() == Qt::Key_Enter;
    if (enter) {
        const auto figures = view().figures();
        const auto x = m_place.coordinate(0, figures);
        const auto y = m_place.coordinate(1, figures);
        if (!x || !y) {
            document().say(tr("“%1” is no place: type two lengths as 1.85 x 0.7.").arg(m_place.text()));
            return true;
        }
        m_place.clear();
        putCrosshair({*x, *y});
        return true;
    }
    if (event.key() == Qt::Key_Escape) {
        m_place.clear();
        document().say(tr("No place typed."));
        return true;
    }
    return false;
}

bool PointingTool::wantsKey(const QKeyEvent& event) const
{
    const bool letter = event.key() >= Qt::Key_A && event.key() <= Qt::Key_Z;
    return !m_place.empty() || typing() || ownLetter(event.key()) || (busy() && !(letter && chain()));
}

void PointingTool::conclude()
{
    if (busy())
        keepFinished();
    giveBack();
}

bool PointingTool::key(QKeyEvent& event)
{
    if (typePlace(event) || moveCrosshair(event))
        return true;
    if (otherKey(event))
        return true;
    if (event.key() == Qt::Key_Escape) {
        if (busy())
            giveBack();
        else
            Q_EMIT finished();
        return true;
    }
    if ((event.key() == Qt::Key_Return || event.key() == Qt::Key_Enter) && m_crosshair) {
        const auto pointer = crosshairPointer();
        pressed(pointer);
        released(pointer);
        return true;
    }
    return false;
}

} // namespace sumpwright::ui::tools

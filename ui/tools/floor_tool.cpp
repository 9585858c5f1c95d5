#include "ui/tools/floor_tool.hpp"

#include <QKeyEvent>

#include "core/plan/edits/floor.hpp"
#include "ui/canvas/plan_view.hpp"
#include "ui/canvas/scene_point.hpp"
#include "ui/tools/line_points.hpp"

namespace sumpwright::ui::tools
{

QString FloorTool::hint() const
{
    if (m_corners.empty())
        return tr("Drag a rectangle, or click the corners of the floor one after the other.");
    return tr("Click the next corner or type its distance; Enter, double click or the first corner closes the floor. "
              "Backspace takes a corner back.");
}

plan::Point FloorTool::meant(const canvas::CanvasPointer& pointer) const
{
    const auto rules = rulesFor(pointer);
    const auto at = snapped(pointer).at;
    return m_corners.empty() || !rules.on || m_pressView ? at : straightFrom(m_corners.back(), at, rules);
}

bool FloorTool::dragging(const canvas::CanvasPointer& pointer) const
{
    return m_pressView && m_corners.size() == 1 && !pointer.byKey &&
           (pointer.view - *m_pressView).manhattanLength() > 2 * dragPixels;
}

std::vector<plan::Point> FloorTool::rectangleTo(plan::Point corner) const
{
    const auto from = m_corners.front();
    const auto sized = [this](int index, units::Length dragged) {
        const auto typed = m_typed.length(index, view().figures());
        return !typed ? dragged : dragged < units::metres(0.0) ? -*typed : *typed;
    };
    const plan::Point to{from.x + sized(0, corner.x - from.x), from.y + sized(1, corner.y - from.y)};
    return {from, {to.x, from.y}, to, {from.x, to.y}};
}

void FloorTool::pressed(const canvas::CanvasPointer& pointer)
{
    if (!mayEdit())
        return;
    auto at = meant(pointer);
    m_pressView = pointer.view;
    const auto nearFirst = rulesFor(pointer).reach;
    if (m_corners.size() >= 3 && m_typed.empty() && plan::distanceBetween(at, m_corners.front()) <= nearFirst) {
        close(m_corners);
        return;
    }
    if (!m_corners.empty()) {
        if (const auto typed = m_typed.length(0, view().figures()))
            at = atDistance(m_corners.back(), at, *typed);
        m_typed.clear();
        if (plan::distanceBetween(at, m_corners.back()) < units::millimetres(1.0)) {
            if (pointer.byKey)
                close(m_corners);
            return;
        }
    }
    m_corners.push_back(at);
    refresh();
    Q_EMIT hintChanged();
}

void FloorTool::released(const canvas::CanvasPointer& pointer)
{
    if (dragging(pointer)) {
        if (takenOut(pointer))
            return giveBack();
        close(rectangleTo(snapped(pointer).at));
        return;
    }
    m_pressView.reset();
}

void FloorTool::doubleClick(const canvas::CanvasPointer&)
{
    if (m_corners.size() >= 3)
        close(m_corners);
}

void FloorTool::moved(const canvas::CanvasPointer&) { refresh(); }

void FloorTool::refresh()
{
    const auto found = snapped(pointer());
    const auto at = meant(pointer());
    canvas::Overlay overlay;
    overlay.cue = found.cue;
    announce(found.cue);
    const auto figures = view().figures();
    if (dragging(pointer())) {
        const auto corners = rectangleTo(at);
        overlay.sketch = canvas::toScene(corners);
        overlay.sketchClosed = true;
        const double away = 24.0 * view().pixel();
        for (const auto& [a, b] : {std::pair(corners[0], corners[1]), std::pair(corners[1], corners[2])})
            overlay.figures.push_back(
                {canvas::toScene(a), canvas::toScene(b), away, figures.size(plan::distanceBetween(a, b))});
    } else if (!m_corners.empty()) {
        overlay.sketch = canvas::toScene(m_corners);
        overlay.sketch.append(canvas::toScene(at));
        overlay.sketchClosed = m_corners.size() >= 2;
        overlay.readOut = figures.size(plan::distanceBetween(m_corners.back(), at));
    }
    if (!m_typed.empty())
        overlay.readOut = m_typed.text();
    overlay.readOutAt = canvas::toScene(at);
    show(std::move(overlay));
}

bool FloorTool::otherKey(QKeyEvent& event)
{
    if (m_corners.empty())
        return false;
    if (m_typed.key(event)) {
        refresh();
        return true;
    }
    const bool enter = event.key() == Qt::Key_Return || event.key() == Qt::Key_Enter;
    if (enter && !m_typed.empty()) {
        pressed(pointer());
        return true;
    }
    if (enter && !crosshair()) {
        close(m_corners);
        return true;
    }
    if (event.key() == Qt::Key_Backspace) {
        m_corners.pop_back();
        refresh();
        return true;
    }
    return false;
}

void FloorTool::close(std::vector<plan::Point> corners)
{
    if (!document().commit(plan::setOutline(std::move(corners)))) {
        m_pressView.reset();
        return; // refused: the corners stay, to be mended
    }
    giveBack();
    Q_EMIT finished();
}

void FloorTool::keepFinished()
{
    if (m_corners.size() >= 3)
        document().commit(plan::setOutline(m_corners));
}

void FloorTool::giveBack()
{
    m_corners.clear();
    m_pressView.reset();
    m_typed.clear();
    show({});
    Q_EMIT hintChanged();
}

} // namespace sumpwright::ui::tools

// LevelView: the pointer - levels dragged, elements chosen, the sheet panned and zoomed.
#include <QMouseEvent>
#include <QScrollBar>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/plan/edits/level.hpp"
#include "ui/canvas/canvas_settings.hpp"
#include "ui/canvas/plan_view.hpp"
#include "ui/document/document.hpp"
#include "ui/section/level_field.hpp"
#include "ui/section/level_ruler.hpp"
#include "ui/section/level_view.hpp"
#include "ui/text/level_names.hpp"
#include "ui/text/names.hpp"
#include "ui/text/refusals.hpp"
#include "ui/text/subject.hpp"

namespace sumpwright::ui::section
{

namespace
{
constexpr double chosenReach = 12.0; // pixels: half of a target of 24 by 24
constexpr double otherReach = 7.0;   // pixels: of what is not chosen, so that the element itself stays easy to choose
constexpr double dragPixels = 4.0;   // a press becomes a drag beyond this
constexpr double snapReach = 6.0;    // pixels
constexpr double leastScale = 4.0;   // pixels per metre
constexpr double mostScale = 4000.0;
} // namespace

// The nearest of the chosen elements, else the nearest of all; of those at one place the one drawn last.
std::optional<LevelHandle> LevelView::handleAt(QPointF place)
{
    const auto& chosen = m_document.selection();
    for (const bool ofChosen : {true, false}) {
        std::optional<LevelHandle> best;
        double nearest = ofChosen ? chosenReach : otherReach;
        for (const LevelHandle& handle : page().handles()) {
            if (ofChosen && std::find(chosen.begin(), chosen.end(), handle.level.element) == chosen.end())
                continue;
            const QPointF off = m_sheet.at(handle.along, handle.at) - place;
            if (const double distance = std::hypot(off.x(), off.y()); distance <= nearest) {
                nearest = distance;
                best = handle;
            }
        }
        if (best)
            return best;
    }
    return std::nullopt;
}

base::Id LevelView::elementAt(QPointF place)
{
    const auto targets = page().targets(m_sheet);
    for (auto target = targets.rbegin(); target != targets.rend(); ++target)
        if (target->holds(place))
            return target->element;
    return {};
}

bool LevelView::mayEdit()
{
    if (m_document.readOnly())
        m_document.say(tr("This plan is open for reading only."));
    return !m_document.readOnly();
}

void LevelView::mousePressEvent(QMouseEvent* event)
{
    event->accept();
    m_field->leave();
    m_rightBroke = event->button() == Qt::RightButton && m_press;
    if (m_rightBroke)
        return endDrag(false);
    if (event->button() == Qt::MiddleButton || (event->button() == Qt::LeftButton && m_space)) {
        m_panFrom = event->position().toPoint();
        viewport()->setCursor(Qt::ClosedHandCursor);
        return;
    }
    if (event->button() != Qt::LeftButton)
        return;
    sheet();
    m_press = Press{event->position(), handleAt(event->position()),
                    units::elevationMetres(m_sheet.levelAt(event->position().y())), event->modifiers()};
}

void LevelView::mouseDoubleClickEvent(QMouseEvent* event)
{
    mousePressEvent(event);
    if (!m_press)
        return;
    const Press press = *std::exchange(m_press, std::nullopt);
    if (press.handle) {
        goTo(*press.handle);
        openField();
    } else if (const base::Id element = elementAt(press.at); element.valid()) {
        Q_EMIT m_plan.elementActivated(element);
    }
}

void LevelView::mouseMoveEvent(QMouseEvent* event)
{
    event->accept();
    const QPointF place = event->position();
    if (m_panFrom) {
        pan(*m_panFrom - place.toPoint());
        m_panFrom = place.toPoint();
        return;
    }
    if (m_press) {
        const QPointF off = place - m_press->at;
        if (m_press->handle && !m_drag && std::hypot(off.x(), off.y()) >= dragPixels && mayEdit()) {
            goTo(*m_press->handle);
            m_drag.emplace(*m_press->handle, m_press->level, page().marks());
        }
        if (m_drag)
            drag(place, event->modifiers());
        return;
    }
    sheet();
    const auto handle = m_sheet.room.contains(place) ? handleAt(place) : std::nullopt;
    const auto hover = handle ? std::optional(handle->level) : std::nullopt;
    if (hover == m_hover)
        return;
    m_hover = hover;
    viewport()->setCursor(hover ? Qt::SizeVerCursor : Qt::ArrowCursor);
    if (handle)
        tell(*handle);
    viewport()->update();
}

void LevelView::mouseReleaseEvent(QMouseEvent* event)
{
    event->accept();
    if (m_panFrom && event->button() != Qt::RightButton) {
        m_panFrom.reset();
        viewport()->setCursor(m_space ? Qt::OpenHandCursor : Qt::ArrowCursor);
        return;
    }
    if (event->button() != Qt::LeftButton || !m_press)
        return;
    if (m_drag) {
        const bool inside = viewport()->rect().adjusted(-40, -40, 40, 40).contains(event->position().toPoint());
        if (!inside)
            m_document.say(tr("Let go outside the drawing: the level stays as it was."));
        return endDrag(inside);
    }
    const Press press = *std::exchange(m_press, std::nullopt);
    if (viewport()->rect().contains(event->position().toPoint()))
        click(press.at, press.modifiers);
}

void LevelView::click(QPointF place, Qt::KeyboardModifiers modifiers)
{
    const auto handle = handleAt(place);
    const base::Id element = handle ? handle->level.element : elementAt(place);
    if (handle && !(modifiers & (Qt::ControlModifier | Qt::ShiftModifier)))
        return goTo(*handle);
    m_at.reset();
    if (!element.valid())
        return m_document.select({});
    if (!(modifiers & (Qt::ControlModifier | Qt::ShiftModifier)))
        return m_document.select({element});
    auto chosen = m_document.selection();
    const auto had = std::find(chosen.begin(), chosen.end(), element);
    if (had == chosen.end())
        chosen.push_back(element);
    else if (modifiers & Qt::ShiftModifier)
        chosen.erase(had);
    m_document.select(std::move(chosen));
}

void LevelView::drag(QPointF place, Qt::KeyboardModifiers modifiers)
{
    LevelRules rules;
    rules.snapping = m_plan.settings().snapping() && !(modifiers & Qt::ControlModifier);
    rules.step = std::max(units::millimetres(1.0), m_plan.settings().gridStep() / 10.0);
    rules.reach = units::metres(snapReach / m_sheet.tall());
    m_drag->moveTo(units::elevationMetres(m_sheet.levelAt(place.y())), rules);
    m_readOutAt = place;
    showDragged();
}

void LevelView::showDragged()
{
    const auto& plan = m_document.committed();
    const plan::LevelRef& ref = m_drag->handle().level;
    const auto figures = m_plan.figures();
    const units::Elevation level = m_drag->level(figures);
    const QString shown = m_drag->typed().isEmpty() ? figures.text(level) : m_drag->typed();
    m_readOut = QStringLiteral("%1  %2").arg(text::heading(text::levelName(plan, ref)), shown);
    if (level == m_drag->handle().at) {
        m_document.dropPreview();
    } else if (const auto refused = m_document.preview(plan::setLevel(ref, level))) {
        m_readOut += u'\n' + text::sentenceOf(*refused, text::heading(text::levelName(plan, ref)));
    } else if (const auto& guide = m_drag->guide(); guide && m_drag->typed().isEmpty()) {
        m_readOut +=
            u'\n' + tr("level with %1").arg(guide->element.valid() ? text::subject(plan, guide->element) : tr("floor"));
    }
    viewport()->update();
}

// One undo step, or everything as it was.
void LevelView::endDrag(bool keep)
{
    m_press.reset();
    if (!m_drag)
        return;
    const LevelDrag drag = *std::exchange(m_drag, std::nullopt);
    m_readOut.clear();
    const units::Elevation level = drag.level(m_plan.figures());
    m_document.dropPreview();
    if (keep && level != drag.handle().at)
        m_document.commit(plan::setLevel(drag.handle().level, level));
    markOld();
}

void LevelView::pan(QPoint pixels)
{
    if (m_mode == Mode::elevation) {
        m_plan.panBy({pixels.x(), 0});
    } else {
        m_left = m_sheet.alongAt(m_sheet.room.left()) + pixels.x() / m_sheet.scale;
        m_scale = m_sheet.scale;
    }
    verticalScrollBar()->setValue(verticalScrollBar()->value() + pixels.y());
    viewport()->update();
}

void LevelView::zoomAbout(QPointF place, double factor)
{
    if (m_mode == Mode::elevation) {
        const QPoint inPlan = m_plan.viewport()->mapFromGlobal(viewport()->mapToGlobal(place.toPoint()));
        return m_plan.zoomAbout({inPlan.x(), m_plan.viewport()->height() / 2}, factor);
    }
    const double along = m_sheet.alongAt(place.x());
    m_scale = std::clamp(m_sheet.scale * factor, leastScale, mostScale);
    m_left = along - (place.x() - m_sheet.room.left()) / *m_scale;
    viewport()->update();
}

// As on the plan: the wheel zooms about the pointer, with Shift it pans across; with Alt up and down.
void LevelView::wheelEvent(QWheelEvent* event)
{
    event->accept();
    sheet();
    const QPoint turn = event->angleDelta();
    if (event->modifiers() & Qt::ShiftModifier)
        return pan({-(turn.x() + turn.y()), 0});
    if (event->modifiers() & Qt::AltModifier)
        return pan({0, -(turn.x() + turn.y())});
    if (turn.y() != 0)
        zoomAbout(event->position(), std::pow(event->modifiers() & Qt::ControlModifier ? 1.0004 : 1.0017, turn.y()));
}

void LevelView::contextMenuEvent(QContextMenuEvent* event)
{
    event->accept();
    if (event->reason() == QContextMenuEvent::Mouse && std::exchange(m_rightBroke, false))
        return;
    sheet();
    if (event->reason() == QContextMenuEvent::Mouse)
        if (const base::Id element = elementAt(event->pos()); element.valid() && !m_document.isSelected(element))
            m_document.select({element});
    const bool byKey = event->reason() != QContextMenuEvent::Mouse;
    Q_EMIT menuRequested(byKey ? viewport()->mapToGlobal(viewport()->rect().center()) : event->globalPos());
}

void LevelView::leaveEvent(QEvent* event)
{
    if (std::exchange(m_hover, std::nullopt))
        viewport()->update();
    QAbstractScrollArea::leaveEvent(event);
}

} // namespace sumpwright::ui::section

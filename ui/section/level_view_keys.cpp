// LevelView: the keyboard - from level to level, up and down, typed.
#include <QAccessible>
#include <QKeyEvent>

#include <algorithm>

#include "core/plan/edits/level.hpp"
#include "core/plan/tidy.hpp"
#include "ui/canvas/canvas_settings.hpp"
#include "ui/canvas/plan_view.hpp"
#include "ui/document/document.hpp"
#include "ui/section/level_field.hpp"
#include "ui/section/level_view.hpp"
#include "ui/text/level_names.hpp"
#include "ui/text/names.hpp"

namespace sumpwright::ui::section
{

namespace
{
bool plain(const QKeyEvent& key)
{
    return !(key.modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier));
}
} // namespace

// What a drag or the level keys take is no shortcut of the window meanwhile.
bool LevelView::event(QEvent* event)
{
    if (event->type() == QEvent::ShortcutOverride) {
        const auto& key = static_cast<const QKeyEvent&>(*event);
        if (m_drag && plain(key)) {
            event->accept();
            return true;
        }
    }
    return QAbstractScrollArea::event(event);
}

std::optional<std::size_t> LevelView::indexOf(const std::optional<plan::LevelRef>& level)
{
    const auto& handles = page().handles();
    for (std::size_t i = 0; level && i < handles.size(); ++i)
        if (handles[i].level == *level)
            return i;
    return std::nullopt;
}

void LevelView::tell(const LevelHandle& handle)
{
    m_document.say(QStringLiteral("%1  %2").arg(text::heading(text::levelOfWhat(m_document.shown(), handle.level)),
                                                m_plan.figures().text(handle.at)));
}

// Chosen here and in the plan, told in the status bar and to assistive technology.
void LevelView::goTo(const LevelHandle& handle)
{
    m_at = handle.level;
    if (m_document.selection() != std::vector{handle.level.element})
        m_document.select({handle.level.element});
    tell(handle);
    const QString words = QStringLiteral("%1, %2").arg(text::levelOfWhat(m_document.shown(), handle.level),
                                                       m_plan.figures().text(handle.at));
    setAccessibleDescription(words);
    QAccessibleEvent changed(this, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&changed);
    viewport()->update();
}

// To the next level, from the chosen element on; false at the last.
bool LevelView::step(int by)
{
    const auto& handles = page().handles();
    const auto& chosen = m_document.selection();
    const auto count = static_cast<long>(handles.size());
    long next = by > 0 ? 0 : count - 1;
    if (const auto at = indexOf(m_at)) {
        next = static_cast<long>(*at) + by;
    } else if (!chosen.empty()) {
        const auto first = std::find_if(handles.begin(), handles.end(), [&](const LevelHandle& handle) {
            return handle.level.element == chosen.back();
        });
        if (first != handles.end())
            next = first - handles.begin();
    }
    if (next < 0 || next >= count)
        return false;
    goTo(handles[static_cast<std::size_t>(next)]);
    return true;
}

bool LevelView::dragKey(QKeyEvent& event)
{
    if (event.key() == Qt::Key_Escape) {
        endDrag(false);
    } else if (event.key() == Qt::Key_Return || event.key() == Qt::Key_Enter) {
        endDrag(true);
    } else if (m_drag && m_drag->key(event)) {
        showDragged();
    }
    return true;
}

// By a tenth of the grid; with Shift by the grid, with Ctrl by a millimetre. A burst of keys is one step of undo.
bool LevelView::moveKey(const QKeyEvent& event)
{
    const bool up = event.key() == Qt::Key_Up || event.key() == Qt::Key_PageUp;
    const bool down = event.key() == Qt::Key_Down || event.key() == Qt::Key_PageDown;
    const auto at = indexOf(m_at);
    if (!(up || down) || !at || (event.modifiers() & Qt::AltModifier))
        return false;
    if (!mayEdit())
        return true;
    const units::Length grid = m_plan.settings().gridStep();
    const bool far =
        event.modifiers() & Qt::ShiftModifier || event.key() == Qt::Key_PageUp || event.key() == Qt::Key_PageDown;
    const units::Length size = event.modifiers() & Qt::ControlModifier ? units::millimetres(1.0)
                               : far                                   ? grid
                                                                       : std::max(units::millimetres(1.0), grid / 10.0);
    const units::Elevation now = page().handles()[*at].at;
    if (m_document.commit(plan::setLevel(*m_at, plan::tidy(up ? now + size : now - size)), QStringLiteral("level")))
        if (const auto moved = indexOf(m_at))
            goTo(page().handles()[*moved]);
    return true;
}

void LevelView::openField()
{
    const auto at = indexOf(m_at);
    if (!at)
        return m_document.say(tr("Choose a level first: by a click, or with Left and Right."));
    if (!mayEdit())
        return;
    const LevelHandle& handle = page().handles()[*at];
    m_field->open(handle.level, sheet().at(handle.along, handle.at).toPoint());
}

void LevelView::keyPressEvent(QKeyEvent* event)
{
    event->accept();
    if (m_drag || m_press) {
        dragKey(*event);
        return;
    }
    if (moveKey(*event))
        return;
    switch (event->key()) {
    case Qt::Key_Left:
    case Qt::Key_Right:
        step(event->key() == Qt::Key_Right ? 1 : -1);
        return;
    case Qt::Key_Home:
    case Qt::Key_End:
        m_at.reset();
        m_document.select({});
        step(event->key() == Qt::Key_Home ? 1 : -1);
        return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_L:
        return openField();
    case Qt::Key_Escape:
        m_at.reset();
        return m_document.select({});
    case Qt::Key_Plus:
    case Qt::Key_Equal:
    case Qt::Key_Minus:
        sheet();
        return zoomAbout(m_sheet.room.center(), event->key() == Qt::Key_Minus ? 0.8 : 1.25);
    case Qt::Key_Space:
        m_space = true;
        viewport()->setCursor(Qt::OpenHandCursor);
        return;
    default:
        event->ignore();
    }
}

void LevelView::keyReleaseEvent(QKeyEvent* event)
{
    if (event->key() != Qt::Key_Space || event->isAutoRepeat())
        return QAbstractScrollArea::keyReleaseEvent(event);
    m_space = false;
    viewport()->setCursor(Qt::ArrowCursor);
}

void LevelView::focusOutEvent(QFocusEvent* event)
{
    m_space = false;
    QAbstractScrollArea::focusOutEvent(event);
    viewport()->update();
}

} // namespace sumpwright::ui::section

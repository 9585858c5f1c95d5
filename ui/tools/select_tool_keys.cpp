// SelectTool: nudging, deleting, and keys while a drag lasts.
#include <QKeyEvent>

#include "core/plan/edits/delete.hpp"
#include "core/plan/edits/move.hpp"
#include "ui/canvas/canvas_settings.hpp"
#include "ui/canvas/plan_view.hpp"
#include "ui/text/subject.hpp"
#include "ui/tools/select_tool.hpp"

namespace sumpwright::ui::tools
{

bool SelectTool::key(QKeyEvent& event)
{
    if (m_press)
        return gestureKey(event);
    if (nudgeKey(event))
        return true;
    switch (event.key()) {
    case Qt::Key_Escape:
        document().select({});
        return true;
    case Qt::Key_Delete:
    case Qt::Key_Backspace:
        deleteSelected();
        return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (document().selection().empty())
            return false;
        Q_EMIT view().elementActivated(document().selection().front());
        return true;
    default:
        return false;
    }
}

bool SelectTool::gestureKey(QKeyEvent& event)
{
    if (event.key() == Qt::Key_Escape) {
        giveBack();
        return true;
    }
    if (!m_press->gesture || !m_press->dragged)
        return false;
    if (m_press->gesture->typed().key(event)) {
        dragGesture(m_last);
        return true;
    }
    const bool enter = event.key() == Qt::Key_Return || event.key() == Qt::Key_Enter;
    if (enter) {
        auto here = m_last;
        here.byKey = true; // wherever the pointer is
        release(here);
    }
    return enter;
}

bool SelectTool::nudgeKey(const QKeyEvent& event)
{
    if (document().selection().empty() || (event.modifiers() & Qt::AltModifier))
        return false;
    const auto grid = view().settings().gridStep();
    const auto step = event.modifiers() & Qt::ControlModifier ? units::millimetres(1.0)
                      : event.modifiers() & Qt::ShiftModifier ? grid * 10.0
                                                              : grid;
    const auto none = units::metres(0.0);
    switch (event.key()) {
    case Qt::Key_Left:
        nudge({-step, none});
        return true;
    case Qt::Key_Right:
        nudge({step, none});
        return true;
    case Qt::Key_Up:
        nudge({none, step});
        return true;
    case Qt::Key_Down:
        nudge({none, -step});
        return true;
    default:
        return false;
    }
}

void SelectTool::nudge(plan::Point by)
{
    if (mayEdit())
        document().commit(plan::moveElements(document().selection(), by), QStringLiteral("nudge"));
}

void SelectTool::deleteSelected()
{
    const auto ids = document().selection();
    if (ids.empty() || !mayEdit())
        return;
    const auto loose = plan::detachedBy(plan(), ids);
    const QString names = loose.empty() ? QString() : text::subjects(plan(), loose);
    if (document().commit(plan::deleteElements(ids)) && !loose.empty())
        document().say(tr("Now open at one end: %1. Undo brings everything back.").arg(names));
}

} // namespace sumpwright::ui::tools

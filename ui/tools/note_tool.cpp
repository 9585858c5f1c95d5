#include "ui/tools/note_tool.hpp"

#include <QKeyEvent>
#include <QLineEdit>

#include "core/plan/edits/place.hpp"
#include "ui/canvas/plan_view.hpp"
#include "ui/canvas/scene_point.hpp"

namespace sumpwright::ui::tools
{

NoteTool::NoteTool(canvas::PlanView& view) : PointingTool(view), m_field(new QLineEdit(&view))
{
    m_field->setAccessibleName(tr("Text of the note"));
    m_field->setPlaceholderText(tr("Note"));
    m_field->resize(260, 28);
    m_field->hide();
    m_field->installEventFilter(this);
}

QString NoteTool::hint() const
{
    return m_at ? tr("Type the note and press Enter; Esc leaves none.") : tr("Click where the note stands.");
}

void NoteTool::moved(const canvas::CanvasPointer& pointer)
{
    if (m_at)
        return;
    canvas::Overlay overlay;
    overlay.cue = snapped(pointer).cue;
    show(std::move(overlay));
}

void NoteTool::pressed(const canvas::CanvasPointer& pointer)
{
    if (!mayEdit())
        return;
    if (m_at && leaveNote()) {
        Q_EMIT finished();
        return;
    }
    m_at = snapped(pointer).at;
    const QPoint inView = view().mapFromScene(canvas::toScene(*m_at));
    m_field->clear();
    m_field->move(view().viewport()->mapTo(&view(), inView));
    m_field->show();
    m_field->raise();
    m_field->setFocus();
    Q_EMIT hintChanged();
}

bool NoteTool::leaveNote()
{
    if (!m_at)
        return false;
    const auto at = *m_at;
    const std::string words = m_field->text().trimmed().toStdString();
    giveBack();
    if (words.empty())
        return false;
    const base::Id placed{plan().nextId};
    if (!document().commit(plan::placeNote(at, words)))
        return false;
    document().select({placed});
    return true;
}

// Enter and Esc end here: left to the plan, Enter would be a click there.
bool NoteTool::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() != QEvent::KeyPress)
        return PointingTool::eventFilter(watched, event);
    switch (static_cast<QKeyEvent*>(event)->key()) {
    case Qt::Key_Escape:
        giveBack();
        return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (leaveNote())
            Q_EMIT finished();
        return true;
    case Qt::Key_Up:
    case Qt::Key_Down:
        return true; // no crosshair moves while words are typed
    default:
        return PointingTool::eventFilter(watched, event);
    }
}

void NoteTool::giveBack()
{
    const bool typing = m_field->isVisible();
    m_at.reset();
    m_field->hide();
    if (typing)
        view().setFocus();
    show({});
    Q_EMIT hintChanged();
}

} // namespace sumpwright::ui::tools

#include "ui/tools/level_editor.hpp"

#include <QFocusEvent>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QScrollBar>
#include <QVBoxLayout>

#include <algorithm>

#include "core/plan/edits/vertex.hpp"
#include "core/plan/level_ref.hpp"
#include "ui/canvas/plan_view.hpp"
#include "ui/canvas/scene_point.hpp"
#include "ui/document/document.hpp"
#include "ui/style/type.hpp"
#include "ui/text/display.hpp"
#include "ui/text/refusals.hpp"
#include "ui/text/subject.hpp"

namespace sumpwright::ui::tools
{

namespace
{
constexpr int leastWidth = 150; // pixels
constexpr int off = 14;         // pixels beside the vertex

// Of two vertices straight above one another the caption tells which.
QString onLeg(const plan::Run& run, std::size_t vertex)
{
    const auto& here = run.vertices[vertex];
    const auto straight = [&](std::size_t other) {
        return other < run.vertices.size() &&
               plan::distanceBetween(run.vertices[other].at, here.at) < units::millimetres(0.5) &&
               run.vertices[other].level != here.level;
    };
    const std::size_t other = straight(vertex + 1) ? vertex + 1 : vertex - 1; // wraps round where there is none
    if (!straight(other))
        return {};
    return here.level > run.vertices[other].level ? LevelEditor::tr(", top of the vertical leg")
                                                  : LevelEditor::tr(", foot of the vertical leg");
}
} // namespace

LevelEditor::LevelEditor(canvas::PlanView& view)
    : QFrame(&view), m_view(view), m_caption(new QLabel(this)), m_field(new QLineEdit(this)),
      m_message(new QLabel(this))
{
    setAutoFillBackground(true);
    setFrameShape(StyledPanel);
    setAccessibleName(tr("Level on the plan"));
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(style::step, style::halfStep, style::step, style::halfStep);
    rows->setSpacing(style::halfStep);
    rows->addWidget(m_caption);
    rows->addWidget(m_field);
    rows->addWidget(m_message);
    m_field->setMinimumHeight(style::leastTarget);
    m_field->installEventFilter(this);
    m_caption->setBuddy(m_field);
    m_message->setWordWrap(true);
    m_message->hide();
    for (auto* bar : {view.horizontalScrollBar(), view.verticalScrollBar()})
        connect(bar, &QScrollBar::valueChanged, this, [this] {
            if (isOpen())
                layOut();
        });
    hide();
}

const plan::Run* LevelEditor::run() const { return m_view.document().committed().runs.find(m_run); }

QPointF LevelEditor::place() const
{
    const auto* now = run();
    return now && m_vertex < now->vertices.size() ? canvas::toScene(now->vertices[m_vertex].at) : QPointF();
}

void LevelEditor::open(base::Id id, std::size_t vertex)
{
    const auto& plan = m_view.document().committed();
    const auto* wanted = plan.runs.find(id);
    if (!wanted || vertex >= wanted->vertices.size())
        return;
    if (plan::isHeld(*wanted, vertex))
        return m_view.document().say(tr("This end of %1 follows what it is attached to: its level is changed there.")
                                         .arg(text::subject(plan, id)));
    m_run = id;
    show(vertex);
}

void LevelEditor::openFirst(base::Id id)
{
    const auto* wanted = m_view.document().committed().runs.find(id);
    if (!wanted)
        return;
    for (std::size_t i = 0; i < wanted->vertices.size(); ++i)
        if (!plan::isHeld(*wanted, i))
            return open(id, i);
    open(id, 0); // says why
}

void LevelEditor::show(std::size_t vertex)
{
    m_vertex = vertex;
    const auto& now = *run();
    const auto figures = m_view.figures();
    m_shown = text::DisplaySettings{figures.system, figures.numbers}.entryText(now.vertices[vertex].level);
    const int number = static_cast<int>(vertex) + 1;
    m_caption->setText(tr("Level of vertex %1 of %2%3")
                           .arg(number)
                           .arg(static_cast<int>(now.vertices.size()))
                           .arg(onLeg(now, vertex)));
    m_field->setAccessibleName(tr("Level of vertex %1").arg(number));
    m_field->setText(m_shown);
    say({});
    const QRect room = m_view.viewport()->rect().adjusted(off, off, -off, -off);
    if (!room.contains(m_view.mapFromScene(place())))
        m_view.panBy(m_view.mapFromScene(place()) - room.center());
    layOut();
    QFrame::show();
    raise();
    m_field->setFocus();
    m_field->selectAll();
    Q_EMIT changed();
}

// Beside the vertex, inside the plan.
void LevelEditor::layOut()
{
    const QRect room = m_view.viewport()->geometry();
    const int width = std::max(
        {leastWidth, m_caption->sizeHint().width() + 3 * style::step, m_message->isHidden() ? 0 : 2 * leastWidth});
    setFixedWidth(std::min(width, room.width()));
    adjustSize();
    const QPoint at = m_view.viewport()->mapTo(&m_view, m_view.mapFromScene(place())) + QPoint(off, off);
    move(std::clamp(at.x(), room.left(), std::max(room.left(), room.right() - this->width())),
         std::clamp(at.y(), room.top(), std::max(room.top(), room.bottom() - height())));
}

void LevelEditor::say(const QString& message)
{
    m_message->setText(message);
    m_message->setVisible(!message.isEmpty());
}

void LevelEditor::shut()
{
    const bool typing = m_field->hasFocus();
    m_run = {};
    hide();
    if (typing)
        m_view.setFocus();
    Q_EMIT changed();
}

void LevelEditor::leave()
{
    if (!isOpen())
        return;
    takeTyped();
    if (isOpen())
        shut();
}

void LevelEditor::followPlan()
{
    if (!isOpen())
        return;
    const auto* now = run();
    const auto& chosen = m_view.document().selection();
    if (!now || m_vertex >= now->vertices.size() || chosen.size() != 1 || chosen.front() != m_run)
        shut();
    else
        layOut();
}

bool LevelEditor::take()
{
    if (takeTyped())
        return true;
    layOut();
    m_field->selectAll();
    return false;
}

bool LevelEditor::takeTyped()
{
    if (m_field->text() == m_shown)
        return true;
    const auto figures = m_view.figures();
    const text::DisplaySettings display{figures.system, figures.numbers};
    const auto level = display.read<units::Elevation>(m_field->text(), {}, {}, run()->vertices[m_vertex].level);
    if (!level) {
        say(text::sentenceOf(level.refusal(), tr("Level")));
        return false;
    }
    const auto edit = plan::setVertexLevel(m_run, m_vertex, *level);
    if (const auto tried = edit.apply(m_view.document().committed()); !tried) {
        say(text::sentenceOf(tried.refusal(), tr("Level")));
        return false;
    }
    return m_view.document().commit(edit);
}

void LevelEditor::step(int by)
{
    if (!take())
        return;
    const auto& now = *run();
    const auto count = static_cast<int>(now.vertices.size());
    int next = static_cast<int>(m_vertex);
    do
        next = (next + by + count) % count;
    while (plan::isHeld(now, static_cast<std::size_t>(next)));
    show(static_cast<std::size_t>(next));
}

bool LevelEditor::key(int key)
{
    switch (key) {
    case Qt::Key_Escape:
        shut();
        return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (take())
            shut();
        return true;
    case Qt::Key_Tab:
        step(1);
        return true;
    case Qt::Key_Backtab:
        step(-1);
        return true;
    default:
        return false;
    }
}

// What the field leaves over, the arrows up and down, is not the plan's.
void LevelEditor::keyPressEvent(QKeyEvent* event) { event->accept(); }

bool LevelEditor::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::KeyPress)
        return key(static_cast<QKeyEvent*>(event)->key()) || QFrame::eventFilter(watched, event);
    if (event->type() == QEvent::FocusOut) {
        const auto reason = static_cast<QFocusEvent*>(event)->reason();
        if (reason != Qt::PopupFocusReason && reason != Qt::ActiveWindowFocusReason)
            QMetaObject::invokeMethod(this, &LevelEditor::leave, Qt::QueuedConnection);
    }
    return QFrame::eventFilter(watched, event);
}

} // namespace sumpwright::ui::tools

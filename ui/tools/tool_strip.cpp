#include "ui/tools/tool_strip.hpp"

#include <QComboBox>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

#include <algorithm>

#include "ui/canvas/plan_view.hpp"
#include "ui/style/type.hpp"

namespace sumpwright::ui::tools
{

ToolStrip::ToolStrip(canvas::PlanView& view)
    : QFrame(&view), m_view(view), m_watched(view.viewport()), m_rows(new QVBoxLayout(this)),
      m_message(new QLabel(this))
{
    setAutoFillBackground(true);
    setFrameShape(StyledPanel);
    setAccessibleName(tr("Fields of the tool"));
    m_rows->setContentsMargins(style::step, style::halfStep, style::step, style::halfStep);
    m_rows->setSpacing(style::halfStep);
    m_message->setWordWrap(true);
    m_message->hide();
    m_rows->addWidget(m_message);
    view.viewport()->installEventFilter(this);
    hide();
}

void ToolStrip::add(QLabel* words, QWidget* field)
{
    field->setMinimumHeight(style::leastTarget);
    field->setAccessibleName(words->text().remove(u'&'));
    field->installEventFilter(this);
    words->setBuddy(field);
    m_entries.push_back({words, field});
}

// Rows as full as the plan's width allows, the message below them.
void ToolStrip::layOut()
{
    const int room = m_view.viewport()->width() - 4 * style::step;
    while (m_rows->count() > 1)
        delete m_rows->takeAt(0); // the row, not its widgets
    QHBoxLayout* row = nullptr;
    int used = 0;
    for (const Entry& entry : m_entries) {
        const int wide = entry.words->sizeHint().width() + style::step +
                         std::min(entry.field->sizeHint().width(), entry.field->maximumWidth()) + style::step;
        if (!row || used + wide > room) {
            row = new QHBoxLayout;
            row->setSpacing(style::step);
            m_rows->insertLayout(m_rows->count() - 1, row);
            row->addStretch();
            used = 0;
        }
        row->insertWidget(row->count() - 1, entry.words);
        row->insertWidget(row->count() - 1, entry.field);
        used += wide;
    }
    m_message->setMaximumWidth(std::max(room, 100));
    m_rows->activate();
    const QSize wanted = sizeHint();
    const int width = std::min(wanted.width(), room + 2 * style::step);
    resize(width, m_message->isHidden() ? wanted.height() : std::max(wanted.height(), heightForWidth(width)));
}

QLineEdit* ToolStrip::addField(const QString& label, std::function<QString(const QString&)> entered)
{
    auto* words = new QLabel(label, this);
    auto* field = new QLineEdit(this);
    field->setMaximumWidth(110);
    add(words, field);
    connect(field, &QLineEdit::returnPressed, this, [this, field, entered = std::move(entered)] {
        const QString wrong = entered(field->text());
        say(wrong);
        if (wrong.isEmpty())
            m_view.setFocus();
        else
            field->selectAll();
    });
    return field;
}

QComboBox* ToolStrip::addChoice(const QString& label, const QStringList& choices, std::function<void(int)> chosen)
{
    auto* words = new QLabel(label, this);
    auto* box = new QComboBox(this);
    box->addItems(choices);
    box->setMaximumWidth(260);
    add(words, box);
    connect(box, &QComboBox::activated, this, [this, chosen = std::move(chosen)](int index) {
        chosen(index);
        m_view.setFocus();
    });
    return box;
}

void ToolStrip::say(const QString& message)
{
    m_message->setText(message);
    m_message->setVisible(!message.isEmpty());
    layOut();
}

void ToolStrip::placeAndShow()
{
    const QPoint corner = m_view.viewport()->geometry().topLeft() + QPoint(style::step, style::step);
    layOut();
    move(corner);
    show();
    raise();
}

// What the fields leave over - Enter, the arrows - is not the plan's: there Enter would end the run being drawn.
void ToolStrip::keyPressEvent(QKeyEvent* event) { event->accept(); }

bool ToolStrip::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_watched) { // not asked of the plan, which may be past answering: the strip dies after it
        if (event->type() == QEvent::Resize && isVisible())
            layOut();
        return false;
    }
    if (event->type() == QEvent::KeyPress && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        say({});
        m_view.setFocus();
        return true;
    }
    return QFrame::eventFilter(watched, event);
}

} // namespace sumpwright::ui::tools

#include "ui/tools/tool_strip.hpp"

#include <QComboBox>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>

#include "ui/canvas/plan_view.hpp"
#include "ui/style/type.hpp"

namespace sumpwright::ui::tools
{

ToolStrip::ToolStrip(canvas::PlanView& view)
    : QFrame(&view), m_view(view), m_row(new QHBoxLayout(this)), m_message(new QLabel(this))
{
    setAutoFillBackground(true);
    setFrameShape(StyledPanel);
    setAccessibleName(tr("Fields of the tool"));
    m_row->setContentsMargins(style::step, style::halfStep, style::step, style::halfStep);
    m_row->setSpacing(style::step);
    m_message->hide();
    m_row->addWidget(m_message);
    hide();
}

QLineEdit* ToolStrip::addField(const QString& label, std::function<QString(const QString&)> entered)
{
    auto* words = new QLabel(label, this);
    auto* field = new QLineEdit(this);
    field->setMinimumHeight(style::leastTarget);
    field->setMaximumWidth(110);
    field->setAccessibleName(QString(label).remove(u'&'));
    words->setBuddy(field);
    m_row->insertWidget(m_row->count() - 1, words);
    m_row->insertWidget(m_row->count() - 1, field);
    field->installEventFilter(this);
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
    box->setMinimumHeight(style::leastTarget);
    box->setAccessibleName(QString(label).remove(u'&'));
    words->setBuddy(box);
    m_row->insertWidget(m_row->count() - 1, words);
    m_row->insertWidget(m_row->count() - 1, box);
    box->installEventFilter(this);
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
    adjustSize();
}

void ToolStrip::placeAndShow()
{
    const QPoint corner = m_view.viewport()->geometry().topLeft() + QPoint(style::step, style::step);
    adjustSize();
    move(corner);
    show();
    raise();
}

// What the fields leave over - Enter, the arrows - is not the plan's: there Enter would end the run being drawn.
void ToolStrip::keyPressEvent(QKeyEvent* event) { event->accept(); }

bool ToolStrip::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::KeyPress && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        say({});
        m_view.setFocus();
        return true;
    }
    return QFrame::eventFilter(watched, event);
}

} // namespace sumpwright::ui::tools

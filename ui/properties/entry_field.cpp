#include "ui/properties/entry_field.hpp"

#include <QKeyEvent>
#include <QLineEdit>
#include <QVBoxLayout>

#include "ui/properties/refusal_line.hpp"
#include "ui/style/type.hpp"

namespace sumpwright::ui::properties
{

EntryField::EntryField(const QString& name, Accept accept, QWidget* parent)
    : QWidget(parent), m_line(new QLineEdit(this)), m_refusal(new RefusalLine(this)), m_accept(std::move(accept))
{
    m_line->setAccessibleName(name);
    m_line->setMinimumHeight(style::leastTarget);
    m_line->installEventFilter(this);
    keepRoom();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    column->addWidget(m_line);
    column->addWidget(m_refusal);
    connect(m_line, &QLineEdit::returnPressed, this, [this] { handOver(By::enter); });
    connect(m_line, &QLineEdit::textEdited, this, &EntryField::clearRefusal);
}

void EntryField::setShown(const QString& text)
{
    m_mixed = false;
    m_shown = text;
    if (!m_line->isModified())
        giveBack();
}

void EntryField::setMixed()
{
    m_mixed = true;
    m_shown.clear();
    if (!m_line->isModified())
        giveBack();
}

void EntryField::setEmptyText(const QString& words)
{
    m_emptyText = words;
    if (!m_line->isModified())
        giveBack();
}

void EntryField::refuseInto(RefusalLine& line)
{
    m_refusal->deleteLater();
    m_refusal = &line;
}

void EntryField::setReadOnly(bool readOnly) { m_line->setReadOnly(readOnly); }

QString EntryField::refusalText() const { return m_refusal->shownText(); }

void EntryField::finish() { handOver(By::leaving); }

bool EntryField::holdsSomething() const { return m_line->isModified() || !m_refusal->isHidden(); }

bool EntryField::eventFilter(QObject* watched, QEvent* event)
{
    if (watched != m_line)
        return QWidget::eventFilter(watched, event);
    if (event->type() == QEvent::FocusIn) {
        const auto reason = static_cast<QFocusEvent*>(event)->reason();
        if (reason == Qt::OtherFocusReason || reason == Qt::ShortcutFocusReason)
            m_line->selectAll(); // as after Tab: what is typed takes the value's place
    } else if (event->type() == QEvent::FocusOut) {
        const auto reason = static_cast<QFocusEvent*>(event)->reason();
        if (reason != Qt::PopupFocusReason && reason != Qt::ActiveWindowFocusReason)
            handOver(By::leaving);
    } else if (event->type() == QEvent::FontChange) {
        keepRoom();
    } else if (event->type() == QEvent::ShortcutOverride) {
        if (claims(static_cast<QKeyEvent&>(*event)))
            return true;
    } else if (event->type() == QEvent::KeyPress) {
        if (static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape && holdsSomething()) {
            clearRefusal();
            giveBack();
            m_line->selectAll();
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

// A number with sign and unit is read whole at any size of type.
void EntryField::keepRoom()
{
    m_line->setMinimumWidth(m_line->fontMetrics().horizontalAdvance(QStringLiteral("+0.0000 m")) + 2 * style::step);
}

// Esc belongs to the field while it holds something to give back; undo and redo belong to the plan, not to the line,
// while nothing is typed.
bool EntryField::claims(QKeyEvent& key)
{
    if (key.key() == Qt::Key_Escape && holdsSomething()) {
        key.accept();
        return true;
    }
    if (!m_line->isModified() && (key.matches(QKeySequence::Undo) || key.matches(QKeySequence::Redo))) {
        key.ignore();
        return true;
    }
    return false;
}

void EntryField::handOver(By by)
{
    if (!m_line->isModified() || m_line->isReadOnly())
        return;
    const QString typed = m_line->text();
    m_line->setModified(false); // so that the change the edit makes shows at once
    if (m_mixed || typed != m_shown) {
        if (const auto refusal = m_accept(typed)) {
            refuse(*refusal, typed, by);
            return;
        }
    }
    clearRefusal();
    giveBack();
    if (by == By::enter)
        m_line->selectAll();
}

void EntryField::refuse(const base::Refusal& refusal, const QString& typed, By by)
{
    giveBack();
    if (by == By::enter) { // the text stays to be mended
        m_line->setText(typed);
        m_line->setModified(true);
        m_line->selectAll();
    }
    m_refusal->show(refusal, m_line->accessibleName(), m_shown);
    m_line->setAccessibleDescription(m_refusal->shownText());
}

void EntryField::giveBack()
{
    m_line->setPlaceholderText(m_mixed ? tr("mixed") : m_emptyText);
    if (m_line->text() != m_shown)
        m_line->setText(m_shown);
    m_line->setModified(false);
    if (!m_line->hasFocus())
        m_line->setCursorPosition(0); // of a text too long for the field its start is shown
}

void EntryField::clearRefusal()
{
    m_refusal->clear();
    m_line->setAccessibleDescription({});
}

} // namespace sumpwright::ui::properties

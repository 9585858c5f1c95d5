#include "ui/design/entry_line.hpp"

#include <QKeyEvent>

#include "ui/style/type.hpp"
#include "ui/text/refusals.hpp"

namespace sumpwright::ui::design
{

EntryLine::EntryLine(const QString& name, const QString& whenEmpty, Accept accept, QWidget* parent)
    : QLineEdit(parent), m_accept(std::move(accept))
{
    constexpr int longest = 200;
    setMaxLength(longest);
    setAccessibleName(name);
    setPlaceholderText(whenEmpty);
    setMinimumHeight(style::leastTarget);
    connect(this, &QLineEdit::returnPressed, this, &EntryLine::handOver);
}

void EntryLine::setShown(const QString& text)
{
    m_shown = text;
    setText(text);
}

void EntryLine::handOver()
{
    const QString typed = text().trimmed();
    if (typed == m_shown)
        return;
    if (const auto refusal = m_accept(typed)) {
        const QString sentence = text::sentenceOf(*refusal, accessibleName());
        setAccessibleDescription(sentence);
        Q_EMIT refused(sentence);
        return;
    }
    m_shown = typed;
    setAccessibleDescription({});
    Q_EMIT accepted();
}

void EntryLine::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape && text() != m_shown) {
        setText(m_shown);
        setAccessibleDescription({});
        Q_EMIT refused({});
        return;
    }
    QLineEdit::keyPressEvent(event);
}

void EntryLine::focusOutEvent(QFocusEvent* event)
{
    if (event->reason() != Qt::PopupFocusReason && event->reason() != Qt::ActiveWindowFocusReason) {
        handOver();
        if (!accessibleDescription().isEmpty()) // refused: the value before is back
            setText(m_shown);
    }
    QLineEdit::focusOutEvent(event);
}

} // namespace sumpwright::ui::design

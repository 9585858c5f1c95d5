#include "ui/window/message_strip.hpp"

#include <QAccessible>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/style/palette.hpp"
#include "ui/style/type.hpp"

namespace sumpwright::ui::window
{

namespace
{

constexpr int markSide = 16;

QString weightWord(Weight weight)
{
    switch (weight) {
    case Weight::note:
        return MessageStrip::tr("Note");
    case Weight::caution:
        return MessageStrip::tr("Caution");
    case Weight::fault:
        return MessageStrip::tr("Fault");
    }
    return {};
}

QColor weightColour(Weight weight, const style::Theme& theme)
{
    switch (weight) {
    case Weight::note:
        return theme.quiet;
    case Weight::caution:
        return theme.caution;
    case Weight::fault:
        return theme.fault;
    }
    return {};
}

// A ring for a note, a triangle for a caution, a filled square for a fault.
void drawMark(QPainter& painter, Weight weight, const QColor& colour, const QRectF& place)
{
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(colour, 1.5));
    painter.setBrush(Qt::NoBrush);
    const QRectF r = place.adjusted(2, 2, -2, -2);
    switch (weight) {
    case Weight::note:
        painter.drawEllipse(r);
        break;
    case Weight::caution:
        painter.drawPolygon(QPolygonF({QPointF(r.center().x(), r.top()), r.bottomRight(), r.bottomLeft()}));
        break;
    case Weight::fault:
        painter.setBrush(colour);
        painter.drawRect(r);
        break;
    }
}

} // namespace

MessageStrip::MessageStrip(StripMessage message, QWidget* parent) : QFrame(parent), m_message(std::move(message))
{
    setObjectName(QStringLiteral("strip.") + m_message.key);
    setAccessibleName(weightWord(m_message.weight) + QStringLiteral(": ") + m_message.text);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(style::step + markSide + style::step, style::halfStep, style::step, style::halfStep + 1);
    row->setSpacing(style::step);
    auto* label = new QLabel(
        QStringLiteral("<b>%1</b>&nbsp; %2").arg(weightWord(m_message.weight), m_message.text.toHtmlEscaped()));
    label->setTextFormat(Qt::RichText);
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    row->addWidget(label, 1);
    std::vector<StripChoice> choices = m_message.choices;
    choices.push_back({tr("Dismiss"), {}});
    for (const StripChoice& choice : choices) {
        auto* button = new QPushButton(choice.text);
        button->setAutoDefault(false);
        button->setMinimumHeight(style::leastTarget);
        connect(button, &QPushButton::clicked, this, [this, action = choice.action] { leave(action); });
        row->addWidget(button);
    }
}

void MessageStrip::leave(const std::function<void()>& then)
{
    hide();
    deleteLater();
    setObjectName({});
    m_message.key.clear(); // a new message of this key is not this one
    if (then)
        then();
}

void MessageStrip::paintEvent(QPaintEvent*)
{
    const style::Theme& theme = style::themeOf(*this);
    QPainter painter(this);
    painter.fillRect(rect(), theme.notice);
    painter.fillRect(QRect(0, height() - 1, width(), 1), theme.gridHeavy);
    drawMark(painter, m_message.weight, weightColour(m_message.weight, theme),
             QRectF(style::step, (height() - markSide) / 2.0, markSide, markSide));
}

void MessageStrip::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape)
        return leave({});
    QFrame::keyPressEvent(event);
}

StripStack::StripStack(QWidget* parent) : QWidget(parent), m_rows(new QVBoxLayout(this))
{
    m_rows->setContentsMargins(0, 0, 0, 0);
    m_rows->setSpacing(0);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
}

void StripStack::show(StripMessage message)
{
    drop(message.key);
    auto* strip = new MessageStrip(std::move(message), this);
    m_rows->addWidget(strip);
    strip->QWidget::show();
    QAccessibleEvent told(strip, QAccessible::Alert);
    QAccessible::updateAccessibility(&told);
}

void StripStack::drop(const QString& key)
{
    for (MessageStrip* strip : findChildren<MessageStrip*>())
        if (strip->key() == key)
            delete strip;
}

bool StripStack::holds(const QString& key) const
{
    for (const MessageStrip* strip : findChildren<MessageStrip*>())
        if (strip->key() == key)
            return true;
    return false;
}

QStringList StripStack::texts() const
{
    QStringList texts;
    for (const MessageStrip* strip : findChildren<MessageStrip*>())
        if (!strip->key().isEmpty())
            texts << strip->text();
    return texts;
}

} // namespace sumpwright::ui::window

#include "ui/charts/sign_button.hpp"

#include <QEvent>
#include <QPainter>

#include "ui/style/palette.hpp"
#include "ui/style/type.hpp"

namespace sumpwright::ui::charts
{

SignButton::SignButton(QWidget* parent) : QAbstractButton(parent)
{
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
}

void SignButton::show(const Sign& sign, bool stale)
{
    const bool resized = sign.value.size() != m_sign.value.size() || sign.worse.size() != m_sign.worse.size();
    m_sign = sign;
    m_stale = stale;
    QString spoken = sign.label + QStringLiteral(": ") + sign.value;
    if (!sign.worse.isEmpty())
        spoken += QStringLiteral(", ") + sign.worse;
    setAccessibleName(spoken);
    setToolTip(sign.chart.isEmpty() ? tr("Show the findings") : tr("Show the chart behind this figure"));
    if (resized)
        updateGeometry();
    update();
}

QSize SignButton::sizeHint() const
{
    const QFontMetrics label(style::bodyFont());
    const QFontMetrics value(style::strongFont());
    int wide = value.horizontalAdvance(m_sign.value);
    if (!m_sign.worse.isEmpty())
        wide += style::step + 12 + label.horizontalAdvance(m_sign.worse);
    wide = std::max(wide, label.horizontalAdvance(m_sign.label));
    return {wide + 2 * style::step + 2, label.height() + value.height() + style::step};
}

void SignButton::paintEvent(QPaintEvent*)
{
    const style::Theme& theme = style::themeOf(*this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (isDown() || underMouse())
        painter.fillRect(rect(), theme.field);
    const QFontMetrics label(style::bodyFont());
    const QFontMetrics value(style::strongFont());
    const int left = style::step;
    painter.setFont(style::bodyFont());
    painter.setPen(theme.quiet);
    painter.drawText(left, style::halfStep + label.ascent(), m_sign.label);
    const int base = style::halfStep + label.height() + value.ascent();
    painter.setFont(style::strongFont());
    painter.setPen(m_stale ? theme.stale : m_sign.bad ? theme.fault : theme.ink);
    painter.drawText(left, base, m_sign.value);
    if (!m_sign.worse.isEmpty()) {
        const int x = left + value.horizontalAdvance(m_sign.value) + style::step;
        const QPolygonF wedge({{x + 0.0, base - 7.0}, {x + 8.0, base - 7.0}, {x + 4.0, base + 0.0}});
        painter.setPen(Qt::NoPen);
        painter.setBrush(theme.caution);
        painter.drawPolygon(wedge);
        painter.setFont(style::bodyFont());
        painter.setPen(theme.caution);
        painter.drawText(x + 12, base, m_sign.worse);
    }
    if (hasFocus()) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(theme.accent, 2.0));
        painter.drawRect(QRectF(rect()).adjusted(1.0, 1.0, -1.0, -1.0));
    }
}

bool SignButton::event(QEvent* event)
{
    if (event->type() == QEvent::Enter || event->type() == QEvent::Leave)
        update();
    return QAbstractButton::event(event);
}

} // namespace sumpwright::ui::charts

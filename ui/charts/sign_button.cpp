#include "ui/charts/sign_button.hpp"

#include <algorithm>

#include <QEvent>
#include <QPainter>

#include "ui/style/palette.hpp"
#include "ui/style/type.hpp"
#include "ui/text/display.hpp"
#include "ui/text/names.hpp"

namespace sumpwright::ui::charts
{

namespace
{
constexpr int wedge = 12;         // the mark of a turn for the worse and its gap
constexpr int roomForWorse = 160; // pixels, beside the figure, where the line has them
} // namespace

SignButton::SignButton(QWidget* parent) : QAbstractButton(parent)
{
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
}

void SignButton::show(const Sign& sign, bool stale)
{
    m_sign = sign;
    m_stale = stale;
    QString spoken = sign.label + QStringLiteral(": ") + sign.value;
    if (!sign.worse.isEmpty())
        spoken += QStringLiteral(", ") + sign.worse;
    if (!sign.detail.isEmpty())
        spoken += QStringLiteral(", ") + sign.detail;
    setAccessibleName(spoken);
    const QString what = sign.chart.isEmpty() ? tr("Show the findings") : tr("Show the chart behind this figure");
    setToolTip(sign.detail.isEmpty() ? what : text::heading(sign.detail) + QStringLiteral("\n") + what);
    update();
}

void SignButton::showNothing()
{
    Sign none = m_sign;
    none.value = text::absentText();
    none.worse.clear();
    none.detail.clear();
    none.bad = false;
    show(none, true);
}

// Counted with the widest digit, since a figure keeps changing under the eye.
int SignButton::neededWidth() const
{
    QString widest = m_sign.value;
    std::replace_if(
        widest.begin(), widest.end(), [](QChar c) { return c.isDigit(); }, QChar(u'0'));
    const int value = QFontMetrics(style::strongFont()).horizontalAdvance(widest);
    const int label = QFontMetrics(style::bodyFont()).horizontalAdvance(m_sign.label);
    return std::max(value, label) + 2 * style::step + 2;
}

void SignButton::reserve(Reserve how)
{
    const int needed = neededWidth();
    if (how == Reserve::atLeast && needed <= m_reserved)
        return;
    m_reserved = needed;
    setMaximumWidth(m_reserved + roomForWorse);
    updateGeometry();
}

QSize SignButton::sizeHint() const
{
    const QFontMetrics label(style::bodyFont());
    const QFontMetrics value(style::strongFont());
    return {m_reserved, label.height() + value.height() + style::step};
}

void SignButton::paintWorse(QPainter& painter, QPoint at, int room) const
{
    const style::Theme& theme = style::themeOf(*this);
    const QPointF left(at.x(), at.y());
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.caution);
    painter.drawPolygon(QPolygonF({left + QPointF(0, -7), left + QPointF(8, -7), left + QPointF(4, 0)}));
    painter.setFont(style::bodyFont());
    painter.setPen(theme.caution);
    painter.drawText(at + QPoint(wedge, 0),
                     QFontMetrics(style::bodyFont()).elidedText(m_sign.worse, Qt::ElideRight, room - wedge));
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
    const int room = width() - 2 * style::step;
    const QPoint upper(style::step, style::halfStep + label.ascent());
    const QPoint lower(style::step, style::halfStep + label.height() + value.ascent());
    const int beside = value.horizontalAdvance(m_sign.value) + style::step;
    const bool worseBeside = beside + wedge + label.horizontalAdvance(m_sign.worse) <= room;
    if (m_sign.worse.isEmpty() || worseBeside) {
        painter.setFont(style::bodyFont());
        painter.setPen(theme.quiet);
        painter.drawText(upper, label.elidedText(m_sign.label, Qt::ElideRight, room));
    }
    painter.setFont(style::strongFont());
    painter.setPen(m_stale ? theme.stale : m_sign.bad ? theme.fault : theme.ink);
    painter.drawText(lower, value.elidedText(m_sign.value, Qt::ElideRight, room));
    if (!m_sign.worse.isEmpty())
        paintWorse(painter, worseBeside ? lower + QPoint(beside, 0) : upper, worseBeside ? room - beside : room);
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

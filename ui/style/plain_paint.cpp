#include "ui/style/plain_paint.hpp"

#include <functional>

#include <QPixmap>

namespace sumpwright::ui::style
{

namespace
{

constexpr qreal corner = 2.0;

QIcon drawn(const std::function<void(QPainter&)>& draw, const QColor& line)
{
    QIcon icon;
    for (const int scale : {1, 2}) {
        QPixmap pixmap(16 * scale, 16 * scale);
        pixmap.setDevicePixelRatio(scale);
        pixmap.fill(Qt::transparent);
        QPainter painter(&pixmap);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(QPen(line, 1.4));
        draw(painter);
        icon.addPixmap(pixmap);
    }
    return icon;
}

} // namespace

void paintBox(QPainter& painter, const QRect& rect, const QColor& fill, const QColor& line, int width)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(fill);
    painter.setPen(QPen(line, width));
    const qreal inset = width / 2.0;
    painter.drawRoundedRect(QRectF(rect).adjusted(inset, inset, -inset, -inset), corner, corner);
    painter.restore();
}

void paintArrow(QPainter& painter, const QRect& rect, Qt::ArrowType direction, const QColor& line)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(line, 1.4));
    painter.translate(QRectF(rect).center());
    switch (direction) {
    case Qt::UpArrow:
        painter.rotate(180);
        break;
    case Qt::LeftArrow:
        painter.rotate(90);
        break;
    case Qt::RightArrow:
        painter.rotate(-90);
        break;
    case Qt::DownArrow:
    case Qt::NoArrow:
        break;
    }
    painter.drawPolyline(QPolygonF({QPointF(-3.5, -1.5), QPointF(0, 2), QPointF(3.5, -1.5)}));
    painter.restore();
}

void paintGround(QPainter& painter, const QRect& rect, const Theme& theme, QStyle::State state, bool isButton)
{
    const bool enabled = state & QStyle::State_Enabled;
    const bool focused = enabled && (state & QStyle::State_HasFocus);
    const bool down = isButton && (state & (QStyle::State_Sunken | QStyle::State_On));
    const bool hovered = isButton && enabled && (state & QStyle::State_MouseOver);
    QColor fill = theme.field;
    if (!enabled)
        fill = theme.panel;
    else if (down)
        fill = theme.gridHeavy;
    else if (hovered)
        fill = theme.gridFine;
    const QColor line = focused ? theme.accent : enabled ? theme.faint : theme.gridHeavy;
    paintBox(painter, rect, fill, line, focused ? 2 : 1);
}

QIcon crossIcon(const QColor& line)
{
    return drawn(
        [](QPainter& p) {
            p.drawLine(QPointF(4.5, 4.5), QPointF(11.5, 11.5));
            p.drawLine(QPointF(11.5, 4.5), QPointF(4.5, 11.5));
        },
        line);
}

QIcon windowIcon(const QColor& line)
{
    return drawn(
        [](QPainter& p) {
            p.drawRect(QRectF(3.5, 6.5, 6, 6));
            p.drawPolyline(QPolygonF(
                {QPointF(6.5, 6.5), QPointF(6.5, 3.5), QPointF(12.5, 3.5), QPointF(12.5, 9.5), QPointF(9.5, 9.5)}));
        },
        line);
}

QIcon extensionIcon(const QColor& line)
{
    return drawn(
        [](QPainter& p) {
            p.drawPolyline(QPolygonF({QPointF(4, 4.5), QPointF(7.5, 8), QPointF(4, 11.5)}));
            p.drawPolyline(QPolygonF({QPointF(8.5, 4.5), QPointF(12, 8), QPointF(8.5, 11.5)}));
        },
        line);
}

} // namespace sumpwright::ui::style

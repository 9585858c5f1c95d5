#include "ui/canvas/dimension_item.hpp"

#include <QFontMetricsF>
#include <QTransform>

#include <cmath>

#include "ui/canvas/scene_point.hpp"

namespace sumpwright::ui::canvas
{

namespace
{
// Of the figure, degrees clockwise: read from below or from the right.
double readingTurn(const QLineF& line)
{
    const double turn = std::remainder(-line.angle(), 360.0);
    return turn > 90.0 - 1e-6 || turn < -90.0 - 1e-6 ? turn + 180.0 : turn;
}
} // namespace

DimensionItem::DimensionItem(Pointer dimension, const Drawing& drawing) : ElementItem(dimension->id, drawing)
{
    show(std::move(dimension));
}

void DimensionItem::show(Pointer dimension)
{
    prepareGeometryChange();
    m_dimension = std::move(dimension);
    setZValue(60.0);
    update();
}

QPainterPath DimensionItem::outline() const
{
    const QPointF from = toScene(m_dimension->from);
    const QPointF to = toScene(m_dimension->to);
    const QLineF line = dimensionLine(from, to, toScene(m_dimension->offset));
    QPainterPath path(from);
    path.lineTo(line.p1());
    path.lineTo(line.p2());
    path.lineTo(to);
    return path;
}

std::vector<QLineF> DimensionItem::lines() const
{
    const QPointF from = toScene(m_dimension->from);
    const QPointF to = toScene(m_dimension->to);
    const QLineF line = dimensionLine(from, to, toScene(m_dimension->offset));
    return {line, QLineF(from, line.p1()), QLineF(to, line.p2())};
}

QRectF DimensionItem::figureRoom() const
{
    const QLineF line = lines().front();
    const QFontMetricsF metrics(letterFont());
    const double width = metrics.horizontalAdvance(figure());
    const QRectF letters(-width / 2.0, -4.0 - metrics.ascent(), width, metrics.ascent() + 4.0);
    QTransform onLine;
    onLine.translate(line.center().x(), line.center().y());
    onLine.rotate(readingTurn(line));
    onLine.scale(drawing().pixel, drawing().pixel);
    return onLine.mapRect(letters);
}

QString DimensionItem::figure() const
{
    return drawing().figures.size(plan::distanceBetween(m_dimension->from, m_dimension->to));
}

void DimensionItem::draw(QPainter& painter, const Ink& ink) const
{
    paintDimension(painter, ink, toScene(m_dimension->from), toScene(m_dimension->to), toScene(m_dimension->offset),
                   figure(), ink.theme->quiet);
}

QLineF dimensionLine(QPointF from, QPointF to, double offset)
{
    const QLineF axis(from, to);
    const double length = axis.length();
    if (length < 1e-6)
        return axis;
    // Left of from-to on the sheet: in the scene, whose y runs down, that is (dy, -dx).
    const QPointF left = QPointF(axis.dy(), -axis.dx()) * (offset / length);
    return axis.translated(left);
}

void paintDimension(QPainter& painter, const Ink& ink, QPointF from, QPointF to, double offset, const QString& figure,
                    const QColor& colour)
{
    const QLineF line = dimensionLine(from, to, offset);
    const double length = line.length();
    painter.setBrush(Qt::NoBrush);
    painter.setPen(ink.pen(colour, weight::hair));
    painter.drawLine(line);
    const QPointF off = line.p1() - from;
    const double away = QLineF(from, line.p1()).length();
    const QPointF unit = away > 1e-6 ? off / away : QPointF();
    if (away > ink.px(3.0)) {
        painter.drawLine(from + unit * ink.px(3.0), line.p1() + unit * ink.px(4.0));
        painter.drawLine(to + unit * ink.px(3.0), line.p2() + unit * ink.px(4.0));
    }
    painter.setPen(ink.pen(colour, weight::medium));
    const QLineF stroke(QPointF(-ink.px(4.0), ink.px(4.0)), QPointF(ink.px(4.0), -ink.px(4.0)));
    for (const QPointF& end : {line.p1(), line.p2()}) {
        painter.save();
        painter.translate(end);
        painter.rotate(-line.angle());
        painter.drawLine(stroke);
        painter.restore();
    }
    const QFontMetricsF metrics(letterFont());
    const double width = metrics.horizontalAdvance(figure);
    if (width > length / ink.pixel * 1.6)
        return;
    inPixels(painter, ink, line.center(), readingTurn(line), [&] {
        painter.setPen(colour);
        painter.setFont(letterFont());
        painter.drawText(QPointF(-width / 2.0, -4.0), figure);
    });
}

} // namespace sumpwright::ui::canvas

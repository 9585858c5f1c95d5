#include "ui/canvas/dimension_item.hpp"

#include <QFontMetricsF>

#include "ui/canvas/scene_point.hpp"

namespace sumpwright::ui::canvas
{

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

void DimensionItem::draw(QPainter& painter, const Ink& ink) const
{
    const auto length = plan::distanceBetween(m_dimension->from, m_dimension->to);
    paintDimension(painter, ink, toScene(m_dimension->from), toScene(m_dimension->to), toScene(m_dimension->offset),
                   drawing().figures.size(length), ink.theme->quiet);
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
    double turn = -line.angle();
    painter.setPen(ink.pen(colour, weight::medium));
    const QLineF stroke(QPointF(-ink.px(4.0), ink.px(4.0)), QPointF(ink.px(4.0), -ink.px(4.0)));
    for (const QPointF& end : {line.p1(), line.p2()}) {
        painter.save();
        painter.translate(end);
        painter.rotate(turn);
        painter.drawLine(stroke);
        painter.restore();
    }
    // Read from below or from the right.
    turn = std::remainder(turn, 360.0);
    if (turn > 90.0 - 1e-6 || turn < -90.0 - 1e-6)
        turn += 180.0;
    const QFontMetricsF metrics(letterFont());
    const double width = metrics.horizontalAdvance(figure);
    if (width > length / ink.pixel * 1.6)
        return;
    inPixels(painter, ink, line.center(), turn, [&] {
        painter.setPen(colour);
        painter.setFont(letterFont());
        painter.drawText(QPointF(-width / 2.0, -4.0), figure);
    });
}

} // namespace sumpwright::ui::canvas

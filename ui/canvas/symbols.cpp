#include "ui/canvas/symbols.hpp"

#include <cmath>

namespace sumpwright::ui::canvas
{

namespace
{
// Draws around the origin with x along the turned direction.
template <class Paint> void turned(QPainter& painter, QPointF place, double turn, Paint&& paint)
{
    painter.save();
    painter.translate(place);
    painter.rotate(turn);
    paint();
    painter.restore();
}

void circle(QPainter& painter, QPointF centre, double diameter)
{
    painter.drawEllipse(centre, diameter / 2.0, diameter / 2.0);
}

void prepare(QPainter& painter, const QPen& pen, const QBrush& brush)
{
    painter.setPen(pen);
    painter.setBrush(brush);
}

void seenFromAbove(QPainter& painter, const Ink& ink, QPointF place, double diameter)
{
    prepare(painter, ink.pen(ink.theme->waterLine, weight::thin), ink.theme->paper);
    circle(painter, place, diameter);
}

void paintBowTie(QPainter& painter, double half, double height)
{
    const QPolygonF tie{{-half, -height}, {half, height}, {half, -height}, {-half, height}};
    painter.drawPolygon(tie);
}
} // namespace

void paintFlowArrow(QPainter& painter, const Ink&, QPointF tip, double turn, double size, const QColor& colour)
{
    turned(painter, tip, turn, [&] {
        prepare(painter, Qt::NoPen, colour);
        painter.drawPolygon(QPolygonF{{0.0, 0.0}, {-size, -size * 0.42}, {-size * 0.8, 0.0}, {-size, size * 0.42}});
    });
}

void paintFitting(QPainter& painter, const Ink& ink, FittingSign sign, QPointF place, double turn, double size,
                  bool shut)
{
    const double half = size / 2.0;
    const double height = size * 0.3;
    const QColor& line = ink.theme->ink;
    turned(painter, place, turn, [&] {
        prepare(painter, ink.pen(line, weight::thin), shut ? line : ink.theme->paper);
        switch (sign) {
        case FittingSign::ball:
            paintBowTie(painter, half, height);
            prepare(painter, ink.pen(line, weight::thin), shut ? line : ink.theme->paper);
            circle(painter, {}, size * 0.36);
            break;
        case FittingSign::gate:
            paintBowTie(painter, half, height);
            painter.drawLine(QPointF(0.0, -height), QPointF(0.0, height));
            break;
        case FittingSign::globe:
            paintBowTie(painter, half, height);
            painter.setBrush(line);
            circle(painter, {}, size * 0.26);
            break;
        case FittingSign::butterfly:
            paintBowTie(painter, half, height);
            prepare(painter, ink.pen(line, weight::thin), line);
            painter.drawLine(QPointF(-half * 0.45, height), QPointF(half * 0.45, -height));
            circle(painter, {}, size * 0.16);
            break;
        case FittingSign::check:
            painter.drawRect(QRectF(-half, -height, size, 2.0 * height));
            painter.setBrush(line);
            painter.drawPolygon(QPolygonF{{-half, -height}, {half * 0.8, 0.0}, {-half, height}});
            painter.setPen(ink.pen(line, weight::bold));
            painter.drawLine(QPointF(half, -height), QPointF(half, height));
            break;
        case FittingSign::other:
            painter.drawRect(QRectF(-half * 0.45, -height, size * 0.45, 2.0 * height));
            break;
        }
    });
}

void paintPump(QPainter& painter, const Ink& ink, QPointF place, double turn, double diameter, bool running)
{
    turned(painter, place, turn, [&] {
        const double r = diameter / 2.0;
        prepare(painter, ink.pen(ink.theme->ink, weight::medium), ink.theme->shell);
        circle(painter, {}, diameter);
        prepare(painter, ink.pen(ink.theme->ink, weight::thin), running ? ink.theme->ink : ink.theme->paper);
        painter.drawPolygon(QPolygonF{{r, 0.0}, {-r * 0.5, -r * 0.866}, {-r * 0.5, r * 0.866}});
    });
}

void paintRising(QPainter& painter, const Ink& ink, QPointF place, double diameter)
{
    seenFromAbove(painter, ink, place, diameter);
    prepare(painter, Qt::NoPen, ink.theme->waterLine);
    circle(painter, place, diameter * 0.38);
}

void paintFalling(QPainter& painter, const Ink& ink, QPointF place, double diameter)
{
    seenFromAbove(painter, ink, place, diameter);
    const double d = diameter * 0.5 * std::sqrt(0.5);
    painter.drawLine(place - QPointF(d, d), place + QPointF(d, d));
    painter.drawLine(place - QPointF(d, -d), place + QPointF(d, -d));
}

void paintJoint(QPainter& painter, const Ink& ink, QPointF place, double diameter)
{
    prepare(painter, ink.pen(ink.theme->paper, weight::thin), ink.theme->waterLine);
    circle(painter, place, diameter);
}

void paintOpenEnd(QPainter& painter, const Ink& ink, QPointF place, double turn, double diameter)
{
    turned(painter, place, turn, [&] {
        painter.setPen(ink.pen(ink.theme->waterLine, weight::medium));
        painter.drawLine(QPointF(0.0, -diameter * 0.8), QPointF(0.0, diameter * 0.8));
    });
}

void paintStandpipe(QPainter& painter, const Ink& ink, QPointF place, double bore)
{
    prepare(painter, ink.pen(ink.theme->ink, weight::thin), ink.theme->shell);
    circle(painter, place, bore * 1.25);
    prepare(painter, ink.pen(ink.theme->ink, weight::hair), ink.theme->ink);
    circle(painter, place, bore * 0.6);
}

void paintBell(QPainter& painter, const Ink& ink, QPointF place, double bore)
{
    prepare(painter, ink.dashed(ink.pen(ink.theme->ink, weight::thin), {3.0, 2.0}), ink.theme->water);
    circle(painter, place, bore * 3.6);
    prepare(painter, ink.pen(ink.theme->ink, weight::thin), ink.theme->shell);
    circle(painter, place, bore * 2.3);
    paintStandpipe(painter, ink, place, bore);
}

void paintInlet(QPainter& painter, const Ink& ink, QPointF place, double bore)
{
    prepare(painter, ink.pen(ink.theme->waterLine, weight::thin), ink.theme->paper);
    circle(painter, place, bore * 1.25);
    painter.drawLine(place - QPointF(bore * 0.62, 0.0), place + QPointF(bore * 0.62, 0.0));
    painter.drawLine(place - QPointF(0.0, bore * 0.62), place + QPointF(0.0, bore * 0.62));
}

void paintSideOutlet(QPainter& painter, const Ink& ink, QPointF place, double turn, double bore)
{
    turned(painter, place, turn, [&] {
        prepare(painter, ink.pen(ink.theme->ink, weight::thin), ink.theme->shell);
        painter.drawRect(QRectF(-bore * 0.5, -bore * 0.7, bore, bore * 1.4));
    });
}

void paintDrainPoint(QPainter& painter, const Ink& ink, QPointF place, double diameter)
{
    prepare(painter, ink.pen(ink.theme->ink, weight::thin), ink.theme->paper);
    const double r = diameter / 2.0;
    painter.drawRect(QRectF(place - QPointF(r, r), place + QPointF(r, r)));
    circle(painter, place, diameter * 0.72);
    for (const double offset : {-0.18, 0.0, 0.18}) {
        const double y = offset * diameter;
        const double half = std::sqrt(std::max(0.0, 0.1296 * diameter * diameter - y * y));
        painter.drawLine(place + QPointF(-half, y), place + QPointF(half, y));
    }
}

void paintPowerPoint(QPainter& painter, const Ink& ink, QPointF place, double diameter)
{
    prepare(painter, ink.pen(ink.theme->ink, weight::thin), ink.theme->paper);
    circle(painter, place, diameter);
    const double r = diameter / 2.0;
    painter.setBrush(ink.theme->ink);
    painter.drawPie(QRectF(place - QPointF(r, r), place + QPointF(r, r)), 0, 180 * 16);
    painter.drawLine(place - QPointF(0.0, r), place - QPointF(0.0, r * 1.7));
}

void paintNorth(QPainter& painter, const Ink& ink, QPointF centre, double turn, double height)
{
    turned(painter, centre, turn, [&] {
        const double h = height / 2.0;
        prepare(painter, ink.pen(ink.theme->ink, weight::thin), ink.theme->paper);
        painter.drawPolygon(QPolygonF{{h, 0.0}, {-h, -h * 0.55}, {-h * 0.6, 0.0}, {-h, h * 0.55}});
        painter.setBrush(ink.theme->ink);
        painter.drawPolygon(QPolygonF{{h, 0.0}, {-h, -h * 0.55}, {-h * 0.6, 0.0}});
    });
}

void paintLevelMark(QPainter& painter, const Ink& ink, QPointF tip, double size, const QColor& colour)
{
    prepare(painter, ink.pen(colour, weight::thin), Qt::NoBrush);
    painter.drawPolygon(QPolygonF{tip, tip + QPointF(-size * 0.6, -size), tip + QPointF(size * 0.6, -size)});
}

} // namespace sumpwright::ui::canvas

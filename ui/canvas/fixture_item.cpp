#include "ui/canvas/fixture_item.hpp"

#include <QLineF>

#include "ui/canvas/scene_point.hpp"
#include "ui/canvas/symbols.hpp"

namespace sumpwright::ui::canvas
{

namespace
{
constexpr double socketSize = 90.0;  // millimetres, drawn
constexpr double socketLeast = 11.0; // pixels
} // namespace

QPolygonF bandOf(QPointF from, QPointF to, double thickness)
{
    const QLineF axis(from, to);
    if (axis.length() < 1e-6)
        return {};
    const QPointF half = QPointF(-axis.dy(), axis.dx()) * (thickness / 2.0 / axis.length());
    return QPolygonF{from + half, to + half, to - half, from - half};
}

FixtureItem::FixtureItem(Pointer fixture, const Drawing& drawing) : ElementItem(fixture->id, drawing)
{
    show(std::move(fixture));
}

void FixtureItem::show(Pointer fixture)
{
    prepareGeometryChange();
    m_fixture = std::move(fixture);
    setZValue(m_fixture->kind == plan::FixtureKind::wall ? 2.0 : 3.0);
    refresh();
    update();
}

void FixtureItem::drawingChanged()
{
    ElementItem::drawingChanged();
    refresh();
}

void FixtureItem::refresh()
{
    const QPointF from = toScene(m_fixture->from);
    const double size = toScene(m_fixture->size);
    m_outline = {};
    switch (m_fixture->kind) {
    case plan::FixtureKind::wall:
    case plan::FixtureKind::door:
        m_outline.addPolygon(bandOf(from, toScene(m_fixture->to), size));
        m_outline.closeSubpath();
        break;
    case plan::FixtureKind::post:
        m_outline.addRect(QRectF(from - QPointF(size, size) / 2.0, QSizeF(size, size)));
        break;
    case plan::FixtureKind::powerPoint: {
        const double diameter = drawing().ink().sign(socketSize, socketLeast);
        m_outline.addEllipse(from, diameter / 2.0, diameter / 2.0);
        break;
    }
    }
}

double FixtureItem::margin() const
{
    const double around = drawing().ink().px(10.0);
    if (m_fixture->kind != plan::FixtureKind::door)
        return around;
    return around + QLineF(toScene(m_fixture->from), toScene(m_fixture->to)).length(); // the swing
}

void FixtureItem::draw(QPainter& painter, const Ink& ink) const
{
    painter.setPen(ink.pen(ink.theme->ink, weight::medium));
    painter.setBrush(ink.theme->wall);
    switch (m_fixture->kind) {
    case plan::FixtureKind::wall:
        break; // drawn with all others, see WallsItem
    case plan::FixtureKind::door:
        drawDoor(painter, ink);
        break;
    case plan::FixtureKind::post: {
        painter.drawPath(m_outline);
        const QRectF rect = m_outline.boundingRect();
        painter.setPen(ink.pen(ink.theme->ink, weight::hair));
        painter.drawLine(rect.topLeft(), rect.bottomRight());
        painter.drawLine(rect.topRight(), rect.bottomLeft());
        break;
    }
    case plan::FixtureKind::powerPoint:
        paintPowerPoint(painter, ink, m_outline.boundingRect().center(), m_outline.boundingRect().width());
        break;
    }
}

// The opening in the wall, the leaf standing open on the left of from-to, and the quarter circle it swings.
void FixtureItem::drawDoor(QPainter& painter, const Ink& ink) const
{
    const QLineF axis(toScene(m_fixture->from), toScene(m_fixture->to));
    const double width = axis.length();
    if (width < 1e-6)
        return;
    const double half = toScene(m_fixture->size) / 2.0;
    painter.save();
    painter.translate(axis.p1());
    painter.rotate(-axis.angle());
    painter.setPen(Qt::NoPen);
    painter.setBrush(ink.theme->floor);
    painter.drawRect(QRectF(0.0, -half - ink.px(1.0), width, 2.0 * half + ink.px(2.0)));
    painter.setBrush(Qt::NoBrush);
    painter.setPen(ink.pen(ink.theme->ink, weight::medium));
    painter.drawLine(QPointF(0.0, -half), QPointF(0.0, half));
    painter.drawLine(QPointF(width, -half), QPointF(width, half));
    painter.drawLine(QPointF(0.0, 0.0), QPointF(0.0, -width));
    painter.setPen(ink.pen(ink.theme->quiet, weight::hair));
    painter.drawArc(QRectF(-width, -width, 2.0 * width, 2.0 * width), 0, 90 * 16);
    painter.restore();
}

} // namespace sumpwright::ui::canvas

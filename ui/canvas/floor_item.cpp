#include "ui/canvas/floor_item.hpp"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>

#include "ui/canvas/scene_point.hpp"
#include "ui/canvas/symbols.hpp"

namespace sumpwright::ui::canvas
{

namespace
{
constexpr double around = 220.0; // pixels: room for letters beside the outline
constexpr double drainSize = 150.0;
constexpr double wallsAlong = 500.0; // scene: walls that reach further below the outline stand elsewhere
} // namespace

void FloorItem::show(Pointer floor)
{
    prepareGeometryChange();
    m_floor = std::move(floor);
    m_outline = toScene(m_floor->outline);
    update();
}

void FloorItem::drawingChanged()
{
    prepareGeometryChange();
    update();
}

QRectF FloorItem::boundingRect() const
{
    QRectF rect = m_outline.boundingRect();
    if (m_floor && m_floor->drainPoint)
        rect = rect.united(QRectF(toScene(*m_floor->drainPoint), QSizeF(1.0, 1.0)));
    const double grow = m_drawing.ink().px(around);
    return rect.isNull() ? rect : rect.adjusted(-grow, -grow, grow, grow);
}

void FloorItem::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*)
{
    if (!m_floor)
        return;
    const Ink ink = m_drawing.ink();
    if (!m_outline.isEmpty()) {
        painter->setPen(ink.pen(ink.theme->ink, weight::bold));
        painter->setBrush(Qt::NoBrush);
        painter->drawPolygon(m_outline);
        drawLevel(*painter, ink);
        if (m_floor->fall > units::metresPerMetre(0.0))
            drawFall(*painter, ink);
    }
    if (m_floor->drainPoint)
        paintDrainPoint(*painter, ink, toScene(*m_floor->drainPoint), ink.sign(drainSize, 11.0));
}

void FloorItem::standClearOf(const QRectF& walls)
{
    const double below = walls.isNull() ? 0.0 : walls.bottom() - m_outline.boundingRect().bottom();
    const double clear = below > 0.0 && below < wallsAlong ? below : 0.0;
    if (clear == m_clear)
        return;
    m_clear = clear;
    update();
}

// At the lower left corner, outside the slab, where nothing stands in its way.
QPointF FloorItem::levelPlace() const { return m_outline.boundingRect().bottomLeft() + QPointF(0.0, m_clear); }

// Beside the lower edge, outside, so that vessels never cover it.
QPointF FloorItem::fallPlace() const
{
    const QRectF rect = m_outline.boundingRect();
    return {rect.center().x(), rect.bottom() + m_clear + m_drawing.ink().px(18.0)};
}

QString FloorItem::level() const
{
    return QCoreApplication::translate("FloorItem", "floor %1").arg(m_drawing.figures.text(m_floor->level));
}

QString FloorItem::fall() const
{
    return QCoreApplication::translate("FloorItem", "fall %1").arg(m_drawing.figures.text(m_floor->fall));
}

std::vector<QRectF> FloorItem::letterRooms() const
{
    std::vector<QRectF> rooms;
    if (!m_floor || m_outline.isEmpty())
        return rooms;
    const QFontMetricsF metrics(letterFont());
    const auto room = [&](QPointF place, const QRectF& pixels) {
        rooms.emplace_back(place + pixels.topLeft() * m_drawing.pixel, pixels.size() * m_drawing.pixel);
    };
    room(levelPlace(), {2.0, 8.0, 18.0 + metrics.horizontalAdvance(level()), 16.0});
    if (m_floor->fall > units::metresPerMetre(0.0))
        room(fallPlace(), {-38.0, -16.0, 40.0 + metrics.horizontalAdvance(fall()), 32.0});
    return rooms;
}

void FloorItem::drawLevel(QPainter& painter, const Ink& ink) const
{
    inPixels(painter, ink, levelPlace(), 0.0, [&] {
        Ink flat = ink;
        flat.pixel = 1.0;
        paintLevelMark(painter, flat, QPointF(8.0, 21.0), 9.0, ink.theme->ink);
        painter.setFont(letterFont());
        painter.drawText(QPointF(18.0, 21.0), level());
    });
}

void FloorItem::drawFall(QPainter& painter, const Ink& ink) const
{
    const double turn = sceneRotation(m_floor->fallDirection);
    inPixels(painter, ink, fallPlace(), 0.0, [&] {
        Ink flat = ink;
        flat.pixel = 1.0;
        painter.save();
        painter.translate(-22.0, 0.0);
        painter.rotate(turn);
        painter.setPen(flat.pen(ink.theme->ink, weight::thin));
        painter.drawLine(QPointF(-14.0, 0.0), QPointF(14.0, 0.0));
        paintFlowArrow(painter, flat, QPointF(15.0, 0.0), 0.0, 9.0, ink.theme->ink);
        painter.restore();
        painter.setPen(ink.theme->ink);
        painter.setFont(letterFont());
        painter.drawText(QPointF(0.0, 4.0), fall());
    });
}

} // namespace sumpwright::ui::canvas

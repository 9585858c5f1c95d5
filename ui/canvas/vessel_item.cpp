#include "ui/canvas/vessel_item.hpp"

#include <QPainter>

#include <algorithm>
#include <cmath>

#include "ui/canvas/hatch.hpp"
#include "ui/canvas/scene_point.hpp"
#include "ui/canvas/symbols.hpp"
#include "ui/canvas/vessel_shape.hpp"

namespace sumpwright::ui::canvas
{

namespace
{
constexpr double leastBore = 7.0;      // pixels
constexpr double usualBore = 40.0;     // drawn for a lip or mouth without a bore of its own
constexpr double hatchSpacing = 5.0;   // pixels
constexpr double boardLength = 1200.0; // own inference: rafts are cut from boards of about this length
constexpr double plantSpacing = 200.0; // own inference: holes drawn at this distance
constexpr double plantHole = 50.0;
} // namespace

VesselItem::VesselItem(Pointer vessel, const Drawing& drawing) : ElementItem(vessel->id, drawing)
{
    show(std::move(vessel));
}

void VesselItem::show(Pointer vessel)
{
    const bool sameForm = m_vessel && m_vessel->shape == vessel->shape && m_vessel->kind == vessel->kind &&
                          m_vessel->wallThickness == vessel->wallThickness;
    if (!sameForm)
        prepareGeometryChange();
    m_vessel = std::move(vessel);
    m_outside = outsidePath(*m_vessel);
    m_inside = insidePath(*m_vessel);
    setPos(toScene(m_vessel->centre));
    setRotation(sceneRotation(m_vessel->turn));
    update();
}

double VesselItem::margin() const
{
    return std::max(drawing().ink().px(14.0), 100.0); // ports outside the wall, mouths hanging over the rim
}

bool VesselItem::wet() const
{
    const auto* water = drawing().water.vessel(m_vessel->id);
    return !water || water->volume > units::litres(0.05);
}

void VesselItem::draw(QPainter& painter, const Ink& ink) const
{
    painter.setPen(ink.pen(ink.theme->ink, weight::medium));
    painter.setBrush(ink.theme->shell);
    painter.drawPath(m_outside);
    drawInside(painter, ink);
    if (std::holds_alternative<plan::CagedShape>(m_vessel->shape))
        drawCage(painter, ink);
    drawLegs(painter, ink);
    drawPorts(painter, ink);
}

void VesselItem::drawInside(QPainter& painter, const Ink& ink) const
{
    const bool filled = m_vessel->medium.has_value();
    painter.setPen(ink.pen(ink.theme->ink, weight::hair));
    painter.setBrush(filled ? ink.theme->medium : wet() ? ink.theme->water : ink.theme->paper);
    painter.drawPath(m_inside);
    if (filled)
        drawMedium(painter, ink);
    switch (m_vessel->kind) {
    case plan::VesselKind::raftBed:
        drawRafts(painter, ink);
        break;
    case plan::VesselKind::settler:
        drawBaffle(painter, ink);
        break;
    case plan::VesselKind::fishTank:
    case plan::VesselKind::sump:
    case plan::VesselKind::mediaBed:
        break;
    }
}

void VesselItem::drawMedium(QPainter& painter, const Ink& ink) const
{
    const auto lines = hatchLines(m_inside.boundingRect(), roundUp125(ink.px(hatchSpacing)));
    painter.setPen(ink.pen(blend(ink.theme->medium, ink.theme->mediumHatch, 0.55), weight::hair));
    const bool round = std::holds_alternative<plan::RoundShape>(m_vessel->shape);
    if (round) {
        painter.save();
        painter.setClipPath(m_inside, Qt::IntersectClip);
    }
    painter.drawLines(lines.data(), static_cast<int>(lines.size()));
    if (round)
        painter.restore();
}

void VesselItem::drawRafts(QPainter& painter, const Ink& ink) const
{
    const QRectF bed = m_inside.boundingRect().adjusted(25.0, 25.0, -25.0, -25.0);
    if (bed.width() <= 0.0 || bed.height() <= 0.0 || std::holds_alternative<plan::RoundShape>(m_vessel->shape))
        return;
    const int boards = std::max(1, static_cast<int>(std::lround(bed.width() / boardLength)));
    const double length = bed.width() / boards;
    const bool holes = plantHole > ink.px(2.5);
    for (int i = 0; i < boards; ++i) {
        const QRectF board(bed.left() + i * length + 4.0, bed.top(), length - 8.0, bed.height());
        painter.setPen(ink.pen(ink.theme->quiet, weight::hair));
        painter.setBrush(ink.theme->paper);
        painter.drawRect(board);
        if (!holes)
            continue;
        const int columns = std::max(1, static_cast<int>(board.width() / plantSpacing));
        const int rows = std::max(1, static_cast<int>(board.height() / plantSpacing));
        painter.setBrush(ink.theme->medium);
        for (int c = 0; c < columns; ++c)
            for (int r = 0; r < rows; ++r)
                painter.drawEllipse(board.topLeft() +
                                        QPointF(board.width() * (c + 0.5) / columns, board.height() * (r + 0.5) / rows),
                                    plantHole / 2.0, plantHole / 2.0);
    }
}

// A settler turns the water round a baffle: a ring in a round one, a cross wall in a long one.
void VesselItem::drawBaffle(QPainter& painter, const Ink& ink) const
{
    const QRectF rect = m_inside.boundingRect();
    painter.setPen(ink.pen(ink.theme->ink, weight::thin));
    painter.setBrush(Qt::NoBrush);
    if (std::holds_alternative<plan::RoundShape>(m_vessel->shape))
        painter.drawEllipse(rect.center(), rect.width() * 0.18, rect.height() * 0.18);
    else
        painter.drawLine(QPointF(0.0, rect.top()), QPointF(0.0, rect.bottom()));
}

// The bars of the cage, seen on edge between the frame and the tank.
void VesselItem::drawCage(QPainter& painter, const Ink& ink) const
{
    constexpr double spacing = 100.0;
    constexpr double depth = 32.0;
    if (spacing < ink.px(5.0))
        return;
    const QRectF rect = outsideRect(*m_vessel);
    std::vector<QLineF> bars;
    for (double x = rect.left() + spacing; x < rect.right() - spacing / 2.0; x += spacing) {
        bars.emplace_back(x, rect.top(), x, rect.top() + depth);
        bars.emplace_back(x, rect.bottom(), x, rect.bottom() - depth);
    }
    for (double y = rect.top() + spacing; y < rect.bottom() - spacing / 2.0; y += spacing) {
        bars.emplace_back(rect.left(), y, rect.left() + depth, y);
        bars.emplace_back(rect.right(), y, rect.right() - depth, y);
    }
    painter.setPen(ink.pen(ink.theme->ink, weight::hair));
    painter.drawLines(bars.data(), static_cast<int>(bars.size()));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(rect.adjusted(depth, depth, -depth, -depth), depth, depth);
}

void VesselItem::drawLegs(QPainter& painter, const Ink& ink) const
{
    const auto places = legPlaces(*m_vessel);
    if (places.empty())
        return;
    const double pad = ink.sign(toScene(m_vessel->stand->padSide), 4.0);
    painter.setPen(ink.dashed(ink.pen(ink.theme->quiet, weight::thin), {3.0, 2.0}));
    painter.setBrush(Qt::NoBrush);
    for (const QPointF& place : places)
        painter.drawRect(QRectF(place.x() - pad / 2.0, place.y() - pad / 2.0, pad, pad));
}

void VesselItem::drawPorts(QPainter& painter, const Ink& ink) const
{
    for (const auto& port : m_vessel->ports) {
        const QPointF place = toScene(port.offset);
        const double bore = ink.sign(port.bore ? toScene(*port.bore) : usualBore, leastBore);
        switch (port.kind) {
        case plan::PortKind::inlet:
            paintInlet(painter, ink, place, bore);
            break;
        case plan::PortKind::lip:
            if (port.drainLevel)
                paintBell(painter, ink, place, bore);
            else
                paintStandpipe(painter, ink, place, bore);
            break;
        case plan::PortKind::sideOutlet:
            paintSideOutlet(painter, ink, place, outwardTurn(*m_vessel, place), bore);
            break;
        }
    }
}

} // namespace sumpwright::ui::canvas

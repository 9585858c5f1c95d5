#include "ui/section/paint_profile.hpp"

#include <algorithm>
#include <cmath>

#include "ui/canvas/hatch.hpp"
#include "ui/canvas/symbols.hpp"
#include "ui/style/series.hpp"

namespace sumpwright::ui::section
{

namespace
{
namespace weight = canvas::weight;

constexpr double leastWall = 2.0;    // pixels
constexpr double hatchSpacing = 9.0; // pixels
constexpr double leastPipe = 2.0;    // pixels
constexpr double doubleFrom = 4.5;   // pixels: wide enough for two edges and a centre line
constexpr double leastPort = 9.0;    // pixels
constexpr double pumpHalf = 0.09;    // metres: half the width of a pump's body, common practice
constexpr double leastPump = 13.0;   // pixels
constexpr double separate = 1.0;     // pixels between two water lines that are told apart
const units::Length usualBore = units::millimetres(40.0);

void paintStand(QPainter& painter, const Sheet& sheet, const Pens& pens, const report::VesselProfile& vessel)
{
    if (vessel.legs.empty() || vessel.base <= vessel.floor)
        return;
    const auto& theme = *pens.ink.theme;
    const double half = std::max(1.5, sheet.wide(vessel.padSide) / 2.0 * 0.7);
    painter.setPen(pens.ink.pen(theme.quiet, weight::thin));
    painter.setBrush(vessel.stand == plan::StandKind::blocks ? QBrush(theme.wall) : QBrush(theme.paper));
    for (const units::Length& leg : vessel.legs) {
        const QPointF top = sheet.at(leg, vessel.base), foot = sheet.at(leg, vessel.floor);
        painter.drawRect(QRectF(top.x() - half, top.y(), 2.0 * half, foot.y() - top.y()));
    }
}

QRectF insideOf(const Sheet& sheet, const report::VesselProfile& vessel)
{
    const QRectF outside = sheet.rect(vessel.left, vessel.right, vessel.base, vessel.rim);
    const double wall = std::min(std::max(leastWall, sheet.wide(vessel.wall)), outside.width() / 3.0);
    const double bottom = std::max(leastWall, sheet.high(vessel.wall));
    return outside.adjusted(wall, 0.0, -wall, -std::min(bottom, outside.height() / 3.0));
}

void fillUpTo(QPainter& painter, const Sheet& sheet, const QRectF& inside, units::Elevation level, const QColor& colour)
{
    const double top = std::clamp(sheet.y(level), inside.top(), inside.bottom());
    painter.fillRect(QRectF(inside.left(), top, inside.width(), inside.bottom() - top), colour);
}

void paintContent(QPainter& painter, const Sheet& sheet, const Pens& pens, const report::VesselProfile& vessel,
                  const QRectF& inside)
{
    const auto& theme = *pens.ink.theme;
    painter.fillRect(inside, theme.paper);
    if (vessel.mediumTop)
        fillUpTo(painter, sheet, inside, *vessel.mediumTop, theme.medium);
    if (vessel.water.least)
        fillUpTo(painter, sheet, inside, *vessel.water.least,
                 vessel.mediumTop ? canvas::blend(theme.medium, theme.water, 0.75) : theme.water);
    if (!vessel.mediumTop)
        return;
    const double top = std::clamp(sheet.y(*vessel.mediumTop), inside.top(), inside.bottom());
    const auto lines = canvas::hatchLines({inside.left(), top, inside.width(), inside.bottom() - top}, hatchSpacing);
    painter.setPen(pens.ink.pen(canvas::blend(theme.medium, theme.mediumHatch, 0.55), weight::hair));
    painter.drawLines(lines.data(), static_cast<int>(lines.size()));
}

void paintWaterLines(QPainter& painter, const Sheet& sheet, const Pens& pens, const report::VesselProfile& vessel,
                     const QRectF& inside)
{
    std::vector<double> drawn;
    const auto line = [&](const std::optional<units::Elevation>& level, LineKind kind) {
        if (!level)
            return;
        const double y = sheet.y(*level);
        if (std::any_of(drawn.begin(), drawn.end(), [y](double other) { return std::abs(y - other) < separate; }))
            return;
        drawn.push_back(y);
        painter.setPen(penOf(kind, pens));
        painter.drawLine(QPointF(inside.left(), y), QPointF(inside.right(), y));
    };
    line(vessel.water.least, LineKind::least);
    line(vessel.water.most, LineKind::most);
    line(vessel.water.stopped, LineKind::stopped);
}

double boreOf(const Sheet& sheet, const report::PortProfile& port)
{
    return std::max(leastPort, sheet.wide(port.bore > units::Length() ? port.bore : usualBore));
}

// A standpipe down to the bottom; under a bell, the bell down to where the air comes in.
void paintLip(QPainter& painter, const Sheet& sheet, const Pens& pens, const report::PortProfile& port,
              units::Elevation bottom)
{
    const auto& theme = *pens.ink.theme;
    const double half = boreOf(sheet, port) / 2.0;
    const QPointF lip = sheet.at(port.along, port.level);
    const double foot = std::max(lip.y(), sheet.y(bottom));
    if (port.drainLevel) {
        const double air = std::max(lip.y(), sheet.y(*port.drainLevel));
        painter.setPen(pens.ink.dashed(pens.ink.pen(theme.ink, weight::thin), {3.0, 2.0}));
        painter.setBrush(Qt::NoBrush);
        painter.drawPolyline(QPolygonF{{lip.x() - 2.2 * half, air},
                                       {lip.x() - 2.2 * half, lip.y() - 5.0},
                                       {lip.x() + 2.2 * half, lip.y() - 5.0},
                                       {lip.x() + 2.2 * half, air}});
    }
    painter.setPen(pens.ink.pen(theme.ink, weight::thin));
    painter.drawLine(QLineF(lip.x() - half, lip.y(), lip.x() - half, foot));
    painter.drawLine(QLineF(lip.x() + half, lip.y(), lip.x() + half, foot));
    painter.setPen(pens.ink.pen(theme.ink, weight::bold));
    painter.drawLine(QLineF(lip.x() - half - 2.0, lip.y(), lip.x() + half + 2.0, lip.y()));
}

void paintPort(QPainter& painter, const Sheet& sheet, const Pens& pens, const report::VesselProfile& vessel,
               const report::PortProfile& port)
{
    const auto& theme = *pens.ink.theme;
    const QPointF at = sheet.at(port.along, port.level);
    const double bore = boreOf(sheet, port);
    switch (port.kind) {
    case plan::PortKind::lip:
        return paintLip(painter, sheet, pens, port, vessel.bottom);
    case plan::PortKind::inlet:
        painter.setPen(pens.ink.pen(theme.waterLine, weight::bold));
        painter.drawLine(at - QPointF(bore / 2.0, 0.0), at + QPointF(bore / 2.0, 0.0));
        if (port.ventLevel) {
            painter.setPen(pens.ink.pen(theme.ink, weight::thin));
            painter.setBrush(theme.paper);
            painter.drawEllipse(sheet.at(port.along, *port.ventLevel), 3.0, 3.0);
        }
        return;
    case plan::PortKind::sideOutlet:
        painter.setPen(pens.ink.pen(theme.ink, weight::thin));
        painter.setBrush(theme.shell);
        painter.drawEllipse(at, bore / 2.0, bore / 2.0);
        return;
    }
}

void paintCage(QPainter& painter, const Pens& pens, const QRectF& outside)
{
    constexpr int bars = 8;
    painter.setPen(pens.ink.pen(canvas::blend(pens.ink.theme->paper, pens.ink.theme->ink, 0.35), weight::hair));
    if (outside.width() < 8.0 * bars)
        return;
    for (int i = 1; i < bars; ++i) {
        const double x = outside.left() + outside.width() * i / bars;
        painter.drawLine(QPointF(x, outside.top()), QPointF(x, outside.bottom()));
    }
}
} // namespace

QPen penOf(LineKind kind, const Pens& pens)
{
    const auto& theme = *pens.ink.theme;
    const QColor water = pens.stale ? theme.stale : theme.waterLine;
    const auto grade = style::seriesStyle(theme, 3); // reddish purple
    switch (kind) {
    case LineKind::least:
        return pens.ink.pen(water, weight::medium);
    case LineKind::most:
        return pens.ink.dashed(pens.ink.pen(water, weight::medium), {7.0, 3.0});
    case LineKind::stopped:
        return pens.ink.dashed(pens.ink.pen(water, weight::medium), {1.5, 3.0});
    case LineKind::grade:
        return pens.ink.dashed(pens.ink.pen(pens.stale ? theme.stale : grade.line, weight::medium),
                               {12.0, 3.0, 2.0, 3.0});
    case LineKind::plainGrade:
        return pens.ink.dashed(pens.ink.pen(pens.stale ? theme.stale : grade.line, weight::thin), {3.0, 5.0});
    }
    return {};
}

void paintVessel(QPainter& painter, const Sheet& sheet, const Pens& pens, const report::VesselProfile& vessel)
{
    const auto& theme = *pens.ink.theme;
    const QRectF outside = sheet.rect(vessel.left, vessel.right, vessel.base, vessel.rim);
    const QRectF inside = insideOf(sheet, vessel);
    paintStand(painter, sheet, pens, vessel);
    painter.fillRect(outside, pens.lit(vessel.id) ? theme.selectionWash : theme.shell);
    paintContent(painter, sheet, pens, vessel, inside);
    if (vessel.caged)
        paintCage(painter, pens, outside);
    paintWaterLines(painter, sheet, pens, vessel, inside);
    const bool lit = pens.lit(vessel.id);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(pens.ink.pen(lit ? theme.selection : theme.ink, lit ? weight::bold : weight::medium));
    painter.drawPolyline(QPolygonF{outside.topLeft(), outside.bottomLeft(), outside.bottomRight(), outside.topRight()});
    painter.drawPolyline(QPolygonF{outside.topLeft(), inside.topLeft(), inside.bottomLeft(), inside.bottomRight(),
                                   inside.topRight(), outside.topRight()});
    for (const report::PortProfile& port : vessel.ports)
        paintPort(painter, sheet, pens, vessel, port);
}

void paintPipe(QPainter& painter, const Sheet& sheet, const Pens& pens, base::Id run, plan::Service service,
               units::Length outside, const QPolygonF& centre)
{
    const auto& theme = *pens.ink.theme;
    const double width = sheet.wide(outside);
    const QColor line = pens.lit(run) ? theme.selection : theme.waterLine;
    painter.setBrush(Qt::NoBrush);
    const bool gravity = service == plan::Service::gravity;
    const auto stroke = [&](QPen pen) {
        pen.setJoinStyle(Qt::RoundJoin);
        painter.setPen(pen);
        painter.drawPolyline(centre);
    };
    const QRectF extent = centre.boundingRect();
    if (extent.width() < 0.5 && extent.height() < 0.5) { // seen on end
        painter.setPen(pens.ink.pen(line, weight::thin));
        painter.setBrush(canvas::blend(theme.paper, theme.water, 0.55));
        painter.drawEllipse(centre.value(0), std::max(leastPipe, width / 2.0), std::max(leastPipe, width / 2.0));
        return;
    }
    if (width < doubleFrom) {
        const QPen pen = pens.ink.truePen(line, std::max(width * 0.8, leastPipe));
        return stroke(gravity ? pens.ink.dashed(pen, {9.0, 3.5}) : pen);
    }
    stroke(pens.ink.truePen(line, width));
    stroke(pens.ink.truePen(canvas::blend(theme.paper, theme.water, 0.55), width - 2.0 * weight::thin));
    const QPen middle = pens.ink.pen(line, weight::hair);
    stroke(gravity ? pens.ink.dashed(middle, {7.0, 4.0}) : pens.ink.dashed(middle, {16.0, 3.0, 2.0, 3.0}));
}

QRectF bodyOf(const Sheet& sheet, const report::PumpProfile& pump)
{
    const double half = std::max(leastPump / 2.0, pumpHalf * sheet.scale);
    const QPointF foot = sheet.at(pump.along, pump.standsAt);
    const double top = std::min(sheet.y(pump.outlet), foot.y() - 2.0 * half);
    return {foot.x() - half, top, 2.0 * half, foot.y() - top};
}

void paintPump(QPainter& painter, const Sheet& sheet, const Pens& pens, const report::PumpProfile& pump)
{
    const auto& theme = *pens.ink.theme;
    const QRectF body = bodyOf(sheet, pump);
    const bool lit = pens.lit(pump.id);
    painter.setPen(pens.ink.pen(lit ? theme.selection : theme.ink, lit ? weight::bold : weight::thin));
    painter.setBrush(theme.shell);
    painter.drawRect(body);
    const double size = std::min(body.width() - 3.0, 22.0);
    canvas::paintPump(painter, pens.ink, {body.center().x(), body.bottom() - size / 2.0 - 2.0}, -90.0, size,
                      pump.running);
}

void paintGround(QPainter& painter, const Pens& pens, QPointF from, QPointF to)
{
    const auto& theme = *pens.ink.theme;
    painter.setPen(pens.ink.pen(theme.ink, weight::medium));
    painter.drawLine(from, to);
    painter.setPen(pens.ink.pen(theme.quiet, weight::hair));
    constexpr double apart = 12.0, deep = 6.0;
    const double length = to.x() - from.x();
    const int count = static_cast<int>(length / apart);
    std::vector<QLineF> strokes;
    for (int i = 1; i <= count; ++i) {
        const double share = i * apart / length;
        const QPointF at = from + share * (to - from);
        strokes.emplace_back(at, at + QPointF(-deep, deep));
    }
    painter.drawLines(strokes.data(), static_cast<int>(strokes.size()));
}

} // namespace sumpwright::ui::section

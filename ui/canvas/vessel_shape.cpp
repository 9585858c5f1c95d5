#include "ui/canvas/vessel_shape.hpp"

#include <QLineF>

#include <algorithm>
#include <cmath>

#include "ui/canvas/scene_point.hpp"

namespace sumpwright::ui::canvas
{

namespace
{
constexpr double cagedCorner = 60.0; // own inference: the rounded corner of a caged tank, seen from above
constexpr double mouldedCorner = 25.0;

double cornerOf(const plan::Vessel& vessel)
{
    if (std::holds_alternative<plan::CagedShape>(vessel.shape))
        return cagedCorner;
    const bool moulded = vessel.kind == plan::VesselKind::sump || vessel.kind == plan::VesselKind::fishTank ||
                         vessel.kind == plan::VesselKind::settler;
    return moulded ? mouldedCorner : 0.0;
}

QPainterPath pathInset(const plan::Vessel& vessel, double by)
{
    QPainterPath path;
    const QRectF rect = outsideRect(vessel).adjusted(by, by, -by, -by);
    if (rect.width() <= 0.0 || rect.height() <= 0.0)
        return path;
    if (std::holds_alternative<plan::RoundShape>(vessel.shape))
        path.addEllipse(rect);
    else if (const double corner = std::min({cornerOf(vessel), rect.width() / 4.0, rect.height() / 4.0}) - by;
             corner > 0.0)
        path.addRoundedRect(rect, corner, corner);
    else
        path.addRect(rect);
    return path;
}
} // namespace

QRectF outsideRect(const plan::Vessel& vessel)
{
    const auto frame = plan::frameOf(vessel.shape);
    const double length = toScene(frame.length);
    const double width = toScene(frame.width);
    return {-length / 2.0, -width / 2.0, length, width};
}

QPainterPath outsidePath(const plan::Vessel& vessel) { return pathInset(vessel, 0.0); }

QPainterPath insidePath(const plan::Vessel& vessel) { return pathInset(vessel, toScene(vessel.wallThickness)); }

std::vector<QPointF> legPlaces(const plan::Vessel& vessel)
{
    std::vector<QPointF> places;
    if (!vessel.stand || vessel.stand->kind == plan::StandKind::flat || vessel.stand->legCount < 1)
        return places;
    const double pad = toScene(vessel.stand->padSide);
    QRectF rect = outsideRect(vessel).adjusted(pad / 2.0, pad / 2.0, -pad / 2.0, -pad / 2.0);
    if (std::holds_alternative<plan::RoundShape>(vessel.shape)) {
        const double radius = rect.width() / 2.0;
        for (int i = 0; i < vessel.stand->legCount; ++i) {
            const double angle = 2.0 * units::pi * (i + 0.5) / vessel.stand->legCount;
            places.emplace_back(radius * std::cos(angle), radius * std::sin(angle));
        }
        return places;
    }
    const int columns = std::max(1, (vessel.stand->legCount + 1) / 2);
    const bool along = rect.width() >= rect.height();
    for (int i = 0; i < vessel.stand->legCount; ++i) {
        const double share = columns > 1 ? static_cast<double>(i / 2) / (columns - 1) : 0.5;
        const double side = i % 2;
        places.emplace_back(rect.left() + rect.width() * (along ? share : side),
                            rect.top() + rect.height() * (along ? side : share));
    }
    return places;
}

double outwardTurn(const plan::Vessel& vessel, QPointF offset)
{
    if (std::holds_alternative<plan::RoundShape>(vessel.shape))
        return -QLineF(QPointF(), offset).angle();
    const QRectF rect = outsideRect(vessel);
    const double toSide = rect.width() / 2.0 - std::abs(offset.x());
    const double toEnd = rect.height() / 2.0 - std::abs(offset.y());
    if (toSide < toEnd)
        return offset.x() < 0.0 ? 180.0 : 0.0;
    return offset.y() < 0.0 ? -90.0 : 90.0;
}

} // namespace sumpwright::ui::canvas

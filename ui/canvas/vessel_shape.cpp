#include "ui/canvas/vessel_shape.hpp"

#include <QLineF>

#include <algorithm>
#include <cmath>

#include "core/plan/legs.hpp"
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
    for (const plan::Point& offset : plan::legOffsets(vessel))
        places.push_back(toScene(offset));
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

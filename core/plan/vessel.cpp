#include "core/plan/vessel.hpp"

#include <algorithm>
#include <cmath>

namespace sumpwright::plan
{

namespace
{

constexpr int roundSides = 48;

units::Area areaWithin(const Shape& shape, units::Length inset)
{
    const RectangleShape frame = frameOf(shape);
    const units::Length length = frame.length - 2.0 * inset;
    const units::Length width = frame.width - 2.0 * inset;
    const bool round = std::holds_alternative<RoundShape>(shape);
    return (round ? units::pi / 4.0 : 1.0) * (length * width);
}

} // namespace

RectangleShape frameOf(const Shape& shape)
{
    if (const auto* round = std::get_if<RoundShape>(&shape))
        return {round->diameter, round->diameter};
    if (const auto* rectangle = std::get_if<RectangleShape>(&shape))
        return *rectangle;
    return {units::metres(1.2), units::metres(1.0)};
}

units::Area outsideArea(const Vessel& vessel) { return areaWithin(vessel.shape, units::metres(0.0)); }

units::Area insideArea(const Vessel& vessel) { return areaWithin(vessel.shape, vessel.wallThickness); }

units::Elevation rimLevel(const Vessel& vessel) { return vessel.baseLevel + vessel.wallHeight; }

units::Elevation insideBottom(const Vessel& vessel) { return vessel.baseLevel + vessel.wallThickness; }

Point placeOf(const Vessel& vessel, const Port& port) { return vessel.centre + turned(port.offset, vessel.turn); }

const Port* findPort(const Vessel& vessel, base::Id port)
{
    for (const Port& candidate : vessel.ports)
        if (candidate.id == port)
            return &candidate;
    return nullptr;
}

const Port* mainLip(const Vessel& vessel)
{
    const Port* lowest = nullptr;
    for (const Port& port : vessel.ports)
        if (port.kind == PortKind::lip && (!lowest || port.level < lowest->level))
            lowest = &port;
    return lowest;
}

std::vector<Point> outlineOf(const Vessel& vessel)
{
    const RectangleShape frame = frameOf(vessel.shape);
    std::vector<Point> corners;
    if (std::holds_alternative<RoundShape>(vessel.shape)) {
        for (int side = 0; side < roundSides; ++side) {
            const units::Angle angle = units::radians(2.0 * units::pi * side / roundSides);
            corners.push_back(turned({frame.length / 2.0, units::metres(0.0)}, angle));
        }
    } else {
        const units::Length x = frame.length / 2.0;
        const units::Length y = frame.width / 2.0;
        corners = {{-x, -y}, {x, -y}, {x, y}, {-x, y}};
    }
    for (Point& corner : corners)
        corner = vessel.centre + turned(corner, vessel.turn);
    return corners;
}

} // namespace sumpwright::plan

#include "core/plan/floor.hpp"

#include <cmath>

namespace sumpwright::plan
{

units::Elevation levelAt(const Floor& floor, Point place)
{
    const Point along = turned(place, -floor.fallDirection);
    const double drop = units::inMetresPerMetre(floor.fall) * units::inMetres(along.x);
    return units::elevationMetres(units::inMetres(floor.level) - drop);
}

units::Area areaOf(const Floor& floor)
{
    units::Area twice = units::squareMetres(0.0);
    const auto& corners = floor.outline;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const Point& a = corners[i];
        const Point& b = corners[(i + 1) % corners.size()];
        twice += a.x * b.y - b.x * a.y;
    }
    return units::squareMetres(std::abs(units::inSquareMetres(twice)) / 2.0);
}

bool inside(const Floor& floor, Point place)
{
    bool within = false;
    const auto& corners = floor.outline;
    for (std::size_t i = 0, j = corners.size() - 1; i < corners.size(); j = i++) {
        const Point& a = corners[i];
        const Point& b = corners[j];
        if ((a.y > place.y) == (b.y > place.y))
            continue;
        const double share = (place.y - a.y) / (b.y - a.y);
        if (place.x < a.x + share * (b.x - a.x))
            within = !within;
    }
    return within;
}

} // namespace sumpwright::plan

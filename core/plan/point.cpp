#include "core/plan/point.hpp"

#include <cmath>

namespace sumpwright::plan
{

units::Length distanceBetween(Point a, Point b)
{
    return units::metres(std::hypot(units::inMetres(b.x - a.x), units::inMetres(b.y - a.y)));
}

Point turned(Point offset, units::Angle by)
{
    const double cosine = std::cos(units::inRadians(by));
    const double sine = std::sin(units::inRadians(by));
    return {cosine * offset.x - sine * offset.y, sine * offset.x + cosine * offset.y};
}

Point turnedAbout(Point place, Point centre, units::Angle by) { return centre + turned(place - centre, by); }

units::Angle bearingOf(Point offset)
{
    const double x = units::inMetres(offset.x);
    const double y = units::inMetres(offset.y);
    if (x == 0.0 && y == 0.0)
        return units::radians(0.0);
    const double bearing = std::atan2(y, x);
    return units::radians(bearing <= -units::pi ? units::pi : bearing);
}

} // namespace sumpwright::plan

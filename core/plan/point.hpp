// Point: a place or an offset in plan view; x right, y up the sheet, metres; angles counter-clockwise from +x.
#pragma once

#include "core/units/measures.hpp"

namespace sumpwright::plan
{

struct Point {
    units::Length x;
    units::Length y;

    friend bool operator==(const Point&, const Point&) = default;
};

inline Point operator+(Point a, Point b) { return {a.x + b.x, a.y + b.y}; }
inline Point operator-(Point a, Point b) { return {a.x - b.x, a.y - b.y}; }
units::Length distanceBetween(Point a, Point b);
Point turned(Point offset, units::Angle by); // about the origin, counter-clockwise
Point turnedAbout(Point place, Point centre, units::Angle by);
units::Angle bearingOf(Point offset); // (-pi, pi]; 0 for a zero offset

} // namespace sumpwright::plan

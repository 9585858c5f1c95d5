#include "core/report/cut.hpp"

#include <algorithm>

namespace sumpwright::report
{

namespace
{

constexpr double near = 1e-6; // metres

double m(units::Length length) { return units::inMetres(length); }

double cross(plan::Point a, plan::Point b) { return m(a.x) * m(b.y) - m(a.y) * m(b.x); }

// The outline runs counter-clockwise and is convex; its very edge counts as outside.
bool within(const std::vector<plan::Point>& outline, plan::Point place)
{
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const plan::Point side = outline[(i + 1) % outline.size()] - outline[i];
        if (cross(side, place - outline[i]) <= near * m(plan::distanceBetween({}, side)))
            return false;
    }
    return !outline.empty();
}

} // namespace

units::Length reachAlong(const std::vector<plan::Point>& outline, plan::Point from, plan::Point direction)
{
    const double size = m(plan::distanceBetween({}, direction));
    if (size <= near || !within(outline, from))
        return {};
    double reach = 1e9;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const plan::Point side = outline[(i + 1) % outline.size()] - outline[i];
        const double towards = -cross(side, direction); // above 0: the way goes out over this side
        if (towards > 0.0)
            reach = std::min(reach, cross(side, from - outline[i]) / towards);
    }
    return units::metres(reach * size);
}

units::Length reachAlongLine(const std::vector<plan::Point>& outline, const std::vector<plan::Point>& line,
                             plan::Point otherwise)
{
    units::Length length;
    plan::Point direction = otherwise;
    for (std::size_t i = 1; i < line.size(); ++i) {
        const plan::Point leg = line[i] - line[i - 1];
        const units::Length whole = plan::distanceBetween({}, leg);
        if (m(whole) <= near)
            continue;
        direction = leg;
        if (!within(outline, line[i]))
            return length + reachAlong(outline, line[i - 1], leg);
        length += whole;
    }
    return line.empty() ? length : length + reachAlong(outline, line.back(), direction);
}

} // namespace sumpwright::report

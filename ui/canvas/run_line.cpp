#include "ui/canvas/run_line.hpp"

#include <QLineF>

#include <algorithm>
#include <cmath>

#include "ui/canvas/scene_point.hpp"

namespace sumpwright::ui::canvas
{

namespace
{
constexpr double sameplace = 0.5; // scene millimetres: vertices closer in plan make a vertical leg

// The leg a distance lies on: index of its first corner.
std::size_t legAt(const RunLine& line, double distance)
{
    for (std::size_t i = 1; i + 1 < line.corners.size(); ++i)
        if (distance < line.corners[i].distance)
            return i - 1;
    return line.corners.size() < 2 ? 0 : line.corners.size() - 2;
}

double share(const Corner& a, const Corner& b, double distance)
{
    const double length = b.distance - a.distance;
    return length > 0.0 ? std::clamp((distance - a.distance) / length, 0.0, 1.0) : 0.0;
}
} // namespace

QPointF RunLine::at(double distance) const
{
    if (corners.empty())
        return {};
    if (corners.size() == 1)
        return corners.front().at;
    const auto leg = legAt(*this, distance);
    const auto& a = corners[leg];
    const auto& b = corners[leg + 1];
    return a.at + (b.at - a.at) * share(a, b, distance);
}

double RunLine::turnAt(double distance) const
{
    if (corners.size() < 2)
        return 0.0;
    const auto leg = legAt(*this, distance);
    return -QLineF(corners[leg].at, corners[leg + 1].at).angle();
}

units::Elevation RunLine::levelAt(double distance) const
{
    if (corners.empty())
        return units::elevationMetres(0.0);
    if (corners.size() == 1)
        return corners.front().after;
    const auto leg = legAt(*this, distance);
    const auto& a = corners[leg];
    const auto& b = corners[leg + 1];
    const double from = units::inMetres(a.after);
    return units::elevationMetres(from + (units::inMetres(b.before) - from) * share(a, b, distance));
}

RunLine runLineOf(const plan::Run& run, units::Length outsideDiameter)
{
    RunLine line;
    line.width = toScene(outsideDiameter);
    for (const auto& vertex : run.vertices) {
        const QPointF place = toScene(vertex.at);
        if (!line.corners.empty()) {
            auto& last = line.corners.back();
            const double step = QLineF(last.at, place).length();
            if (step < sameplace) {
                last.after = vertex.level;
                continue;
            }
            line.corners.push_back({place, last.distance + step, vertex.level, vertex.level});
        } else {
            line.corners.push_back({place, 0.0, vertex.level, vertex.level});
        }
    }
    for (const auto& corner : line.corners) {
        const QRectF spot(corner.at - QPointF(0.5, 0.5), QSizeF(1.0, 1.0));
        line.bounds = line.bounds.isNull() ? spot : line.bounds.united(spot);
    }
    const double half = line.width / 2.0;
    line.bounds.adjust(-half, -half, half, half);
    return line;
}

double distanceAtStation(const plan::Run& run, const RunLine& line, double station)
{
    double total = 0.0;
    const auto legLength = [&run](std::size_t i) {
        const double flat = QLineF(toScene(run.vertices[i].at), toScene(run.vertices[i + 1].at)).length();
        return std::hypot(flat, units::inMetres(run.vertices[i + 1].level - run.vertices[i].level) * 1000.0);
    };
    for (std::size_t i = 0; i + 1 < run.vertices.size(); ++i)
        total += legLength(i);
    double left = total * std::clamp(station, 0.0, 1.0);
    double distance = 0.0;
    for (std::size_t i = 0; i + 1 < run.vertices.size(); ++i) {
        const double flat = QLineF(toScene(run.vertices[i].at), toScene(run.vertices[i + 1].at)).length();
        const double length = legLength(i);
        if (left <= length)
            return distance + (length > 0.0 && flat >= sameplace ? flat * left / length : 0.0);
        left -= length;
        distance += flat >= sameplace ? flat : 0.0;
    }
    return line.length();
}

QPainterPath pathOf(const RunLine& line, double from, double to, double radius)
{
    QPainterPath path(line.at(from));
    for (std::size_t i = 1; i + 1 < line.corners.size(); ++i) {
        const auto& corner = line.corners[i];
        if (corner.distance <= from || corner.distance >= to)
            continue;
        const double before = std::min(corner.distance - from, (corner.distance - line.corners[i - 1].distance) / 2.0);
        const double after = std::min(to - corner.distance, (line.corners[i + 1].distance - corner.distance) / 2.0);
        const double cut = std::min({radius, before, after});
        path.lineTo(line.at(corner.distance - cut));
        path.quadTo(corner.at, line.at(corner.distance + cut));
    }
    path.lineTo(line.at(to));
    return path;
}

} // namespace sumpwright::ui::canvas

#include "core/plan/run.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/base/ensure.hpp"

namespace sumpwright::plan
{

namespace
{

using Step = std::array<double, 3>;

Step stepBetween(const Vertex& a, const Vertex& b)
{
    return {units::inMetres(b.at.x - a.at.x), units::inMetres(b.at.y - a.at.y),
            units::inMetres(b.level) - units::inMetres(a.level)};
}

double lengthOf(const Step& step) { return std::hypot(step[0], step[1], step[2]); }

// By the cross product, which stays exact for straight-on and right angles alike.
double angleBetween(const Step& a, const Step& b)
{
    const Step cross{a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    const double dot = a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    return std::atan2(lengthOf(cross), dot);
}

} // namespace

units::Length lengthOf(const Run& run)
{
    double metres = 0.0;
    for (std::size_t i = 1; i < run.vertices.size(); ++i)
        metres += lengthOf(stepBetween(run.vertices[i - 1], run.vertices[i]));
    return units::metres(metres);
}

Vertex placeAlong(const Run& run, double station)
{
    base::ensure(!run.vertices.empty(), "a run has vertices");
    double left = std::clamp(station, 0.0, 1.0) * units::inMetres(lengthOf(run));
    for (std::size_t i = 1; i < run.vertices.size(); ++i) {
        const Vertex& a = run.vertices[i - 1];
        const Step step = stepBetween(a, run.vertices[i]);
        const double leg = lengthOf(step);
        if (left <= leg && leg > 0.0) {
            const double share = left / leg;
            Vertex place;
            place.at = {a.at.x + units::metres(share * step[0]), a.at.y + units::metres(share * step[1])};
            place.level = a.level + units::metres(share * step[2]);
            return place;
        }
        left -= leg;
    }
    Vertex end;
    end.at = run.vertices.back().at;
    end.level = run.vertices.back().level;
    return end;
}

std::vector<Bend> bendsOf(const Run& run)
{
    constexpr double leastTurn = units::pi / 180.0;
    std::vector<Bend> bends;
    for (std::size_t i = 1; i + 1 < run.vertices.size(); ++i) {
        const Step in = stepBetween(run.vertices[i - 1], run.vertices[i]);
        const Step out = stepBetween(run.vertices[i], run.vertices[i + 1]);
        if (lengthOf(in) == 0.0 || lengthOf(out) == 0.0)
            continue;
        const double angle = angleBetween(in, out);
        if (angle >= leastTurn)
            bends.push_back({i, units::radians(angle)});
    }
    return bends;
}

} // namespace sumpwright::plan

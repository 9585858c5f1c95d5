#include "core/space/outline.hpp"

#include <algorithm>
#include <cmath>

namespace sumpwright::space
{
namespace
{

using plan::Point;

double crossOf(Point a, Point b)
{
    return units::inMetres(a.x) * units::inMetres(b.y) - units::inMetres(a.y) * units::inMetres(b.x);
}

double dotOf(Point a, Point b)
{
    return units::inMetres(a.x) * units::inMetres(b.x) + units::inMetres(a.y) * units::inMetres(b.y);
}

void box(Outline& outline)
{
    outline.low = outline.high = outline.corners.front();
    for (const Point& corner : outline.corners) {
        outline.low = {std::min(outline.low.x, corner.x), std::min(outline.low.y, corner.y)};
        outline.high = {std::max(outline.high.x, corner.x), std::max(outline.high.y, corner.y)};
    }
}

double toSegment(Point place, Point a, Point b)
{
    const Point along = b - a, away = place - a;
    const double length2 = dotOf(along, along);
    const double share = length2 > 0.0 ? std::clamp(dotOf(away, along) / length2, 0.0, 1.0) : 0.0;
    return std::hypot(units::inMetres(away.x) - share * units::inMetres(along.x),
                      units::inMetres(away.y) - share * units::inMetres(along.y));
}

double toEdges(const Outline& outline, Point place)
{
    double least = 1e300;
    for (std::size_t i = 0; i < outline.corners.size(); ++i)
        least =
            std::min(least, toSegment(place, outline.corners[i], outline.corners[(i + 1) % outline.corners.size()]));
    return least;
}

// How deep two convex outlines lie in each other along the edge normals of `a`; negative: a clear gap.
double depthAlong(const Outline& a, const Outline& b)
{
    double least = 1e300;
    for (std::size_t i = 0; i < a.corners.size(); ++i) {
        const Point edge = a.corners[(i + 1) % a.corners.size()] - a.corners[i];
        const double length = std::sqrt(dotOf(edge, edge));
        if (length == 0.0)
            continue;
        double deepest = -1e300;
        for (const Point& corner : b.corners)
            deepest = std::max(deepest, crossOf(edge, corner - a.corners[i]) / length);
        least = std::min(least, deepest);
    }
    return least;
}

double boxGap(const Outline& a, const Outline& b)
{
    const double dx = std::max({units::inMetres(a.low.x - b.high.x), units::inMetres(b.low.x - a.high.x), 0.0});
    const double dy = std::max({units::inMetres(a.low.y - b.high.y), units::inMetres(b.low.y - a.high.y), 0.0});
    return std::hypot(dx, dy);
}

} // namespace

Outline footprintOf(const plan::Vessel& vessel)
{
    Outline outline{vessel.id, plan::outlineOf(vessel), {}, {}, vessel.baseLevel, plan::rimLevel(vessel)};
    box(outline);
    return outline;
}

Outline footprintOf(const plan::Fixture& fixture)
{
    Outline outline{fixture.id, {fixture.from}, {}, {}, fixture.level, fixture.level + fixture.height};
    const units::Length half = fixture.size / 2.0;
    if (fixture.kind == plan::FixtureKind::post) {
        const Point at = fixture.from;
        outline.corners = {at + Point{-half, -half}, at + Point{half, -half}, at + Point{half, half},
                           at + Point{-half, half}};
    } else if (fixture.kind != plan::FixtureKind::powerPoint) {
        const Point along = fixture.to - fixture.from;
        const double length = std::sqrt(dotOf(along, along));
        const Point side = length > 0.0 ? Point{-along.y * (units::inMetres(half) / length),
                                                along.x * (units::inMetres(half) / length)}
                                        : Point{};
        outline.corners = {fixture.from - side, fixture.to - side, fixture.to + side, fixture.from + side};
    }
    box(outline);
    return outline;
}

bool contains(const Outline& outline, Point place)
{
    if (place.x < outline.low.x || place.x > outline.high.x || place.y < outline.low.y || place.y > outline.high.y)
        return false;
    for (std::size_t i = 0; i < outline.corners.size(); ++i) {
        const Point a = outline.corners[i], b = outline.corners[(i + 1) % outline.corners.size()];
        if (crossOf(b - a, place - a) < 0.0)
            return false;
    }
    return true;
}

bool overlap(const Outline& a, const Outline& b)
{
    constexpr double least = 0.001;
    return boxGap(a, b) == 0.0 && depthAlong(a, b) > least && depthAlong(b, a) > least;
}

std::optional<units::Length> gapBetween(const Outline& a, const Outline& b, units::Length within)
{
    if (boxGap(a, b) > units::inMetres(within))
        return std::nullopt;
    if (depthAlong(a, b) >= 0.0 && depthAlong(b, a) >= 0.0)
        return units::metres(0.0);
    double least = 1e300;
    for (const Point& corner : a.corners)
        least = std::min(least, toEdges(b, corner));
    for (const Point& corner : b.corners)
        least = std::min(least, toEdges(a, corner));
    return units::metres(least);
}

units::Length gapTo(const Outline& outline, Point place)
{
    return contains(outline, place) && outline.corners.size() > 2 ? units::metres(0.0)
                                                                  : units::metres(toEdges(outline, place));
}

} // namespace sumpwright::space

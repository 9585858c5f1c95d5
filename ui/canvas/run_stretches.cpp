// Where a run is broken by another that crosses above, and where it is hidden below a vessel.
#include <QLineF>

#include <algorithm>
#include <cmath>

#include "ui/canvas/run_line.hpp"
#include "ui/canvas/scene_point.hpp"

namespace sumpwright::ui::canvas
{

namespace
{
QLineF leg(const RunLine& line, std::size_t i) { return {line.corners[i].at, line.corners[i + 1].at}; }

bool boxesMeet(const QLineF& a, const QLineF& b)
{
    return std::max(a.x1(), a.x2()) >= std::min(b.x1(), b.x2()) &&
           std::max(b.x1(), b.x2()) >= std::min(a.x1(), a.x2()) &&
           std::max(a.y1(), a.y2()) >= std::min(b.y1(), b.y2()) && std::max(b.y1(), b.y2()) >= std::min(a.y1(), a.y2());
}

double cross(QPointF a, QPointF b) { return a.x() * b.y() - a.y() * b.x(); }

// Parts of a leg inside a polygon, as shares of the leg in rising order.
std::vector<double> cutsBy(const QLineF& way, const QPolygonF& outline)
{
    std::vector<double> cuts{0.0, 1.0};
    for (int i = 0; i < outline.size(); ++i) {
        const QLineF edge(outline[i], outline[(i + 1) % outline.size()]);
        QPointF meet;
        if (way.intersects(edge, &meet) == QLineF::BoundedIntersection)
            cuts.push_back(QLineF(way.p1(), meet).length() / std::max(way.length(), 1e-9));
    }
    std::sort(cuts.begin(), cuts.end());
    return cuts;
}
} // namespace

std::vector<Crossing> crossingsOf(const RunLine& here, const RunLine& there)
{
    std::vector<Crossing> found;
    if (!here.bounds.intersects(there.bounds))
        return found;
    for (std::size_t i = 0; i + 1 < here.corners.size(); ++i) {
        const QLineF a = leg(here, i);
        for (std::size_t j = 0; j + 1 < there.corners.size(); ++j) {
            const QLineF b = leg(there, j);
            const QPointF da = a.p2() - a.p1();
            const QPointF db = b.p2() - b.p1();
            const double area = cross(da, db);
            const double sine = std::abs(area) / std::max(a.length() * b.length(), 1e-9);
            if (!boxesMeet(a, b) || sine < 0.05)
                continue;
            const double onHere = cross(b.p1() - a.p1(), db) / area;
            const double onThere = cross(b.p1() - a.p1(), da) / area;
            if (onHere < 0.0 || onHere > 1.0 || onThere < 0.0 || onThere > 1.0)
                continue;
            found.push_back({here.corners[i].distance + onHere * a.length(),
                             there.corners[j].distance + onThere * b.length(), sine});
        }
    }
    return found;
}

std::vector<Break> breaksUnder(const RunLine& line, const RunLine& other)
{
    std::vector<Break> breaks;
    for (const auto& crossing : crossingsOf(line, other)) {
        const double above = units::inMetres(other.levelAt(crossing.there) - line.levelAt(crossing.here)) * 1000.0;
        if (above >= (line.width + other.width) / 2.0) // otherwise not clear above: the two may even meet
            breaks.push_back({crossing.here, other.width, crossing.sine});
    }
    return breaks;
}

std::vector<Stretch> hiddenUnder(const RunLine& line, const plan::Vessel& vessel)
{
    std::vector<Stretch> hidden;
    const QPolygonF outline = toScene(plan::outlineOf(vessel));
    if (!outline.boundingRect().intersects(line.bounds))
        return hidden;
    for (std::size_t i = 0; i + 1 < line.corners.size(); ++i) {
        const QLineF way = leg(line, i);
        const auto cuts = cutsBy(way, outline);
        for (std::size_t k = 0; k + 1 < cuts.size(); ++k) {
            const double middle = (cuts[k] + cuts[k + 1]) / 2.0;
            const double distance = line.corners[i].distance + middle * way.length();
            const bool below = line.levelAt(distance) < vessel.baseLevel;
            if (cuts[k + 1] - cuts[k] > 1e-6 && below && outline.containsPoint(way.pointAt(middle), Qt::OddEvenFill))
                hidden.push_back({line.corners[i].distance + cuts[k] * way.length(),
                                  line.corners[i].distance + cuts[k + 1] * way.length(), StretchKind::hidden});
        }
    }
    return hidden;
}

std::vector<Stretch> stretchesOf(double length, const std::vector<Break>& breaks, const std::vector<Stretch>& hidden,
                                 double air)
{
    std::vector<Stretch> gaps;
    for (const auto& each : breaks) {
        const double half = (each.width / 2.0 + air) / std::max(each.sine, 0.5);
        gaps.push_back({each.centre - half, each.centre + half, StretchKind::open});
    }
    std::vector<double> cuts{0.0, length};
    const auto addCuts = [&](const std::vector<Stretch>& group) {
        for (const auto& stretch : group)
            for (const double cut : {stretch.from, stretch.to})
                if (cut > 0.0 && cut < length)
                    cuts.push_back(cut);
    };
    addCuts(gaps);
    addCuts(hidden);
    std::sort(cuts.begin(), cuts.end());
    const auto within = [](const std::vector<Stretch>& group, double place) {
        return std::any_of(group.begin(), group.end(),
                           [place](const Stretch& s) { return place > s.from && place < s.to; });
    };
    std::vector<Stretch> drawn;
    for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
        const double middle = (cuts[i] + cuts[i + 1]) / 2.0;
        if (cuts[i + 1] - cuts[i] < 1e-6 || within(gaps, middle))
            continue;
        const auto kind = within(hidden, middle) ? StretchKind::hidden : StretchKind::open;
        if (!drawn.empty() && drawn.back().kind == kind && drawn.back().to == cuts[i])
            drawn.back().to = cuts[i + 1];
        else
            drawn.push_back({cuts[i], cuts[i + 1], kind});
    }
    return drawn;
}

} // namespace sumpwright::ui::canvas

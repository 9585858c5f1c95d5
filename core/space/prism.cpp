#include "core/space/prism.hpp"

#include "core/space/vec.hpp"

namespace sumpwright::space
{
namespace
{

constexpr double leastPart = 1e-4; // m

// Keeps the part of a leg where `start + share * slope` is not above 0.
class Clip
{
public:
    void keepBelowZero(double start, double slope, Face face)
    {
        if (slope == 0.0) {
            m_empty = m_empty || start > 0.0;
        } else if (const double share = -start / slope; slope > 0.0) {
            if (share < m_to) {
                m_to = share;
                m_out = face;
            }
        } else if (share > m_from) {
            m_from = share;
            m_in = face;
        }
    }
    std::optional<Inside> part(double length) const
    {
        if (m_empty || (m_to - m_from) * length < leastPart)
            return std::nullopt;
        return Inside(m_from, m_to, m_in, m_out);
    }

private:
    double m_from = 0.0, m_to = 1.0;
    Face m_in = Face::none, m_out = Face::none;
    bool m_empty = false;
};

} // namespace

Prism::Prism(const Outline& outline, units::Length around) : Prism(outline, outline.base, outline.top, around) {}

Prism::Prism(const Outline& outline, units::Elevation bottom, units::Elevation top, units::Length around)
    : m_outline(&outline), m_bottom(units::inMetres(bottom - around)), m_top(units::inMetres(top + around)),
      m_around(units::inMetres(around))
{
}

std::optional<Inside> Prism::partOf(const Spot& a, const Spot& b) const
{
    const Vec start(a), along = Vec(b) - start;
    Clip clip;
    clip.keepBelowZero(m_bottom - start.z(), -along.z(), Face::bottom);
    clip.keepBelowZero(start.z() - m_top, along.z(), Face::top);
    const auto& corners = m_outline->corners;
    std::size_t edges = 0;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const plan::Point &p = corners[i], &q = corners[(i + 1) % corners.size()];
        const double ex = units::inMetres(q.x - p.x), ey = units::inMetres(q.y - p.y), edge = std::hypot(ex, ey);
        if (edge == 0.0)
            continue;
        ++edges;
        // Distance to the right of an edge, which is outside: the corners run counter-clockwise.
        const auto outside = [&](double x, double y) { return (ey * x - ex * y) / edge; };
        clip.keepBelowZero(outside(start.x() - units::inMetres(p.x), start.y() - units::inMetres(p.y)) - m_around,
                           outside(along.x(), along.y()), Face::side);
    }
    return edges < 3 ? std::nullopt : clip.part(along.length());
}

Spot placeOn(const Spot& a, const Spot& b, double share)
{
    const Vec start(a);
    return spotOf(start + (Vec(b) - start) * share);
}

Box boxOf(const PipeBody& body)
{
    Box box{body.spots.front().at, body.spots.front().at};
    for (const Spot& spot : body.spots) {
        box.low = {std::min(box.low.x, spot.at.x), std::min(box.low.y, spot.at.y)};
        box.high = {std::max(box.high.x, spot.at.x), std::max(box.high.y, spot.at.y)};
    }
    return box;
}

bool meet(const Box& box, const Outline& outline, units::Length around)
{
    return box.low.x <= outline.high.x + around && box.high.x >= outline.low.x - around &&
           box.low.y <= outline.high.y + around && box.high.y >= outline.low.y - around;
}

} // namespace sumpwright::space

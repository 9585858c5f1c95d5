#include "ui/canvas/label_placement.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numeric>

namespace sumpwright::ui::canvas
{

namespace
{
constexpr double air = 2.0;  // pixels around a label
constexpr int lineCost = 12; // a spot further down the list costs 1

bool meets(const QRectF& rect, const QLineF& line)
{
    // Liang-Barsky: is any part of the line inside the rectangle?
    double from = 0.0;
    double to = 1.0;
    const auto cut = [&](double direction, double room) {
        if (direction == 0.0)
            return room >= 0.0;
        const double at = room / direction;
        if (direction < 0.0)
            from = std::max(from, at);
        else
            to = std::min(to, at);
        return from <= to;
    };
    return cut(-line.dx(), line.x1() - rect.left()) && cut(line.dx(), rect.right() - line.x1()) &&
           cut(-line.dy(), line.y1() - rect.top()) && cut(line.dy(), rect.bottom() - line.y1());
}
} // namespace

template <class Visit> void Clutter::visitCells(const QRectF& rect, Visit&& visit) const
{
    const auto index = [this](double v) { return static_cast<std::int64_t>(std::floor(v / m_cell)); };
    for (auto x = index(rect.left()); x <= index(rect.right()); ++x)
        for (auto y = index(rect.top()); y <= index(rect.bottom()); ++y)
            visit(x * 1'000'003 + y,
                  QRectF(static_cast<double>(x) * m_cell, static_cast<double>(y) * m_cell, m_cell, m_cell));
}

void Clutter::addLine(const QLineF& line)
{
    m_lines.push_back(line);
    visitCells(QRectF(line.p1(), line.p2()).normalized(), [&](Cell cell, const QRectF& square) {
        if (meets(square, line))
            m_linesByCell[cell].push_back(m_lines.size() - 1);
    });
}

void Clutter::addLabel(const QRectF& rect)
{
    m_labels.push_back(rect);
    visitCells(rect, [&](Cell cell, const QRectF&) { m_labelsByCell[cell].push_back(m_labels.size() - 1); });
}

int Clutter::linesIn(const QRectF& rect) const
{
    std::vector<std::size_t> met;
    visitCells(rect, [&](Cell cell, const QRectF&) {
        const auto found = m_linesByCell.find(cell);
        if (found == m_linesByCell.end())
            return;
        for (const auto line : found->second)
            if (meets(rect, m_lines[line]))
                met.push_back(line);
    });
    std::sort(met.begin(), met.end());
    return static_cast<int>(std::unique(met.begin(), met.end()) - met.begin());
}

bool Clutter::meetsLabel(const QRectF& rect) const
{
    bool met = false;
    visitCells(rect, [&](Cell cell, const QRectF&) {
        const auto found = m_labelsByCell.find(cell);
        if (!met && found != m_labelsByCell.end())
            met = std::any_of(found->second.begin(), found->second.end(),
                              [&](std::size_t label) { return m_labels[label].intersects(rect); });
    });
    return met;
}

QRectF roomOf(const LabelText& text, const LabelSpot& spot, double pixel)
{
    const bool upright = std::abs(std::remainder(spot.turn, 180.0)) > 45.0;
    const QSizeF size = (upright ? text.size.transposed() : text.size) + QSizeF(2.0 * air, 2.0 * air);
    const QSizeF room = size * pixel;
    return {spot.centre - QPointF(room.width(), room.height()) / 2.0, room};
}

std::vector<PlacedLabel> placeLabels(const std::vector<LabelWish>& wishes, Clutter clutter, double pixel,
                                     const std::map<LabelKey, std::size_t>& former)
{
    std::vector<std::size_t> order(wishes.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return wishes[a].priority < wishes[b].priority; });
    std::vector<PlacedLabel> placed;
    for (const auto index : order) {
        const auto& wish = wishes[index];
        const auto kept = former.find({wish.element, wish.part});
        std::optional<PlacedLabel> best;
        int bestCost = 0;
        for (std::size_t spot = 0; spot < wish.spots.size(); ++spot) {
            const QRectF room = roomOf(wish.texts[wish.spots[spot].text], wish.spots[spot], pixel);
            const int rank = static_cast<int>(spot) - (kept != former.end() && kept->second == spot ? 3 : 0);
            if ((best && rank >= bestCost) || clutter.meetsLabel(room))
                continue;
            const int cost = rank + lineCost * clutter.linesIn(room);
            if (!best || cost < bestCost) {
                best = PlacedLabel{index, spot, room};
                bestCost = cost;
            }
        }
        if (!best)
            continue;
        clutter.addLabel(best->rect);
        placed.push_back(*best);
    }
    return placed;
}

} // namespace sumpwright::ui::canvas

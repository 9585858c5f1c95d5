#include "ui/canvas/label_placement.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numeric>

namespace sumpwright::ui::canvas
{

namespace
{
constexpr double air = 2.0; // pixels before and after the letters; above and below, a line's own height has some
constexpr int staying = 3;  // what a label saves by keeping its former spot

// Of rectangles the right way round; QRectF's own asks for that first.
bool overlap(const QRectF& a, const QRectF& b)
{
    return a.left() < b.right() && b.left() < a.right() && a.top() < b.bottom() && b.top() < a.bottom();
}

QRectF grown(const QRectF& rect, double by) { return rect.adjusted(-by, -by, by, by); }

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

void Clutter::add(const std::vector<QLineF>& strokes, int cost, double half)
{
    m_costs.push_back(cost);
    for (const auto& line : strokes) {
        m_strokes.push_back({line, half, m_costs.size() - 1});
        visitCells(grown(QRectF(line.p1(), line.p2()).normalized(), half), [&](Cell cell, const QRectF& square) {
            if (meets(grown(square, half), line))
                m_strokesByCell[cell].push_back(m_strokes.size() - 1);
        });
    }
}

void Clutter::addLabel(const QRectF& rect)
{
    m_labels.push_back(rect);
    visitCells(rect, [&](Cell cell, const QRectF&) { m_labelsByCell[cell].push_back(m_labels.size() - 1); });
}

int Clutter::costOf(const QRectF& rect, int enough) const
{
    int cost = 0;
    std::vector<std::size_t> met; // few: a label is small
    visitCells(rect, [&](Cell cell, const QRectF&) {
        const auto found = cost < enough ? m_strokesByCell.find(cell) : m_strokesByCell.end();
        if (found == m_strokesByCell.end())
            return;
        for (const auto index : found->second) {
            const auto& stroke = m_strokes[index];
            if (!meets(grown(rect, stroke.half), stroke.line) ||
                std::find(met.begin(), met.end(), stroke.thing) != met.end())
                continue;
            cost += m_costs[stroke.thing];
            if (cost >= enough)
                return;
            met.push_back(stroke.thing);
        }
    });
    return cost;
}

bool Clutter::meetsLabel(const QRectF& rect) const
{
    bool met = false;
    visitCells(rect, [&](Cell cell, const QRectF&) {
        const auto found = met ? m_labelsByCell.end() : m_labelsByCell.find(cell);
        if (found != m_labelsByCell.end())
            met = std::any_of(found->second.begin(), found->second.end(),
                              [&](std::size_t label) { return overlap(m_labels[label], rect); });
    });
    return met;
}

QRectF roomOf(const LabelText& text, const LabelSpot& spot, double pixel)
{
    const bool upright = spot.turn != 0.0 && std::abs(std::remainder(spot.turn, 180.0)) > 45.0;
    const QSizeF size = text.size + QSizeF(2.0 * air, 0.0);
    const QSizeF room = (upright ? size.transposed() : size) * pixel;
    return {spot.centre - QPointF(room.width(), room.height()) / 2.0, room};
}

namespace
{
struct Found {
    std::optional<PlacedLabel> best;
    bool anyRoom = false; // some spot is free of other labels, whatever it covers
};

// The best spot of a wish that covers less than `limit`. Where that is no limit, with its last and shortest text only.
Found bestSpot(const LabelWish& wish, const Clutter& clutter, double pixel, int limit,
               std::optional<std::size_t> former)
{
    Found found;
    int bestCost = cover::anything;
    for (std::size_t i = 0; i < wish.spots.size(); ++i) {
        const auto& spot = wish.spots[i];
        const int own = spot.cost - (former == i ? staying : 0);
        if (own >= bestCost || (limit == cover::anything && spot.text + 1 != wish.texts.size()))
            continue;
        const QRectF room = roomOf(wish.texts[spot.text], spot, pixel);
        if (clutter.meetsLabel(room))
            continue;
        found.anyRoom = true;
        const int enough = std::min(limit, bestCost - own);
        const int covered = clutter.costOf(room, enough);
        if (covered >= enough)
            continue;
        found.best = PlacedLabel{0, i, room};
        bestCost = own + covered;
    }
    return found;
}
} // namespace

// First whatever finds a spot that covers nothing; then what may cover an edge; at last, in short, what must cover
// more.
std::vector<PlacedLabel> placeLabels(const std::vector<LabelWish>& wishes, Clutter clutter, double pixel,
                                     const std::map<LabelKey, std::size_t>& former)
{
    std::vector<std::size_t> order(wishes.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return wishes[a].priority < wishes[b].priority; });
    std::vector<PlacedLabel> placed;
    for (const int limit : {cover::edge, cover::mark, cover::anything}) {
        std::vector<std::size_t> left;
        for (const auto index : order) {
            const auto& wish = wishes[index];
            if (limit == cover::anything && wish.dispensable)
                continue;
            const auto kept = former.find({wish.element, wish.part});
            auto found = bestSpot(wish, clutter, pixel, limit,
                                  kept != former.end() ? std::optional(kept->second) : std::nullopt);
            if (!found.best) {
                if (found.anyRoom)
                    left.push_back(index);
                continue;
            }
            found.best->wish = index;
            clutter.addLabel(found.best->rect);
            placed.push_back(*found.best);
        }
        order = std::move(left);
    }
    return placed;
}

} // namespace sumpwright::ui::canvas

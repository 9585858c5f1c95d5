// Label placement: puts each label at the best of its spots so that no two cover each other; what is drawn is avoided
// where another spot is free. A label keeps its former spot while that stays as good, so that nothing jumps.
#pragma once

#include <QLineF>
#include <QRectF>

#include <map>
#include <optional>
#include <unordered_map>
#include <utility>
#include <vector>

#include "ui/canvas/label.hpp"

namespace sumpwright::ui::canvas
{

// What it costs a label to cover a thing of the drawing; a spot's own cost is weighed against these.
namespace cover
{
constexpr int edge = 20; // outline of a vessel
constexpr int mark = 30; // a pipe, a dimension line, a wall, a sign: the letters would be misread or belong to it
constexpr int anything = 1'000'000;
} // namespace cover

// What labels keep away from, in a grid of cells for quick look-up. Scene coordinates.
class Clutter
{
public:
    explicit Clutter(double cell) : m_cell(cell) {}
    // The strokes of one thing, `half` wide to each side: covered at a cost, counted once however many strokes it is.
    void add(const std::vector<QLineF>& strokes, int cost, double half = 0.0);
    void addLabel(const QRectF& rect);                                  // may not be covered
    int costOf(const QRectF& rect, int enough = cover::anything) const; // looks no further once it is `enough`
    bool meetsLabel(const QRectF& rect) const;

private:
    using Cell = std::int64_t;
    struct Stroke {
        QLineF line;
        double half = 0.0;
        std::size_t thing = 0;
    };
    template <class Visit> void visitCells(const QRectF& rect, Visit&& visit) const;

    double m_cell;
    std::vector<int> m_costs; // of the things
    std::vector<Stroke> m_strokes;
    std::vector<QRectF> m_labels;
    std::unordered_map<Cell, std::vector<std::size_t>> m_strokesByCell;
    std::unordered_map<Cell, std::vector<std::size_t>> m_labelsByCell;
};

struct PlacedLabel {
    std::size_t wish = 0;
    std::size_t spot = 0;
    QRectF rect; // scene
};

// The room a label takes at a spot, with a little air around it.
QRectF roomOf(const LabelText& text, const LabelSpot& spot, double pixel);

using LabelKey = std::pair<base::Id, int>;
// Labels without a free spot are left out. `former` holds spot indices by element and part.
std::vector<PlacedLabel> placeLabels(const std::vector<LabelWish>& wishes, Clutter clutter, double pixel,
                                     const std::map<LabelKey, std::size_t>& former = {});

} // namespace sumpwright::ui::canvas

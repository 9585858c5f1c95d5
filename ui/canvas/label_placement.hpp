// Label placement: puts each label at the best of its spots so that no two cover each other; lines of the drawing are
// avoided where another spot is free. A label keeps its former spot while that stays as good, so that nothing jumps.
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

// What labels keep away from, in a grid of cells for quick look-up. Scene coordinates.
class Clutter
{
public:
    explicit Clutter(double cell) : m_cell(cell) {}
    void addLine(const QLineF& line);  // costs, but may be covered
    void addLabel(const QRectF& rect); // may not be covered
    int linesIn(const QRectF& rect) const;
    bool meetsLabel(const QRectF& rect) const;

private:
    using Cell = std::int64_t;
    template <class Visit> void visitCells(const QRectF& rect, Visit&& visit) const;

    double m_cell;
    std::vector<QLineF> m_lines;
    std::vector<QRectF> m_labels;
    std::unordered_map<Cell, std::vector<std::size_t>> m_linesByCell;
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

#include "core/plan/edits/arrange.hpp"

#include <algorithm>

#include "core/plan/edits/draft.hpp"
#include "core/plan/edits/motion.hpp"
#include "core/plan/edits/move.hpp"
#include "core/plan/edits/settle.hpp"

namespace sumpwright::plan
{

namespace
{

// Pumps whose vessel is meant too go with it and are not placed by themselves.
std::vector<base::Id> ownPlaced(const Draft& draft, const std::vector<base::Id>& elements)
{
    std::vector<base::Id> placed;
    for (const base::Id id : elements) {
        if (!kindOf(draft.plan, id))
            refuseUnknown(id, "element");
        const Pump* pump = draft.plan.pumps.find(id);
        if (!pump || std::find(elements.begin(), elements.end(), pump->vessel) == elements.end())
            placed.push_back(id);
    }
    return placed;
}

void requireCount(std::size_t count, std::size_t least)
{
    if (count < least)
        refuse("plan.too-few", "selection", std::to_string(count) + " elements",
               std::to_string(least) + " or more elements");
}

void shift(Draft& draft, base::Id id, Point by)
{
    Motion motion;
    motion.shift = by;
    moveAll(draft, {id}, motion);
    settleEnds(draft);
}

Box around(const std::vector<Box>& boxes)
{
    Box all = boxes.front();
    for (const Box& box : boxes) {
        all.low = {std::min(all.low.x, box.low.x), std::min(all.low.y, box.low.y)};
        all.high = {std::max(all.high.x, box.high.x), std::max(all.high.y, box.high.y)};
    }
    return all;
}

Point alignedBy(const Box& box, const Box& all, Alignment alignment)
{
    const units::Length none = units::metres(0.0);
    switch (alignment) {
    case Alignment::left:
        return {all.low.x - box.low.x, none};
    case Alignment::right:
        return {all.high.x - box.high.x, none};
    case Alignment::top:
        return {none, all.high.y - box.high.y};
    case Alignment::bottom:
        return {none, all.low.y - box.low.y};
    case Alignment::centreX:
        return {(all.low.x + all.high.x - box.low.x - box.high.x) / 2.0, none};
    case Alignment::centreY:
        return {none, (all.low.y + all.high.y - box.low.y - box.high.y) / 2.0};
    }
    return {};
}

Box boxAround(const std::vector<Point>& points)
{
    Box box{points.front(), points.front()};
    for (const Point& point : points) {
        box.low = {std::min(box.low.x, point.x), std::min(box.low.y, point.y)};
        box.high = {std::max(box.high.x, point.x), std::max(box.high.y, point.y)};
    }
    return box;
}

units::Length along(Point point, Axis axis) { return axis == Axis::x ? point.x : point.y; }

} // namespace

Edit align(std::vector<base::Id> elements, Alignment alignment)
{
    return makeEdit("edit.align", elements, [elements, alignment](Draft& draft) {
        const std::vector<base::Id> placed = ownPlaced(draft, elements);
        requireCount(placed.size(), 2);
        std::vector<Box> boxes;
        for (const base::Id id : placed)
            boxes.push_back(boxOf(draft.plan, id));
        const Box all = around(boxes);
        for (std::size_t i = 0; i < placed.size(); ++i)
            shift(draft, placed[i], alignedBy(boxes[i], all, alignment));
    });
}

Edit distribute(std::vector<base::Id> elements, Axis axis)
{
    return makeEdit("edit.distribute", elements, [elements, axis](Draft& draft) {
        const std::vector<base::Id> placed = ownPlaced(draft, elements);
        requireCount(placed.size(), 3);
        std::vector<std::pair<Box, base::Id>> boxes;
        units::Length filled = units::metres(0.0);
        for (const base::Id id : placed) {
            boxes.emplace_back(boxOf(draft.plan, id), id);
            filled += along(boxes.back().first.high - boxes.back().first.low, axis);
        }
        std::stable_sort(boxes.begin(), boxes.end(), [axis](const auto& a, const auto& b) {
            return along(a.first.low + a.first.high, axis) < along(b.first.low + b.first.high, axis);
        });
        const units::Length room = along(boxes.back().first.high - boxes.front().first.low, axis);
        const units::Length gap = (room - filled) / static_cast<double>(boxes.size() - 1);
        units::Length next = along(boxes.front().first.high, axis) + gap;
        for (std::size_t i = 1; i + 1 < boxes.size(); ++i) {
            const Box& box = boxes[i].first;
            const units::Length by = next - along(box.low, axis);
            const units::Length none = units::metres(0.0);
            shift(draft, boxes[i].second, axis == Axis::x ? Point{by, none} : Point{none, by});
            next += along(box.high - box.low, axis) + gap;
        }
    });
}

Box boxOf(const Plan& plan, base::Id element)
{
    if (const auto* vessel = plan.vessels.find(element))
        return boxAround(outlineOf(*vessel));
    if (const auto* run = plan.runs.find(element); run && !run->vertices.empty()) {
        std::vector<Point> points;
        for (const Vertex& vertex : run->vertices)
            points.push_back(vertex.at);
        return boxAround(points);
    }
    if (const auto* fixture = plan.fixtures.find(element)) {
        const units::Length half = fixture->size / 2.0;
        const bool post = fixture->kind == FixtureKind::post;
        const Point reach = post ? Point{half, half} : Point{};
        return boxAround({fixture->from - reach, fixture->to + reach});
    }
    if (const auto* dimension = plan.dimensions.find(element))
        return boxAround({dimension->from, dimension->to});
    const Point place = anchorOf(plan, element);
    return {place, place};
}

} // namespace sumpwright::plan

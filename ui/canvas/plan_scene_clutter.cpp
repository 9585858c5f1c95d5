// PlanScene: what its labels keep away from.
#include "ui/canvas/dimension_item.hpp"
#include "ui/canvas/fixture_item.hpp"
#include "ui/canvas/floor_item.hpp"
#include "ui/canvas/hidden_edges_item.hpp"
#include "ui/canvas/label_layer.hpp"
#include "ui/canvas/note_item.hpp"
#include "ui/canvas/plan_scene.hpp"
#include "ui/canvas/pump_item.hpp"
#include "ui/canvas/run_item.hpp"
#include "ui/canvas/scene_point.hpp"
#include "ui/canvas/tee_item.hpp"
#include "ui/canvas/underlay_item.hpp"
#include "ui/canvas/vessel_item.hpp"
#include "ui/canvas/walls_item.hpp"

namespace sumpwright::ui::canvas
{

namespace
{
std::vector<QLineF> edgesOf(const QPolygonF& outline)
{
    std::vector<QLineF> edges;
    for (int i = 0; i < outline.size(); ++i)
        edges.emplace_back(outline[i], outline[(i + 1) % outline.size()]);
    return edges;
}

std::vector<QLineF> linesOf(const RunLine& line)
{
    std::vector<QLineF> lines;
    for (std::size_t i = 0; i + 1 < line.corners.size(); ++i)
        lines.emplace_back(line.corners[i].at, line.corners[i + 1].at);
    return lines;
}
// Along the pipe, as long as the valve's sign.
QLineF valveLine(const RunItem& item, const plan::Valve& valve)
{
    const double middle = distanceAtStation(*item.run(), item.line(), valve.station);
    const double half = item.fittingSize() / 2.0;
    return {item.line().at(middle - half), item.line().at(middle + half)};
}
} // namespace

Clutter PlanScene::clutter() const
{
    const Ink ink = m_drawing.ink();
    Clutter clutter(ink.px(64.0));
    const auto addSign = [&](QPointF at, double pixels) {
        clutter.add({QLineF(at, at)}, cover::mark, ink.px(pixels) / 2.0);
    };
    for (const auto& [id, item] : m_vessels) {
        clutter.add(edgesOf(toScene(plan::outlineOf(*item->vessel()))), cover::edge);
        for (const auto& port : item->vessel()->ports)
            addSign(toScene(plan::placeOf(*item->vessel(), port)), 14.0);
    }
    for (const auto& [id, item] : m_runs) {
        clutter.add(linesOf(item->line()), cover::mark, item->line().width / 2.0);
        for (const auto& valve : item->run()->valves)
            clutter.add({valveLine(*item, valve)}, cover::mark, 0.3 * item->fittingSize() - ink.px(2.0));
    }
    for (const auto& [id, item] : m_pumps)
        addSign(item->pos(), 18.0);
    for (const auto& fixture : plan().fixtures)
        clutter.add({QLineF(toScene(fixture->from), toScene(fixture->to))}, cover::mark,
                    std::max(toScene(fixture->size), ink.px(9.0)) / 2.0);
    for (const auto& [id, item] : m_dimensions) {
        clutter.add(item->lines(), cover::mark);
        clutter.addLabel(item->figureRoom());
    }
    for (const auto& [id, item] : m_notes)
        clutter.addLabel(item->extent());
    for (const auto& room : m_floor->letterRooms())
        clutter.addLabel(room);
    if (plan().floor->drainPoint)
        addSign(toScene(*plan().floor->drainPoint), 16.0);
    return clutter;
}

} // namespace sumpwright::ui::canvas

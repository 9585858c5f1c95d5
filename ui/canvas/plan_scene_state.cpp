// PlanScene: results, selection, labels, and what lies where.
#include <QMetaObject>
#include <QPainter>

#include <algorithm>
#include <utility>

#include "ui/canvas/dimension_item.hpp"
#include "ui/canvas/fixture_item.hpp"
#include "ui/canvas/floor_item.hpp"
#include "ui/canvas/hidden_edges_item.hpp"
#include "ui/canvas/label_layer.hpp"
#include "ui/canvas/label_wishes.hpp"
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

void PlanScene::showWater(WaterView water)
{
    std::swap(m_drawing.water, water);
    const auto& former = water;
    const RunScale formerScale = std::exchange(m_drawing.scale, scaleOf(m_drawing.scale.measure()));
    const bool allColours =
        m_drawing.coloursRuns() && (former.stale != m_drawing.water.stale || !(formerScale == m_drawing.scale));
    const auto isWet = [](const VesselWater* v) { return !v || v->volume > units::litres(0.05); };
    for (const auto& [id, item] : m_vessels)
        if (isWet(former.vessel(id)) != isWet(m_drawing.water.vessel(id)))
            item->update();
    for (const auto& [id, item] : m_runs) {
        const auto was = former.run(id);
        const auto is = m_drawing.water.run(id);
        const auto sign = [](const std::optional<units::Flow>& flow) {
            return !flow || units::inLitresPerHour(*flow) > 0.5 ? 1 : units::inLitresPerHour(*flow) < -0.5 ? -1 : 0;
        };
        const auto* before = former.figuresOf(id);
        const auto* now = m_drawing.water.figuresOf(id);
        const bool otherColour = m_drawing.coloursRuns() &&
                                 ((before ? formerScale.classOf(*before) : std::nullopt) != m_drawing.classOf(id) ||
                                  (before ? before->mark : RunMark::none) != (now ? now->mark : RunMark::none));
        if (sign(was) != sign(is) || allColours || otherColour)
            item->update();
    }
    labelsLater();
}

RunScale PlanScene::scaleOf(RunMeasure measure) const
{
    std::vector<RunFigures> all;
    if (measure == RunMeasure::head)
        for (const auto& [id, figures] : m_drawing.water.figures)
            all.push_back(figures);
    return RunScale(measure, all);
}

void PlanScene::setRunMeasure(RunMeasure measure)
{
    if (measure == m_drawing.scale.measure())
        return;
    m_drawing.scale = scaleOf(measure);
    for (const auto& [id, item] : m_runs)
        item->drawingChanged();
    labelsLater();
}

void PlanScene::choose(const std::vector<base::Id>& ids)
{
    m_chosen = ids;
    for (auto* item : elements())
        item->setChosen(std::find(ids.begin(), ids.end(), item->id()) != ids.end());
    labelsLater();
}

void PlanScene::light(base::Id id)
{
    if (auto* former = item(m_lit))
        former->setLit(false);
    m_lit = id;
    if (auto* now = item(id))
        now->setLit(true);
}

void PlanScene::labelsLater()
{
    if (m_labelsDue)
        return;
    m_labelsDue = true;
    QMetaObject::invokeMethod(
        this, [this] { relabel(); }, Qt::QueuedConnection);
}

void PlanScene::relabel()
{
    m_labelsDue = false;
    if (!m_labelsShown) {
        m_labels->show({}, Clutter(1.0));
        return;
    }
    std::vector<LabelWish> wishes;
    for (const auto& vessel : plan().vessels)
        wishes.push_back(vesselWish(*vessel, m_drawing));
    for (const auto& pump : plan().pumps)
        wishes.push_back(pumpWish(*pump, m_pumps.at(pump->id)->pos(), m_drawing));
    const bool far = m_drawing.pixel > farPixel;
    for (const auto& run : plan().runs) {
        const auto& item = *m_runs.at(run->id);
        if (far && !item.chosen())
            continue;
        wishes.push_back(runWish(item, m_drawing));
        for (auto& wish : runDetailWishes(item, m_drawing))
            wishes.push_back(std::move(wish));
    }
    for (const auto& fixture : plan().fixtures)
        wishes.push_back(fixtureWish(*fixture, m_drawing));
    m_labels->show(std::move(wishes), clutter());
}

ElementItem* PlanScene::item(base::Id id) const
{
    ElementItem* found = nullptr;
    const auto look = [&](const auto& items) {
        if (const auto at = items.find(id); at != items.end())
            found = at->second.get();
    };
    look(m_vessels), look(m_pumps), look(m_runs), look(m_tees), look(m_fixtures), look(m_notes), look(m_dimensions);
    return found;
}

std::vector<ElementItem*> PlanScene::elements() const
{
    std::vector<ElementItem*> found;
    const auto add = [&](const auto& table, const auto& items) {
        for (const auto& element : table)
            if (const auto at = items.find(element->id); at != items.end())
                found.push_back(at->second.get());
    };
    add(plan().vessels, m_vessels);
    add(plan().pumps, m_pumps);
    add(plan().runs, m_runs);
    add(plan().tees, m_tees);
    add(plan().fixtures, m_fixtures);
    add(plan().notes, m_notes);
    add(plan().dimensions, m_dimensions);
    return found;
}

// A pump lies under the run that leaves it, yet the run has the rest of its way to be picked by: the pump goes first.
std::vector<base::Id> PlanScene::at(QPointF place) const
{
    std::vector<base::Id> found;
    std::size_t firstRun = 0;
    for (auto* item : items(place, Qt::IntersectsItemShape, Qt::DescendingOrder)) {
        const auto* element = dynamic_cast<ElementItem*>(item);
        if (!element)
            continue;
        const bool pump = m_pumps.contains(element->id());
        found.insert(pump ? found.begin() + static_cast<std::ptrdiff_t>(firstRun) : found.end(), element->id());
        if (firstRun + 1 == found.size() && !pump && !m_runs.contains(element->id()))
            ++firstRun;
    }
    return found;
}

std::vector<base::Id> PlanScene::within(const QRectF& marquee, bool touching) const
{
    std::vector<base::Id> found;
    QPainterPath area;
    area.addRect(marquee);
    for (const auto* item : elements()) {
        const bool enclosed = marquee.contains(item->extent());
        if (enclosed || (touching && item->collidesWithPath(item->mapFromScene(area))))
            found.push_back(item->id());
    }
    return found;
}

void PlanScene::paintGround(QPainter& painter, const QRectF& area) const
{
    painter.fillRect(area, m_drawing.theme->paper);
    painter.setPen(Qt::NoPen);
    painter.setBrush(m_drawing.theme->floor);
    painter.drawPolygon(m_floor->outline());
}

QRectF PlanScene::content() const
{
    QRectF all = m_floor->outline().boundingRect();
    for (const auto* item : elements())
        all = all.united(item->extent());
    if (m_underlay->isVisible())
        all = all.united(m_underlay->sceneBoundingRect());
    return all;
}

QRectF PlanScene::extentOf(const std::vector<base::Id>& ids) const
{
    QRectF all;
    for (const auto id : ids)
        if (const auto* found = item(id))
            all = all.united(found->extent());
    return all;
}

} // namespace sumpwright::ui::canvas

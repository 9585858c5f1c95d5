#include "ui/canvas/plan_scene.hpp"

#include <QMetaObject>

#include <algorithm>

#include "core/plan/edits/move.hpp"
#include "core/plan/edits/target.hpp"
#include "ui/canvas/dimension_item.hpp"
#include "ui/canvas/fixture_item.hpp"
#include "ui/canvas/floor_item.hpp"
#include "ui/canvas/hidden_edges_item.hpp"
#include "ui/canvas/label_layer.hpp"
#include "ui/canvas/note_item.hpp"
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
// Heights of the sheet: what lies over what. Vessels and runs are sorted by level inside their band.
namespace layer
{
constexpr double underlay = 0.0, floor = 1.0, walls = 1.5, vessels = 10.0, hidden = 18.0, pumps = 20.0, runs = 30.0,
                 tees = 45.0, notes = 55.0, labels = 70.0;
} // namespace layer

double byLevel(units::Elevation level) { return std::clamp(units::inMetres(level), -5.0, 5.0) / 2.0; }

units::Elevation topOf(const plan::Run& run)
{
    units::Elevation top = units::elevationMetres(-1000.0);
    for (const auto& vertex : run.vertices)
        top = std::max(top, vertex.level);
    return top;
}
} // namespace

struct PlanScene::Change {
    std::vector<QRectF> touched; // former and new extents of changed vessels and runs
    bool vessels = false;
    bool runs = false;
    bool members = false; // items came or went
};

PlanScene::PlanScene(std::shared_ptr<const catalogue::Catalogue> catalogue, QObject* parent) : QGraphicsScene(parent)
{
    m_drawing.theme = &style::theme(style::Scheme::light);
    m_drawing.catalogue = std::move(catalogue);
    const auto make = [this](auto& holder, auto made, double height) {
        holder = std::move(made);
        holder->setZValue(height);
        addItem(holder.get());
    };
    make(m_underlay, std::make_unique<UnderlayItem>(m_drawing), layer::underlay);
    make(m_floor, std::make_unique<FloorItem>(m_drawing), layer::floor);
    make(m_walls, std::make_unique<WallsItem>(m_drawing), layer::walls);
    make(m_hidden, std::make_unique<HiddenEdgesItem>(m_drawing), layer::hidden);
    make(m_labels, std::make_unique<LabelLayer>(m_drawing), layer::labels);
    showPlan(plan::Plan());
}

PlanScene::~PlanScene() = default;

template <class Visit> void PlanScene::visit(Visit&& visit) const
{
    const auto each = [&](const auto& items) {
        for (const auto& [id, item] : items)
            visit(*item);
    };
    each(m_vessels), each(m_pumps), each(m_runs), each(m_tees), each(m_fixtures), each(m_notes), each(m_dimensions);
}

void PlanScene::everythingChanged()
{
    visit([](ElementItem& item) { item.drawingChanged(); });
    m_floor->drawingChanged();
    m_labels->update();
    m_hidden->update();
    m_walls->update();
    m_underlay->update();
    labelsLater();
}

void PlanScene::setCatalogue(const std::shared_ptr<const catalogue::Catalogue>& catalogue)
{
    if (m_drawing.catalogue == catalogue)
        return;
    m_drawing.catalogue = catalogue;
    everythingChanged();
}

void PlanScene::setTheme(const style::Theme& theme)
{
    if (m_drawing.theme == &theme)
        return;
    m_drawing.theme = &theme;
    everythingChanged();
}

void PlanScene::setFigures(const Figures& figures)
{
    if (figures == m_drawing.figures)
        return;
    m_drawing.figures = figures;
    everythingChanged();
}

void PlanScene::setPixel(double millimetresPerPixel)
{
    if (millimetresPerPixel == m_drawing.pixel)
        return;
    m_drawing.pixel = millimetresPerPixel;
    everythingChanged();
}

void PlanScene::setPlanFolder(const QString& folder)
{
    m_drawing.planFolder = folder;
    m_underlay->show(m_drawing.plan.underlay);
}

void PlanScene::setLabelsShown(bool shown)
{
    m_labelsShown = shown;
    labelsLater();
}

template <class Item, class Element, class Show>
void PlanScene::syncTable(Items<Item>& items, const plan::Table<Element>& before, const plan::Table<Element>& now,
                          Change& change, Show&& show)
{
    for (const auto& element : before) {
        if (now.find(element->id))
            continue;
        if (const auto gone = items.find(element->id); gone != items.end()) {
            change.touched.push_back(gone->second->extent());
            items.erase(gone);
            change.members = true;
        }
    }
    for (const auto& element : now) {
        auto& item = items[element->id];
        if (!item) {
            item = std::make_unique<Item>(element, m_drawing);
            addItem(item.get());
            item->setChosen(std::find(m_chosen.begin(), m_chosen.end(), element->id) != m_chosen.end());
            change.members = true;
        } else if (before.share(element->id) == element) {
            continue;
        } else {
            change.touched.push_back(item->extent());
        }
        show(*item, element);
        change.touched.push_back(item->extent());
        ++m_renewed;
    }
}

void PlanScene::showPlan(const plan::Plan& plan)
{
    const plan::Plan before = std::exchange(m_drawing.plan, plan);
    m_renewed = 0;
    Change change;
    syncTable(m_vessels, before.vessels, plan.vessels, change, [](VesselItem& item, const VesselItem::Pointer& vessel) {
        item.show(vessel);
        item.setZValue(layer::vessels + byLevel(vessel->baseLevel));
    });
    change.vessels = !change.touched.empty();
    const auto untilRuns = change.touched.size();
    syncTable(m_runs, before.runs, plan.runs, change, [](RunItem& item, const RunItem::Pointer& run) {
        item.show(run);
        item.setZValue(layer::runs + byLevel(topOf(*run)));
    });
    change.runs = change.touched.size() != untilRuns;
    const auto untilFixtures = change.touched.size();
    syncTable(m_fixtures, before.fixtures, plan.fixtures, change,
              [](FixtureItem& item, const FixtureItem::Pointer& fixture) { item.show(fixture); });
    if (change.touched.size() != untilFixtures)
        m_walls->show(plan.fixtures);
    syncTable(m_notes, before.notes, plan.notes, change, [](NoteItem& item, const NoteItem::Pointer& note) {
        item.show(note);
        item.setZValue(layer::notes);
    });
    syncTable(m_dimensions, before.dimensions, plan.dimensions, change,
              [](DimensionItem& item, const DimensionItem::Pointer& dimension) { item.show(dimension); });
    syncPumps(before, change);
    syncTees(before, change);
    syncGround(before);
    if (change.vessels || change.runs)
        surroundRuns(change);
    if (change.vessels)
        findHiddenEdges();
    labelsLater();
    if (change.members)
        Q_EMIT elementsChanged();
}

void PlanScene::syncPumps(const plan::Plan& before, Change& change)
{
    const auto place = [this](PumpItem& item, const PumpItem::Pointer& pump) {
        const auto* vessel = plan().vessels.find(pump->vessel);
        item.show(pump, vessel ? plan::placeOf(*vessel, *pump) : plan::Point{}, pumpTurn(pump->id));
        item.setZValue(layer::pumps);
    };
    syncTable(m_pumps, before.pumps, plan().pumps, change, place);
    if (change.vessels || change.runs) // a pump follows its vessel and points along its run
        for (const auto& pump : plan().pumps)
            place(*m_pumps.at(pump->id), pump);
}

void PlanScene::syncTees(const plan::Plan& before, Change& change)
{
    const auto widths = widthsAtTees();
    const auto place = [&widths](TeeItem& item, const TeeItem::Pointer& tee) {
        const auto width = widths.find(tee->id);
        item.show(tee, width != widths.end() ? width->second : 0.0);
        item.setZValue(layer::tees);
    };
    syncTable(m_tees, before.tees, plan().tees, change, place);
    if (change.runs)
        for (const auto& tee : plan().tees)
            place(*m_tees.at(tee->id), tee);
}

void PlanScene::syncGround(const plan::Plan& before)
{
    if (plan().floor != before.floor) {
        m_floor->show(plan().floor);
        Q_EMIT groundChanged();
    }
    m_floor->standClearOf(m_walls->body());
    if (plan().underlay != before.underlay)
        m_underlay->show(plan().underlay);
}

// Of the widest run that ends there.
std::unordered_map<base::Id, double> PlanScene::widthsAtTees() const
{
    std::unordered_map<base::Id, double> widths;
    for (const auto& [id, item] : m_runs)
        for (const auto* end : {&item->run()->from, &item->run()->to})
            if (const auto* at = std::get_if<plan::TeeEnd>(end))
                widths[at->tee] = std::max(widths[at->tee], item->line().width);
    return widths;
}

double PlanScene::pumpTurn(base::Id pump) const
{
    const auto* run = plan::runAtPump(plan(), pump);
    const auto item = run ? m_runs.find(run->id) : m_runs.end();
    if (item == m_runs.end() || item->second->line().corners.size() < 2)
        return -90.0;
    const auto* from = std::get_if<plan::PumpEnd>(&run->from);
    const auto& line = item->second->line();
    return from && from->pump == pump ? line.turnAt(0.0) : line.turnAt(line.length()) + 180.0;
}

void PlanScene::surroundRuns(const Change& change)
{
    for (const auto& [id, item] : m_runs) {
        const QRectF bounds = item->line().bounds;
        if (std::none_of(change.touched.begin(), change.touched.end(),
                         [&](const QRectF& rect) { return rect.adjusted(-1.0, -1.0, 1.0, 1.0).intersects(bounds); }))
            continue;
        RunSurroundings around;
        for (const auto& [otherId, other] : m_runs)
            if (otherId != id && other->line().bounds.intersects(bounds))
                for (const auto& each : breaksUnder(item->line(), other->line()))
                    around.breaks.push_back(each);
        for (const auto& vessel : plan().vessels)
            for (const auto& each : hiddenUnder(item->line(), *vessel))
                around.hidden.push_back(each);
        item->setSurroundings(std::move(around));
    }
}

void PlanScene::findHiddenEdges()
{
    std::vector<HiddenEdgesItem::Pair> pairs;
    for (const auto& [idBelow, below] : m_vessels) {
        const auto rect = below->extent();
        for (const auto& [idAbove, above] : m_vessels) {
            if (above->vessel()->baseLevel > below->vessel()->baseLevel && above->extent().intersects(rect))
                pairs.push_back(
                    {below->mapToScene(below->outsideOutline()), above->mapToScene(above->outsideOutline())});
        }
    }
    m_hidden->show(std::move(pairs));
}

} // namespace sumpwright::ui::canvas

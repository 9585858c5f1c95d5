// PlanScene: the drawing of one plan, one item an element. Told the plan, the results and the selection, it updates
// only the items whose elements changed. One scene unit is one millimetre; y runs down, the plan's y runs up.
#pragma once

#include <QGraphicsScene>

#include <memory>
#include <unordered_map>
#include <vector>

#include "ui/canvas/drawing.hpp"
#include "ui/canvas/element_item.hpp"

namespace sumpwright::ui::canvas
{

class Clutter;
class DimensionItem;
class FixtureItem;
class FloorItem;
class HiddenEdgesItem;
class LabelLayer;
class NoteItem;
class PumpItem;
class RunItem;
class TeeItem;
class UnderlayItem;
class VesselItem;
class WallsItem;

class PlanScene final : public QGraphicsScene
{
    Q_OBJECT

public:
    explicit PlanScene(std::shared_ptr<const catalogue::Catalogue> catalogue, QObject* parent = nullptr);
    void setCatalogue(const std::shared_ptr<const catalogue::Catalogue>& catalogue);
    ~PlanScene() override;

    void setTheme(const style::Theme& theme);
    void setFigures(const Figures& figures);
    void setPixel(double millimetresPerPixel);
    void setPlanFolder(const QString& folder); // the site sketch lies beside the plan's file
    void setLabelsShown(bool shown);
    void setRunMeasure(RunMeasure measure);

    void showPlan(const plan::Plan& plan);
    void showWater(WaterView water);
    void choose(const std::vector<base::Id>& ids);
    void light(base::Id id); // Id{}: nothing
    void relabel();          // places the labels now; otherwise once per turn of the event loop

    const Drawing& drawing() const { return m_drawing; }
    const plan::Plan& plan() const { return m_drawing.plan; }
    ElementItem* item(base::Id id) const;          // null: none
    std::vector<ElementItem*> elements() const;    // vessels, pumps, runs, tees, fixtures, notes, dimensions; by id
    std::vector<base::Id> at(QPointF place) const; // topmost first
    std::vector<base::Id> within(const QRectF& marquee, bool touching) const;
    QRectF content() const; // of all that is drawn; null when the plan is empty
    QRectF extentOf(const std::vector<base::Id>& ids) const;
    // The grounds below everything drawn: paper, and the floor on it.
    void paintGround(QPainter& painter, const QRectF& area) const;
    const LabelLayer& labels() const { return *m_labels; }
    int itemsRenewed() const { return m_renewed; } // by the last showPlan

Q_SIGNALS:
    void elementsChanged(); // items came or went
    void groundChanged();   // the floor's outline

private:
    template <class Item> using Items = std::unordered_map<base::Id, std::unique_ptr<Item>>;
    struct Change; // what the last plan did to the drawing
    template <class Item, class Element, class Show>
    void syncTable(Items<Item>& items, const plan::Table<Element>& before, const plan::Table<Element>& now,
                   Change& change, Show&& show);
    void syncPumps(const plan::Plan& before, Change& change);
    void syncTees(const plan::Plan& before, Change& change);
    void syncGround(const plan::Plan& before);
    void surroundRuns(const Change& change);
    void findHiddenEdges();
    void everythingChanged();
    void labelsLater();
    RunScale scaleOf(RunMeasure measure) const;
    Clutter clutter() const;
    std::unordered_map<base::Id, double> widthsAtTees() const;
    double pumpTurn(base::Id pump) const;
    template <class Visit> void visit(Visit&& visit) const;

    Drawing m_drawing;
    Items<VesselItem> m_vessels;
    Items<PumpItem> m_pumps;
    Items<RunItem> m_runs;
    Items<TeeItem> m_tees;
    Items<FixtureItem> m_fixtures;
    Items<NoteItem> m_notes;
    Items<DimensionItem> m_dimensions;
    std::unique_ptr<FloorItem> m_floor;
    std::unique_ptr<UnderlayItem> m_underlay;
    std::unique_ptr<WallsItem> m_walls;
    std::unique_ptr<HiddenEdgesItem> m_hidden;
    std::unique_ptr<LabelLayer> m_labels;
    std::vector<base::Id> m_chosen;
    base::Id m_lit;
    bool m_labelsShown = true;
    bool m_labelsDue = false;
    int m_renewed = 0;
};

} // namespace sumpwright::ui::canvas

#include "ui/tools/toolbox.hpp"

#include <algorithm>

#include "core/base/ensure.hpp"
#include "core/plan/edits/draw_run.hpp"
#include "ui/canvas/plan_view.hpp"
#include "ui/tools/array_tool.hpp"
#include "ui/tools/connecting.hpp"
#include "ui/tools/fixture_tools.hpp"
#include "ui/tools/floor_tool.hpp"
#include "ui/tools/measuring_tools.hpp"
#include "ui/tools/note_tool.hpp"
#include "ui/tools/pipe_tool.hpp"
#include "ui/tools/place_pump_tool.hpp"
#include "ui/tools/place_vessel_tool.hpp"
#include "ui/tools/select_tool.hpp"
#include "ui/tools/sketch_tools.hpp"

namespace sumpwright::ui::tools
{

Toolbox::Toolbox(canvas::PlanView& view) : QObject(&view), m_view(view)
{
    connect(&view, &canvas::PlanView::leaving, this, [this] { m_viewLeft = true; });
    add({"select", tr("&Select"), tr("Select, move, size and turn what is drawn."), "S", tr("Select"), false},
        std::make_unique<SelectTool>(view));
    addVesselTools();
    addPipeTools();
    addBuildingTools();
    addMeasuringTools();
    activate("select");
}

Toolbox::~Toolbox()
{
    if (!m_viewLeft)
        m_view.setTool(nullptr);
}

void Toolbox::add(ToolSpec spec, std::unique_ptr<Tool> tool)
{
    tool->setParent(nullptr); // owned here
    connect(tool.get(), &Tool::finished, this, [this] { activate("select"); });
    connect(tool.get(), &Tool::hintChanged, this, [this] { Q_EMIT hintChanged(hint()); });
    m_specs.push_back(std::move(spec));
    m_tools.push_back(std::move(tool));
}

void Toolbox::addVesselTools()
{
    using plan::VesselKind;
    const auto vessel = [this](ToolSpec spec, VesselKind kind, std::optional<plan::Shape> shape = {}) {
        add(std::move(spec), std::make_unique<PlaceVesselTool>(m_view, kind, std::move(shape)));
    };
    vessel({"place.fish-tank", tr("&Fish tank, round"), tr("Place a round fish tank: click, or drag from its centre."),
            "T", tr("Fish tank"), true, true},
           VesselKind::fishTank, plan::RoundShape{units::metres(1.2)});
    vessel({"place.fish-tank-rectangular",
            tr("Fish tank, r&ectangular"),
            tr("Place a rectangular fish tank: click, or drag from corner to corner."),
            "R",
            {},
            true},
           VesselKind::fishTank, plan::RectangleShape{units::metres(1.5), units::metres(1.0)});
    vessel({"place.fish-tank-caged",
            tr("Fish tank, &caged 1 000 L"),
            tr("Place a 1 000 L tank in its cage."),
            "C",
            {},
            true},
           VesselKind::fishTank, plan::CagedShape{});
    vessel(
        {"place.sump", tr("S&ump"), tr("Place the sump: click, or drag from corner to corner."), "U", tr("Sump"), true},
        VesselKind::sump);
    vessel({"place.media-bed", tr("&Grow bed"), tr("Place a grow bed with medium: click, or drag to size it."), "B",
            tr("Grow bed"), true},
           VesselKind::mediaBed);
    vessel({"place.raft-bed", tr("R&aft bed"), tr("Place a raft bed: click, or drag to size it."), "F", {}, true},
           VesselKind::raftBed);
    vessel({"place.settler", tr("Se&ttler"), tr("Place a settler: click, or drag from its centre."), "E", {}, true},
           VesselKind::settler);
}

void Toolbox::addPipeTools()
{
    add({"place.pump", tr("&Pump"), tr("Stand a pump in a sump: click inside it."), "P", tr("Pump"), true, true},
        std::make_unique<PlacePumpTool>(m_view));
    add({"place.run", tr("P&ipe run"), tr("Draw a pipe run: click where it starts, its corners, and where it ends."),
         "I", tr("Pipe run"), true},
        std::make_unique<PipeTool>(m_view));
    add({"place.array", tr("Copies in ro&ws"), tr("Copies what is selected in rows and columns."), "G", {}, true, true},
        std::make_unique<ArrayTool>(m_view));
}

void Toolbox::addBuildingTools()
{
    using plan::FixtureKind;
    add({"place.floor", tr("F&loor outline"), tr("Draw the floor: drag a rectangle or click its corners."), "A",
         tr("Floor"), true, true},
        std::make_unique<FloorTool>(m_view));
    add({"place.wall", tr("&Wall"), tr("Draw walls from end to end."), "W", {}, true},
        std::make_unique<WallTool>(m_view, FixtureKind::wall));
    add({"place.door", tr("&Door"), tr("Draw a door: from its hinge to the other side."), "D", {}, true},
        std::make_unique<WallTool>(m_view, FixtureKind::door));
    add({"place.post", tr("P&ost"), tr("Place a post."), "O", {}, true},
        std::make_unique<SpotTool>(m_view, FixtureKind::post));
    add({"place.power-point",
         tr("Powe&r point"),
         tr("Mark a power point. Its work is for a licensed electrician."),
         "Q",
         {},
         true},
        std::make_unique<SpotTool>(m_view, FixtureKind::powerPoint));
}

void Toolbox::addMeasuringTools()
{
    add({"place.note", tr("&Note"), tr("Leave a note on the drawing."), "X", {}, true, true},
        std::make_unique<NoteTool>(m_view));
    add({"place.dimension",
         tr("Dimension li&ne"),
         tr("Draw a dimension line: two points, then its distance."),
         "K",
         {},
         true},
        std::make_unique<DimensionTool>(m_view));
    add({"measure", tr("&Measure"), tr("Measure a distance; nothing stays on the plan."), "M", tr("Measure"), false},
        std::make_unique<MeasureTool>(m_view));
    add({"underlay.scale",
         tr("Scale the site s&ketch"),
         tr("Set the scale of the site sketch by two points and their true distance."),
         "Y",
         {},
         true},
        std::make_unique<UnderlayScaleTool>(m_view));
    add({"underlay.move",
         tr("Mo&ve the site sketch"),
         tr("Lay the site sketch right: a point of it, then where that belongs."),
         "V",
         {},
         true},
        std::make_unique<UnderlayMoveTool>(m_view));
    add({"underlay.turn",
         tr("Strai&ghten the site sketch"),
         tr("Turn the site sketch so that an edge of it runs straight across or up the sheet."),
         "H",
         {},
         true},
        std::make_unique<UnderlayTurnTool>(m_view));
}

Tool& Toolbox::tool(const std::string& id) const
{
    const auto at = std::find_if(m_specs.begin(), m_specs.end(), [&](const ToolSpec& spec) { return spec.id == id; });
    base::ensure(at != m_specs.end(), "a tool is activated by an id there is");
    return *m_tools[static_cast<std::size_t>(at - m_specs.begin())];
}

void Toolbox::activate(const std::string& id)
{
    Tool& next = tool(id);
    if (!m_active.empty())
        tool(m_active).end();
    m_active = id;
    m_view.setTool(&next);
    next.begin();
    Q_EMIT activated(QString::fromStdString(id));
    Q_EMIT hintChanged(hint());
}

QString Toolbox::hint() const { return tool(m_active).hint(); }

void Toolbox::typeLevels()
{
    if (m_active != "select")
        activate("select");
    static_cast<SelectTool&>(tool("select")).typeLevels();
}

void Toolbox::connectSelected()
{
    auto& document = m_view.document();
    const auto& chosen = document.selection();
    if (chosen.size() != 2) {
        document.say(tr("Select the two things to connect first: a pump, vessels, runs or tees."));
        return;
    }
    const auto wish = connectWish(document.committed(), *document.catalogue(), chosen[0], chosen[1]);
    if (!wish) {
        document.say(
            tr("These two cannot be connected: a run leads from a pump, vessel, run or tee to a vessel, run or tee."));
        return;
    }
    const base::Id drawn{document.committed().nextId};
    if (document.commit(plan::drawRun(*wish)))
        document.select({drawn});
}

} // namespace sumpwright::ui::tools

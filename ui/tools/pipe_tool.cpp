#include "ui/tools/pipe_tool.hpp"

#include <QComboBox>
#include <QKeyEvent>
#include <QLineEdit>

#include <cmath>

#include "core/units/parse.hpp"
#include "ui/canvas/plan_view.hpp"
#include "ui/canvas/scene_point.hpp"
#include "ui/text/refusals.hpp"
#include "ui/text/subject.hpp"
#include "ui/tools/connecting.hpp"
#include "ui/tools/tool_strip.hpp"

namespace sumpwright::ui::tools
{

namespace
{
constexpr auto aboveFloor = units::millimetres(100.0); // centre line of a run that starts from nothing

units::Elevation usualLevel(const plan::Plan& plan, plan::Point place)
{
    return plan::levelAt(*plan.floor, place) + aboveFloor;
}
} // namespace

PipeTool::PipeTool(canvas::PlanView& view) : PointingTool(view), m_strip(new ToolStrip(view))
{
    m_level = m_strip->addField(tr("&Level"), [this](const QString& text) { return levelEntered(text); });
    QStringList names{tr("usual size")};
    m_pipeIds = {std::string()};
    for (const auto& pipe : document().catalogue()->pipes()) {
        names.append(QString::fromStdString(pipe.name));
        m_pipeIds.push_back(pipe.id);
    }
    m_pipe = m_strip->addChoice(tr("Pi&pe"), names, [](int) {});
    m_service =
        m_strip->addChoice(tr("&Service"), {tr("as it connects"), tr("pressure run"), tr("gravity run")}, [](int) {});
}

void PipeTool::begin()
{
    m_wantedLevel.reset();
    showLevel();
    m_strip->placeAndShow();
}

void PipeTool::end()
{
    m_strip->hide();
    PointingTool::end();
}

QString PipeTool::hint() const
{
    if (!busy())
        return tr("Click where the run starts: a port, pump, tee, run or vessel. Ctrl suspends snapping.");
    return tr("Click corners; click a port, pump, tee or run to end there, Enter or double click to end here. "
              "L level, number length, Backspace back, Esc drops the run.");
}

Snapped PipeTool::meant(const canvas::CanvasPointer& pointer) const
{
    auto rules = rulesFor(pointer);
    rules.connections = true;
    rules.outlines = false;
    if (m_sketch.begun())
        rules.leftOut = m_startIds; // a run straight below its start would never be met
    const auto raw = canvas::toPlan(pointer.scene);
    auto found = snap(plan(), raw, rules);
    if (!m_sketch.begun() || !rules.on)
        return found;
    if (std::holds_alternative<plan::OntoRun>(found.target))
        return ontoStraight(found, raw, rules);
    if (found.connected())
        return found;
    const auto straight = m_sketch.aligned(raw, rules.reach);
    if (straight != raw) {
        const auto step = rules.toGrid ? rules.grid : units::millimetres(0.001);
        const auto off = straight - m_sketch.last();
        const auto none = units::metres(0.0);
        // Along x or y the free coordinate goes to the grid; aslant the place stays on the slant.
        if (off.x == none || off.y == none)
            found.at = {off.x == none ? straight.x : toStep(straight.x, step),
                        off.y == none ? straight.y : toStep(straight.y, step)};
        else
            found.at = straight;
        found.cue = canvas::SnapCue{canvas::CueKind::line, canvas::toScene(found.at), {}};
    }
    return found;
}

// Where a leg straight from the last corner meets the other run: straight down where that passes below it.
Snapped PipeTool::ontoStraight(const Snapped& found, plan::Point raw, const SnapRules& rules) const
{
    const auto metFrom = [&](plan::Point place, bool toGrid) {
        auto own = rules;
        own.toGrid = rules.toGrid && toGrid;
        const auto met = snap(plan(), place, own);
        return std::holds_alternative<plan::OntoRun>(met.target) ? std::optional(met) : std::nullopt;
    };
    const auto straight = m_sketch.aligned(raw, rules.reach);
    if (plan::distanceBetween(raw, m_sketch.last()) <= rules.reach) {
        const auto below = metFrom(m_sketch.last(), false);
        if (below && plan::distanceBetween(below->at, m_sketch.last()) < units::millimetres(1.0))
            return *below;
    }
    return metFrom(straight, straight == raw).value_or(found);
}

void PipeTool::startAt(const Snapped& found)
{
    plan::Target from = found.target;
    if (!found.connected())
        if (const auto* vessel = vesselAt(plan(), found.at))
            from = outletAt(*vessel, found.at, m_wantedLevel);
    plan::Vertex start;
    start.at = found.at;
    start.level = m_wantedLevel.value_or(usualLevel(plan(), found.at));
    if (const auto place = plan::placeOf(plan(), from))
        start = *place;
    m_startIds.clear();
    if (const auto* port = std::get_if<plan::AtPort>(&from))
        m_startIds = {port->port};
    else if (const auto* pump = std::get_if<plan::AtPump>(&from))
        m_startIds = {pump->pump};
    m_sketch.begin(from, start);
    if (m_wantedLevel)
        m_sketch.setLevel(*m_wantedLevel);
    showLevel();
    Q_EMIT hintChanged();
}

void PipeTool::pressed(const canvas::CanvasPointer& pointer)
{
    if (!mayEdit())
        return;
    auto found = meant(pointer);
    m_pressView = pointer.view;
    if (!m_sketch.begun()) {
        startAt(found);
    } else if (const auto typed = m_typed.length(0, view().figures())) {
        const auto off = found.at - m_sketch.last();
        const double length = units::inMetres(plan::distanceBetween(found.at, m_sketch.last()));
        if (length > 1e-6)
            m_sketch.addCorner({m_sketch.last().x + off.x * (units::inMetres(*typed) / length),
                                m_sketch.last().y + off.y * (units::inMetres(*typed) / length)});
        m_typed.clear();
        if (pointer.byKey)
            putCrosshair(m_sketch.last()); // the next leg starts there, not where the keys pointed
    } else if (found.connected()) {
        finishAt(found);
    } else if (pointer.byKey && plan::distanceBetween(found.at, m_sketch.last()) < units::millimetres(0.5)) {
        finishHere(); // Enter a second time on the same place
    } else {
        m_sketch.addCorner(found.at);
    }
    showSketch();
}

void PipeTool::released(const canvas::CanvasPointer& pointer)
{
    const bool dragged = m_pressView && m_sketch.vertices().size() == 1 && !pointer.byKey &&
                         (pointer.view - *m_pressView).manhattanLength() > 3 * dragPixels;
    m_pressView.reset();
    if (!dragged)
        return;
    const auto found = meant(pointer); // one drag from a port to another draws the whole run
    if (found.connected())
        finishAt(found);
    else
        m_sketch.addCorner(found.at);
    showSketch();
}

void PipeTool::doubleClick(const canvas::CanvasPointer&)
{
    if (m_sketch.begun())
        finishHere();
}

void PipeTool::finishAt(const Snapped& found)
{
    plan::Vertex end;
    end.at = found.at;
    if (const auto place = plan::placeOf(plan(), found.target))
        end = *place;
    commit(m_sketch.wish(found.target, end));
}

void PipeTool::finishHere()
{
    plan::Target to = plan::Nowhere{};
    if (const auto* vessel = vesselAt(plan(), m_sketch.last()); vessel && m_sketch.vertices().size() > 1)
        to = inletAt(*vessel, m_sketch.last());
    if (auto wish = m_sketch.wishEndingHere(to))
        commit(std::move(*wish));
}

std::optional<plan::Service> PipeTool::chosenService() const
{
    if (m_service->currentIndex() == 0)
        return std::nullopt;
    return m_service->currentIndex() == 1 ? plan::Service::pressure : plan::Service::gravity;
}

void PipeTool::commit(plan::RunWish wish)
{
    wish.service = chosenService().value_or(serviceBetween(plan(), wish.from, wish.to));
    wish.pipeId = m_pipeIds[static_cast<std::size_t>(qMax(0, m_pipe->currentIndex()))];
    if (wish.pipeId.empty())
        wish.pipeId = usualPipe(*document().catalogue(), wish.service);
    const base::Id drawn{plan().nextId};
    if (!document().commit(plan::drawRun(wish)))
        return; // refused: the sketch stays, to be mended
    giveBack();
    document().select({drawn});
}

void PipeTool::moved(const canvas::CanvasPointer&) { showSketch(); }

void PipeTool::showSketch()
{
    const auto found = meant(pointer());
    announce(found.cue);
    canvas::Overlay overlay;
    overlay.cue = found.cue;
    for (const auto& vertex : m_sketch.vertices())
        overlay.sketch.append(canvas::toScene(vertex.at));
    if (m_sketch.begun()) {
        overlay.sketch.append(canvas::toScene(found.at));
        overlay.sketchWidth = 32.0;
        const auto figures = view().figures();
        overlay.readOut =
            m_typed.empty() ? figures.text(plan::distanceBetween(found.at, m_sketch.last())) : m_typed.text();
        overlay.readOut += QStringLiteral("   ") + tr("level %1").arg(figures.text(m_sketch.level()));
        overlay.readOutAt = canvas::toScene(found.at);
    }
    show(std::move(overlay));
}

void PipeTool::jump(int step)
{
    const auto all = connectionsOf(plan());
    if (all.empty())
        return;
    const auto count = static_cast<int>(all.size());
    m_jump = m_jump < 0 ? (step > 0 ? 0 : count - 1) : ((m_jump + step) % count + count) % count;
    const auto& there = all[static_cast<std::size_t>(m_jump)];
    putCrosshair(there.at);
    document().say(there.name);
}

bool PipeTool::wantsKey(const QKeyEvent& event) const
{
    return PointingTool::wantsKey(event) || event.key() == Qt::Key_L || event.key() == Qt::Key_J;
}

bool PipeTool::otherKey(QKeyEvent& event)
{
    const bool plain = !(event.modifiers() & (Qt::ControlModifier | Qt::AltModifier));
    if (plain && event.key() == Qt::Key_L && m_typed.empty()) {
        m_level->setFocus();
        m_level->selectAll();
        return true;
    }
    if (plain && event.key() == Qt::Key_J) {
        jump(event.modifiers() & Qt::ShiftModifier ? -1 : 1);
        return true;
    }
    if (!m_sketch.begun())
        return false;
    if (m_typed.key(event)) {
        showSketch();
        return true;
    }
    if (event.key() == Qt::Key_Backspace) {
        if (!m_sketch.dropLast())
            giveBack();
        showLevel();
        showSketch();
        return true;
    }
    const bool enter = event.key() == Qt::Key_Return || event.key() == Qt::Key_Enter;
    if (enter && !crosshair()) {
        if (m_typed.empty())
            finishHere();
        else
            pressed(pointer());
        return true;
    }
    return false;
}

void PipeTool::giveBack()
{
    m_sketch.clear();
    m_typed.clear();
    m_pressView.reset();
    m_jump = -1;
    show({});
    Q_EMIT hintChanged();
}

QString PipeTool::levelEntered(const QString& text)
{
    const auto figures = view().figures();
    units::Reading reading;
    reading.bareUnit = figures.system == units::UnitSystem::us ? "ft" : "m";
    reading.typed = figures.system;
    const auto level = units::parse<units::Elevation>(text.toStdString(), figures.numbers, reading);
    if (!level)
        return text::sentenceOf(level.refusal(), tr("Level"));
    m_wantedLevel = *level;
    m_sketch.setLevel(*level);
    showLevel();
    showSketch();
    return {};
}

void PipeTool::showLevel()
{
    if (m_sketch.begun())
        m_level->setText(view().figures().text(m_sketch.level()));
    else
        m_level->setText(m_wantedLevel ? view().figures().text(*m_wantedLevel) : QString());
    m_level->setPlaceholderText(tr("of the start"));
}

} // namespace sumpwright::ui::tools

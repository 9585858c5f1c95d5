#include "ui/tools/pipe_tool.hpp"

#include <QComboBox>
#include <QKeyEvent>
#include <QLineEdit>

#include "core/units/parse.hpp"
#include "ui/canvas/plan_view.hpp"
#include "ui/canvas/scene_point.hpp"
#include "ui/text/names.hpp"
#include "ui/text/refusals.hpp"
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
    m_pipe = m_strip->addChoice(tr("Pi&pe"), {}, [](int) {});
    offerPipes();
    m_service =
        m_strip->addChoice(tr("&Service"), {tr("as it connects"), tr("pressure run"), tr("gravity run")}, [](int) {});
}

// The catalogue with the own parts of the plan; what was chosen stays chosen.
void PipeTool::offerPipes()
{
    if (m_tables == document().catalogue())
        return;
    const QString chosen = m_pipe->currentText();
    m_tables = document().catalogue();
    QStringList names{tr("usual size")};
    m_pipeIds = {std::string()};
    for (const auto& pipe : m_tables->pipes()) {
        names.append(text::partName(pipe.name, pipe.provenance.basis));
        m_pipeIds.push_back(pipe.id);
    }
    m_pipe->clear();
    m_pipe->addItems(names);
    m_pipe->setCurrentIndex(std::max(m_pipe->findText(chosen), 0));
}

void PipeTool::begin()
{
    offerPipes();
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
    noteStart(from);
    m_sketch.begin(from, start);
    if (m_wantedLevel)
        m_sketch.setLevel(*m_wantedLevel);
    showLevel();
    Q_EMIT hintChanged();
}

void PipeTool::addTyped(const canvas::CanvasPointer& pointer)
{
    if (!m_typed.length(0, view().figures()))
        return document().say(tr("“%1” is no length: type it as 1.85 or 1850 mm.").arg(m_typed.text()));
    const auto at = meant(pointer).at;
    if (plan::distanceBetween(at, m_sketch.last()) < units::millimetres(0.5))
        return document().say(tr("Point to the side the leg goes to first."));
    m_sketch.addCorner(at);
    m_typed.clear();
    if (pointer.byKey)
        putCrosshair(m_sketch.last()); // the next leg starts there, not where the keys pointed
}

void PipeTool::pressed(const canvas::CanvasPointer& pointer)
{
    if (!mayEdit())
        return;
    const auto found = meant(pointer);
    m_pressView = pointer.view;
    if (!m_sketch.begun()) {
        startAt(found);
    } else if (!m_typed.empty()) {
        addTyped(pointer);
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
    canvas::Overlay overlay;
    overlay.cue = cueOf(found);
    announce(overlay.cue);
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

bool PipeTool::ownLetter(int key) const { return key == Qt::Key_L || key == Qt::Key_J; }

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

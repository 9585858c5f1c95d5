#include "ui/tools/select_tool.hpp"

#include <QKeyEvent>

#include <algorithm>

#include "core/plan/edits/delete.hpp"
#include "core/plan/edits/move.hpp"
#include "core/plan/edits/vertex.hpp"
#include "ui/canvas/canvas_settings.hpp"
#include "ui/canvas/plan_scene.hpp"
#include "ui/canvas/plan_view.hpp"
#include "ui/canvas/run_item.hpp"
#include "ui/canvas/scene_point.hpp"
#include "ui/text/subject.hpp"
#include "ui/tools/level_editor.hpp"

namespace sumpwright::ui::tools
{

namespace
{
bool contains(const std::vector<base::Id>& ids, base::Id id)
{
    return std::find(ids.begin(), ids.end(), id) != ids.end();
}
} // namespace

SelectTool::SelectTool(canvas::PlanView& view) : Tool(view), m_levels(new LevelEditor(view))
{
    connect(m_levels, &LevelEditor::changed, this, [this] { planChanged(); });
}

SelectTool::~SelectTool() = default;

QString SelectTool::hint() const
{
    if (chosenRun() && !document().readOnly())
        return tr("Drag a vertex to move it; double click it, or press L, to type its level. Arrows nudge the run.");
    return tr("Click selects, Ctrl adds, Shift toggles; drag moves, Ctrl held suspends snapping; arrows nudge.");
}

void SelectTool::end()
{
    conclude();
    view().setOverlay({});
}

bool SelectTool::busy() const { return m_press || m_levels->isOpen(); }

void SelectTool::conclude()
{
    m_levels->leave();
    giveBack();
}

bool SelectTool::wantsKey(const QKeyEvent&) const { return m_press && m_press->dragged && m_press->gesture; }

std::optional<canvas::Handle> SelectTool::handleAt(QPointF scene) const
{
    std::optional<canvas::Handle> nearest;
    double best = 0.0;
    for (const auto& handle : view().overlay().handles) {
        const QPointF off = handle.at - scene;
        const double distance = QPointF::dotProduct(off, off);
        if (canvas::targetOf(handle, view().pixel()).contains(scene) && (!nearest || distance < best)) {
            nearest = handle;
            best = distance;
        }
    }
    return nearest;
}

void SelectTool::press(const canvas::CanvasPointer& pointer)
{
    m_levels->leave();
    Press press;
    press.pointer = pointer;
    press.before = document().selection();
    m_last = pointer;
    m_former = {};
    const bool changesSelection = pointer.modifiers & (Qt::ControlModifier | Qt::ShiftModifier);
    const auto handle = changesSelection ? std::nullopt : handleAt(pointer.scene);
    if (handle && document().selection().size() == 1) {
        press.gesture = gestureOf(plan(), document().selection().front(), *handle);
        press.grip = pointer.scene - handle->at;
        press.element = document().selection().front();
    } else if (!changesSelection && levelLabelAt(pointer.scene)) {
        press.element = document().selection().front();
        press.plainClick = false; // the letters belong to the run
    } else {
        pick(pointer, press);
    }
    m_press = std::move(press);
}

void SelectTool::pick(const canvas::CanvasPointer& pointer, Press& press)
{
    const auto found = view().planScene().at(pointer.scene);
    auto chosen = document().selection();
    const bool adds = pointer.modifiers & Qt::ControlModifier;
    const bool toggles = pointer.modifiers & Qt::ShiftModifier;
    press.plainClick = !adds && !toggles;
    if (found.empty()) {
        if (press.plainClick)
            document().select({});
        return;
    }
    // What is selected already is grabbed even where something else lies on top of it.
    const auto held = std::find_if(found.begin(), found.end(), [&](base::Id id) { return contains(chosen, id); });
    const base::Id hit = press.plainClick && held != found.end() ? *held : found.front();
    if (toggles && contains(chosen, hit)) {
        std::erase(chosen, hit);
        document().select(chosen);
        press.element = hit;
        return;
    }
    if (!contains(chosen, hit)) {
        if (press.plainClick)
            chosen.clear();
        chosen.push_back(hit);
        document().select(chosen);
    }
    press.element = hit;
    press.gesture = moveGesture(document().selection(), hit, canvas::toPlan(pointer.scene));
}

void SelectTool::move(const canvas::CanvasPointer& pointer)
{
    m_last = pointer;
    if (m_press && !(pointer.buttons & Qt::LeftButton))
        giveBack(); // let go where nobody saw it
    if (!m_press || !(pointer.buttons & Qt::LeftButton)) {
        const auto handle = handleAt(pointer.scene);
        m_cursor = handle ? (handle->kind == canvas::HandleKind::turn ? Qt::PointingHandCursor : Qt::SizeAllCursor)
                          : Qt::ArrowCursor;
        return;
    }
    if (!m_press->dragged && (pointer.view - m_press->pointer.view).manhattanLength() <= dragPixels)
        return;
    if (m_press->gesture) {
        if (!m_press->dragged && !mayEdit()) {
            giveBack();
            return;
        }
        m_press->dragged = true;
        dragGesture(pointer);
    } else if (!m_press->element.valid()) {
        m_press->dragged = true;
        dragMarquee(pointer);
    }
}

void SelectTool::dragGesture(const canvas::CanvasPointer& pointer)
{
    const auto raw = canvas::toPlan(pointer.scene - m_press->grip);
    const GestureSpot spot{plan(), raw, rulesFor(pointer), view().figures(), view().pixel()};
    canvas::Overlay overlay;
    auto edit = m_press->gesture->editAt(spot, overlay);
    if (!m_press->gesture->typed().empty()) {
        overlay.readOut = m_press->gesture->typed().text();
        overlay.readOutAt = pointer.scene;
    }
    announce(overlay.cue);
    if (!edit) {
        m_press->edit.reset();
        document().dropPreview();
    } else if (const auto refusal = document().preview(*edit)) {
        document().say(QString::fromStdString(refusal->what)); // the last good place stays
    } else {
        m_press->edit = std::move(edit);
    }
    view().setOverlay(std::move(overlay));
}

void SelectTool::dragMarquee(const canvas::CanvasPointer& pointer)
{
    canvas::Overlay overlay;
    overlay.marquee = QRectF(m_press->pointer.scene, pointer.scene).normalized();
    overlay.marqueeTouching = view().settings().marqueeTouching();
    auto chosen = m_press->plainClick ? std::vector<base::Id>() : m_press->before;
    const bool toggles = m_press->pointer.modifiers & Qt::ShiftModifier;
    for (const auto id : view().planScene().within(*overlay.marquee, overlay.marqueeTouching)) {
        if (!contains(chosen, id))
            chosen.push_back(id);
        else if (toggles)
            std::erase(chosen, id);
    }
    document().select(chosen);
    view().setOverlay(std::move(overlay));
}

void SelectTool::release(const canvas::CanvasPointer& pointer)
{
    if (!m_press)
        return;
    if (m_press->dragged && m_press->gesture && takenOut(pointer))
        return giveBack();
    const Press press = std::move(*m_press);
    m_press.reset();
    if (press.edit)
        document().commit(*press.edit);
    else if (press.dragged)
        document().dropPreview();
    else
        clicked(pointer, press);
    planChanged();
}

void SelectTool::clicked(const canvas::CanvasPointer& pointer, const Press& press)
{
    if (!press.plainClick || !press.element.valid())
        return;
    const bool wasAlone = press.before.size() == 1 && press.before.front() == press.element;
    if (!wasAlone) {
        if (document().selection().size() > 1)
            document().select({press.element});
        return;
    }
    // A second click on the same place: what lies below.
    const auto found = view().planScene().at(pointer.scene);
    const auto at = std::find(found.begin(), found.end(), press.element);
    if (found.size() > 1 && at != found.end()) {
        m_former = press.element;
        document().select({at + 1 == found.end() ? found.front() : *(at + 1)});
    }
}

void SelectTool::doubleClick(const canvas::CanvasPointer& pointer)
{
    takeRunBack(pointer.scene);
    if (const auto vertex = levelAt(pointer.scene))
        return m_levels->open(document().selection().front(), *vertex);
    const auto found = view().planScene().at(pointer.scene);
    if (found.empty()) {
        press(pointer); // a press soon after a click elsewhere: a marquee may follow
        return;
    }
    // Of what lies here: what was selected before the double click began, else what is selected, else the topmost.
    base::Id id = found.front();
    if (const auto& chosen = document().selection(); !chosen.empty() && contains(found, chosen.front()))
        id = chosen.front();
    if (contains(found, m_former))
        id = m_former;
    m_former = {};
    if (!document().isSelected(id))
        document().select({id});
    Q_EMIT view().elementActivated(id);
    // The button is still down: a drag that follows is a drag like any other.
    Press press;
    press.pointer = pointer;
    press.before = document().selection();
    press.element = id;
    press.plainClick = false; // its release is no click: it would pick what lies below
    press.gesture = moveGesture(document().selection(), id, canvas::toPlan(pointer.scene));
    m_press = std::move(press);
}

void SelectTool::planChanged()
{
    m_levels->followPlan();
    if (!m_press || !m_press->dragged)
        showHandles();
    if (const bool run = chosenRun(); run != m_runChosen) {
        m_runChosen = run;
        Q_EMIT hintChanged();
    }
}

void SelectTool::showHandles()
{
    canvas::Overlay overlay;
    if (document().selection().size() == 1 && !document().readOnly())
        overlay.handles = handlesOf(document().shown(), document().selection().front(), view().pixel());
    if (m_levels->isOpen())
        overlay.cue = canvas::SnapCue{canvas::CueKind::vertex, m_levels->place(), {}};
    view().setOverlay(std::move(overlay));
}

void SelectTool::giveBack()
{
    if (!m_press)
        return;
    const bool marquee = m_press->dragged && !m_press->gesture;
    const auto before = m_press->before;
    m_press.reset();
    document().dropPreview();
    if (marquee)
        document().select(before);
    planChanged();
}

} // namespace sumpwright::ui::tools

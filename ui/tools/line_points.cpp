#include "ui/tools/line_points.hpp"

#include <QKeyEvent>

#include <cmath>

#include "ui/canvas/plan_view.hpp"
#include "ui/canvas/scene_point.hpp"

namespace sumpwright::ui::tools
{

plan::Point straightFrom(plan::Point from, plan::Point raw, const SnapRules& rules)
{
    const auto off = [](units::Length a, units::Length b) { return std::abs(units::inMetres(a - b)); };
    const auto near = [&](units::Length a, units::Length b) { return off(a, b) <= units::inMetres(rules.reach); };
    const auto step = rules.toGrid ? rules.grid : units::millimetres(0.001);
    // Near the start both are: the line goes where the place lies further off.
    const bool upright = off(raw.x, from.x) <= off(raw.y, from.y);
    if (upright && near(raw.x, from.x))
        return {from.x, toStep(raw.y, step)};
    if (!upright && near(raw.y, from.y))
        return {toStep(raw.x, step), from.y};
    return raw;
}

plan::Point atDistance(plan::Point from, plan::Point towards, units::Length distance)
{
    const double whole = units::inMetres(plan::distanceBetween(from, towards));
    if (whole < 1e-9)
        return from;
    const double share = units::inMetres(distance) / whole;
    return {from.x + (towards.x - from.x) * share, from.y + (towards.y - from.y) * share};
}

Snapped LinePointsTool::meant(const canvas::CanvasPointer& pointer) const
{
    auto rules = rulesFor(pointer);
    const auto raw = canvas::toPlan(pointer.scene);
    auto found = snap(plan(), raw, rules);
    if (onStart(found)) { // the line's own start is no place for it to end
        rules.outlines = false;
        found = snap(plan(), raw, rules);
    }
    const bool onGrid = found.cue && found.cue->kind == canvas::CueKind::grid;
    if (m_from && rules.on && (onGrid || !found.cue)) {
        found.at = straightFrom(*m_from, found.at, rules);
        if (found.cue)
            found.cue->at = canvas::toScene(found.at);
    }
    return found;
}

bool LinePointsTool::onStart(const Snapped& found) const
{
    return m_from && plan::distanceBetween(*m_from, found.at) < units::millimetres(1.0);
}

// A typed length goes towards the place meant; where that is the start itself, towards the pointer.
plan::Point LinePointsTool::second(const Snapped& found) const
{
    const auto typed = m_typed.length(0, view().figures());
    if (!typed)
        return found.at;
    return atDistance(*m_from, onStart(found) ? canvas::toPlan(pointer().scene) : found.at, *typed);
}

void LinePointsTool::pressed(const canvas::CanvasPointer& pointer)
{
    if (changesPlan() && !mayEdit())
        return;
    const auto found = meant(pointer);
    m_pressView = pointer.view;
    m_firstPress = !m_from;
    if (m_from) {
        const auto start = *m_from;
        const auto end = second(found);
        giveBack();
        lineDrawn(start, end, pointer);
        return;
    }
    m_from = found.at;
    refresh();
    Q_EMIT hintChanged();
}

void LinePointsTool::released(const canvas::CanvasPointer& pointer)
{
    const bool dragged =
        m_firstPress && m_from && !pointer.byKey && (pointer.view - m_pressView).manhattanLength() > 2 * dragPixels;
    m_firstPress = false;
    if (!dragged)
        return;
    if (takenOut(pointer))
        giveBack();
    else
        pressed(pointer);
}

void LinePointsTool::moved(const canvas::CanvasPointer&) { refresh(); }

void LinePointsTool::refresh()
{
    const auto found = meant(pointer());
    announce(found.cue);
    canvas::Overlay overlay;
    overlay.cue = found.cue;
    if (m_from) {
        showLine(*m_from, second(found), overlay);
        if (!m_typed.empty()) {
            overlay.readOut = m_typed.text();
            overlay.readOutAt = canvas::toScene(found.at);
        }
    }
    show(std::move(overlay));
}

bool LinePointsTool::otherKey(QKeyEvent& event)
{
    if (!m_from)
        return false;
    if (m_typed.key(event)) {
        refresh();
        return true;
    }
    const bool enter = event.key() == Qt::Key_Return || event.key() == Qt::Key_Enter;
    if (enter && !m_typed.empty()) {
        pressed(pointer());
        return true;
    }
    return false;
}

void LinePointsTool::giveBack()
{
    m_from.reset();
    m_firstPress = false;
    m_typed.clear();
    show({});
    Q_EMIT hintChanged();
}

} // namespace sumpwright::ui::tools

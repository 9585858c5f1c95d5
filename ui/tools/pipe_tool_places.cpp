// PipeTool: the places it offers - what a click or the crosshair means, what is left out, and the walk over
// connections.
#include <algorithm>

#include "ui/canvas/plan_view.hpp"
#include "ui/canvas/scene_point.hpp"
#include "ui/tools/connecting.hpp"
#include "ui/tools/line_points.hpp"
#include "ui/tools/pipe_tool.hpp"

namespace sumpwright::ui::tools
{

Snapped PipeTool::meant(const canvas::CanvasPointer& pointer) const
{
    auto rules = rulesFor(pointer);
    rules.connections = true;
    rules.outlines = false;
    const auto raw = canvas::toPlan(pointer.scene);
    if (const auto typed = m_typed.length(0, view().figures()); typed && m_sketch.begun())
        return atTyped(*typed, raw, rules);
    auto found = offered(raw, rules);
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

// What is there but the start itself, which would draw back every leg shorter than the reach, and pipes that no water
// of this run is led into.
Snapped PipeTool::offered(plan::Point raw, SnapRules rules) const
{
    if (!m_sketch.begun())
        return snap(plan(), raw, rules);
    rules.leftOut.insert(rules.leftOut.end(), m_startIds.begin(), m_startIds.end());
    const auto chosen = chosenService();
    if (const auto service = chosen ? chosen : serviceFrom(plan(), m_sketch.from())) {
        const auto others = ofOtherService(plan(), *service);
        rules.leftOut.insert(rules.leftOut.end(), others.begin(), others.end());
    }
    const auto start = m_sketch.vertices().front().at;
    for (;;) {
        auto found = snap(plan(), raw, rules);
        const auto* onto = std::get_if<plan::OntoRun>(&found.target);
        const bool back = onto && std::count(m_startRuns.begin(), m_startRuns.end(), onto->run) > 0 &&
                          plan::distanceBetween(found.at, start) <= rules.reach;
        if (!back)
            return found;
        rules.leftOut.push_back(onto->run);
    }
}

// The typed length from the last corner, straight where the pointer lies nearly so; led to nothing.
Snapped PipeTool::atTyped(units::Length length, plan::Point raw, const SnapRules& rules) const
{
    auto towards = raw;
    if (rules.on)
        towards = m_sketch.aligned(raw, rules.reach);
    if (towards == raw && rules.toGrid && toGrid(raw, rules.grid) != m_sketch.last())
        towards = toGrid(raw, rules.grid);
    const auto at = atDistance(m_sketch.last(), towards, length);
    return {at, canvas::SnapCue{canvas::CueKind::line, canvas::toScene(at), {}}};
}

// Where a leg straight from the last corner meets the other run: straight down where that passes below it.
Snapped PipeTool::ontoStraight(const Snapped& found, plan::Point raw, const SnapRules& rules) const
{
    const auto metFrom = [&](plan::Point place, bool toGrid) {
        auto own = rules;
        own.toGrid = rules.toGrid && toGrid;
        const auto met = offered(place, own);
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

void PipeTool::noteStart(const plan::Target& from)
{
    m_startIds.clear();
    m_startRuns.clear();
    if (const auto* port = std::get_if<plan::AtPort>(&from))
        m_startIds = {port->port};
    else if (const auto* pump = std::get_if<plan::AtPump>(&from))
        m_startIds = {pump->pump};
    else if (const auto* onto = std::get_if<plan::OntoRun>(&from))
        m_startRuns = {onto->run};
    const auto* tee = std::get_if<plan::AtTee>(&from);
    if (!tee)
        return;
    m_startIds = {tee->tee};
    for (const auto& run : plan().runs)
        for (const auto* end : {&run->from, &run->to})
            if (const auto* at = std::get_if<plan::TeeEnd>(end); at && at->tee == tee->tee)
                m_startRuns.push_back(run->id);
}

// Of the connections the one a crosshair stands beside. None while it stands on one.
std::optional<int> PipeTool::nearCrosshair(const std::vector<Connection>& all) const
{
    if (!crosshair())
        return std::nullopt;
    std::optional<int> nearest;
    auto best = canvas::lengthFromScene(reachPixels * view().pixel());
    for (std::size_t i = 0; i < all.size(); ++i) {
        const auto distance = plan::distanceBetween(all[i].at, *crosshair());
        if (distance <= keyReach)
            return std::nullopt;
        if (distance < best) {
            best = distance;
            nearest = static_cast<int>(i);
        }
    }
    return nearest;
}

// The crosshair is led to nothing; what it stands beside is one key away.
std::optional<canvas::SnapCue> PipeTool::cueOf(const Snapped& found) const
{
    if (!pointer().byKey || found.connected() || !m_typed.empty())
        return found.cue;
    const auto all = connectionsOf(plan());
    const auto near = nearCrosshair(all);
    if (!near)
        return found.cue;
    const auto& there = all[static_cast<std::size_t>(*near)];
    return canvas::SnapCue{canvas::CueKind::port, canvas::toScene(there.at), tr("J goes to %1").arg(there.name)};
}

void PipeTool::jump(int step)
{
    const auto all = connectionsOf(plan());
    if (all.empty())
        return;
    const auto count = static_cast<int>(all.size());
    if (const auto near = nearCrosshair(all))
        m_jump = *near;
    else
        m_jump = m_jump < 0 ? (step > 0 ? 0 : count - 1) : ((m_jump + step) % count + count) % count;
    const auto& there = all[static_cast<std::size_t>(m_jump)];
    putCrosshair(there.at);
    document().say(there.name);
}

} // namespace sumpwright::ui::tools

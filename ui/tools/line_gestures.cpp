// Dragging a vertex of a run, an end of a wall, door or dimension line; and which handles an element offers.
#include <QObject>

#include <algorithm>
#include <cmath>

#include "core/plan/edits/annotation.hpp"
#include "core/plan/edits/draw_run.hpp"
#include "core/plan/edits/fixture.hpp"
#include "core/plan/edits/sequence.hpp"
#include "core/plan/edits/vertex.hpp"
#include "ui/canvas/dimension_item.hpp"
#include "ui/canvas/scene_point.hpp"
#include "ui/tools/gesture.hpp"
#include "ui/tools/line_points.hpp"

namespace sumpwright::ui::tools
{

std::vector<canvas::Handle> vesselHandles(const plan::Vessel& vessel, double pixel);

namespace
{
bool sameplace(plan::Point a, plan::Point b) { return plan::distanceBetween(a, b) < units::millimetres(0.5); }

class VertexGesture final : public Gesture
{
public:
    VertexGesture(base::Id run, std::size_t vertex) : m_run(run), m_vertex(vertex) {}

    std::optional<plan::Edit> editAt(const GestureSpot& spot, canvas::Overlay& overlay) override
    {
        const auto* run = spot.plan.runs.find(m_run);
        if (!run || m_vertex >= run->vertices.size())
            return std::nullopt;
        const auto side = sideOf(*run);
        auto rules = spot.rules;
        rules.leftOut = {m_run};
        rules.connections = side.has_value();
        rules.outlines = false;
        auto found = snap(spot.plan, spot.raw, rules);
        if (!found.connected() && rules.on)
            found.at = inLine(*run, found.at, rules);
        if (found.cue)
            found.cue->at = canvas::toScene(found.at);
        overlay.cue = found.cue;
        if (side)
            return endEdit(*run, *side, found);
        return plan::moveVertex(m_run, m_vertex, found.at);
    }

private:
    // The side this vertex ends, vertical legs included.
    std::optional<plan::RunSide> sideOf(const plan::Run& run) const
    {
        const auto here = run.vertices[m_vertex].at;
        const auto until = run.vertices.begin() + static_cast<std::ptrdiff_t>(m_vertex) + 1;
        const auto same = [here](const plan::Vertex& vertex) { return sameplace(vertex.at, here); };
        if (std::all_of(run.vertices.begin(), until, same))
            return plan::RunSide::from;
        if (std::all_of(until - 1, run.vertices.end(), same))
            return plan::RunSide::to;
        return std::nullopt;
    }

    plan::Point inLine(const plan::Run& run, plan::Point at, const SnapRules& rules) const
    {
        const auto here = run.vertices[m_vertex].at;
        for (const auto& other : run.vertices) {
            if (sameplace(other.at, here))
                continue;
            at = straightFrom(other.at, at, rules);
        }
        return at;
    }

    std::optional<plan::Edit> endEdit(const plan::Run& run, plan::RunSide side, const Snapped& found) const
    {
        if (found.connected())
            return plan::connectEnd(m_run, side, found.target);
        auto move = plan::moveVertex(m_run, m_vertex, found.at);
        if (std::holds_alternative<plan::OpenEnd>(plan::endOf(run, side)))
            return move;
        return plan::inSequence(move.intent, {plan::detachEnd(m_run, side), move});
    }

    base::Id m_run;
    std::size_t m_vertex;
};

class EndGesture final : public Gesture
{
public:
    EndGesture(base::Id element, int end) : m_element(element), m_end(end) {}

    std::optional<plan::Edit> editAt(const GestureSpot& spot, canvas::Overlay& overlay) override
    {
        auto rules = spot.rules;
        rules.leftOut = {m_element};
        if (const auto* line = spot.plan.dimensions.find(m_element); line && m_end == 2)
            return plan::setDimensionOffset({m_element}, offsetTo(*line, spot));
        const auto [from, to] = ends(spot.plan);
        auto found = snap(spot.plan, spot.raw, rules);
        const auto other = m_end == 0 ? to : from;
        if (rules.on)
            found.at = straightFrom(other, found.at, rules);
        if (const auto typed = typedLength(0, spot))
            found.at = atDistance(other, found.at, *typed);
        if (found.cue)
            found.cue->at = canvas::toScene(found.at);
        overlay.cue = found.cue;
        overlay.readOut = typed().empty() ? spot.figures.text(plan::distanceBetween(other, found.at)) : typed().text();
        overlay.readOutAt = canvas::toScene(found.at);
        const auto newFrom = m_end == 0 ? found.at : from;
        const auto newTo = m_end == 0 ? to : found.at;
        if (spot.plan.fixtures.find(m_element))
            return plan::setFixtureEnds(m_element, newFrom, newTo);
        return plan::setDimensionEnds(m_element, newFrom, newTo);
    }

private:
    std::pair<plan::Point, plan::Point> ends(const plan::Plan& plan) const
    {
        if (const auto* fixture = plan.fixtures.find(m_element))
            return {fixture->from, fixture->to};
        if (const auto* line = plan.dimensions.find(m_element))
            return {line->from, line->to};
        return {};
    }

    static units::Length offsetTo(const plan::DimensionLine& line, const GestureSpot& spot)
    {
        const auto along = line.to - line.from;
        const auto off = spot.raw - line.from;
        const double length = units::inMetres(plan::distanceBetween(line.from, line.to));
        if (length < 1e-9)
            return line.offset;
        const double area =
            units::inMetres(along.x) * units::inMetres(off.y) - units::inMetres(along.y) * units::inMetres(off.x);
        const auto offset = units::metres(area / length);
        return spot.rules.on ? toStep(offset, units::millimetres(50.0)) : offset;
    }

    base::Id m_element;
    int m_end;
};

std::vector<canvas::Handle> runHandles(const plan::Run& run, double pixel)
{
    std::vector<canvas::Handle> handles;
    for (std::size_t i = 0; i < run.vertices.size(); ++i) {
        const QPointF at = canvas::toScene(run.vertices[i].at);
        const bool free = std::all_of(handles.begin(), handles.end(), [&](const canvas::Handle& other) {
            return !canvas::targetOf(other, pixel).contains(at);
        });
        if (free || i + 1 == run.vertices.size()) {
            if (!free)
                handles.pop_back(); // an end matters more than a corner close to it
            handles.push_back({canvas::HandleKind::vertex, static_cast<int>(i), at, 0.0, QObject::tr("vertex")});
        }
    }
    return handles;
}
} // namespace

std::unique_ptr<Gesture> vertexGesture(base::Id run, std::size_t vertex)
{
    return std::make_unique<VertexGesture>(run, vertex);
}

std::unique_ptr<Gesture> endGesture(base::Id element, int end) { return std::make_unique<EndGesture>(element, end); }

std::vector<canvas::Handle> handlesOf(const plan::Plan& plan, base::Id element, double pixel)
{
    using canvas::Handle;
    using canvas::HandleKind;
    if (const auto* vessel = plan.vessels.find(element))
        return vesselHandles(*vessel, pixel);
    if (const auto* run = plan.runs.find(element))
        return runHandles(*run, pixel);
    const auto ends = [](plan::Point from, plan::Point to) {
        return std::vector<Handle>{{HandleKind::vertex, 0, canvas::toScene(from), 0.0, QObject::tr("end")},
                                   {HandleKind::vertex, 1, canvas::toScene(to), 0.0, QObject::tr("end")}};
    };
    if (const auto* fixture = plan.fixtures.find(element))
        return sameplace(fixture->from, fixture->to) ? std::vector<Handle>() : ends(fixture->from, fixture->to);
    if (const auto* line = plan.dimensions.find(element)) {
        auto handles = ends(line->from, line->to);
        const auto moved = canvas::dimensionLine(canvas::toScene(line->from), canvas::toScene(line->to),
                                                 canvas::toScene(line->offset));
        handles.push_back({HandleKind::side, 2, moved.center(), 0.0, QObject::tr("offset")});
        return handles;
    }
    return {};
}

std::unique_ptr<Gesture> gestureOf(const plan::Plan& plan, base::Id element, const canvas::Handle& handle)
{
    if (plan.vessels.find(element))
        return handle.kind == canvas::HandleKind::turn ? turnGesture(element) : resizeGesture(element, handle.index);
    if (plan.runs.find(element))
        return vertexGesture(element, static_cast<std::size_t>(handle.index));
    return endGesture(element, handle.index);
}

} // namespace sumpwright::ui::tools

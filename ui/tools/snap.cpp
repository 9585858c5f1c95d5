#include "ui/tools/snap.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/plan/edits/move.hpp"
#include "ui/canvas/scene_point.hpp"
#include "ui/text/subject.hpp"

namespace sumpwright::ui::tools
{

namespace
{
using canvas::CueKind;

class Words
{
    Q_DECLARE_TR_FUNCTIONS(Snap)
};

double metresBetween(plan::Point a, plan::Point b) { return units::inMetres(plan::distanceBetween(a, b)); }

plan::Point nearestOn(plan::Point a, plan::Point b, plan::Point place, double* share = nullptr)
{
    const double dx = units::inMetres(b.x - a.x);
    const double dy = units::inMetres(b.y - a.y);
    const double square = dx * dx + dy * dy;
    const double t =
        square > 0.0
            ? std::clamp((units::inMetres(place.x - a.x) * dx + units::inMetres(place.y - a.y) * dy) / square, 0.0, 1.0)
            : 0.0;
    if (share)
        *share = t;
    return {a.x + units::metres(dx * t), a.y + units::metres(dy * t)};
}

// Keeps the nearest candidate within reach.
class Nearest
{
public:
    Nearest(plan::Point raw, units::Length reach) : m_raw(raw), m_best(units::inMetres(reach)) {}

    template <class MakeName> void offer(plan::Point at, CueKind kind, const plan::Target& target, MakeName&& makeName)
    {
        const double distance = metresBetween(at, m_raw);
        if (distance > m_best)
            return;
        m_best = distance;
        m_found = Snapped{at, canvas::SnapCue{kind, canvas::toScene(at), makeName()}, target};
    }
    const std::optional<Snapped>& found() const { return m_found; }

private:
    plan::Point m_raw;
    double m_best;
    std::optional<Snapped> m_found;
};

base::Id idOf(const plan::Target& target)
{
    if (const auto* port = std::get_if<plan::AtPort>(&target))
        return port->port;
    if (const auto* pump = std::get_if<plan::AtPump>(&target))
        return pump->pump;
    if (const auto* tee = std::get_if<plan::AtTee>(&target))
        return tee->tee;
    return {};
}

// The foot of a place on a leg; on one along x or y it goes to the grid where that is within reach.
plan::Point footOn(plan::Point a, plan::Point b, plan::Point raw, const SnapRules& rules, double& share)
{
    const auto foot = nearestOn(a, b, raw, &share);
    const bool alongX = std::abs(units::inMetres(a.y - b.y)) < 1e-6;
    const bool alongY = std::abs(units::inMetres(a.x - b.x)) < 1e-6;
    if (!rules.toGrid || alongX == alongY)
        return foot;
    auto stepped = foot;
    (alongX ? stepped.x : stepped.y) = toStep(alongX ? foot.x : foot.y, rules.grid);
    double steppedShare = 0.0;
    const auto at = nearestOn(a, b, stepped, &steppedShare);
    if (metresBetween(at, raw) > units::inMetres(rules.reach))
        return foot;
    share = steppedShare;
    return at;
}

bool leftOut(const SnapRules& rules, base::Id id)
{
    return std::find(rules.leftOut.begin(), rules.leftOut.end(), id) != rules.leftOut.end();
}

std::optional<Snapped> atConnection(const plan::Plan& plan, plan::Point raw, const SnapRules& rules)
{
    Nearest nearest(raw, rules.reach);
    for (const auto& connection : connectionsOf(plan)) {
        if (leftOut(rules, idOf(connection.target)))
            continue;
        const auto kind = std::holds_alternative<plan::AtPump>(connection.target)  ? CueKind::pump
                          : std::holds_alternative<plan::AtTee>(connection.target) ? CueKind::tee
                                                                                   : CueKind::port;
        nearest.offer(connection.at, kind, connection.target, [&] { return connection.name; });
    }
    return nearest.found();
}

std::optional<Snapped> ontoRun(const plan::Plan& plan, plan::Point raw, const SnapRules& rules)
{
    Nearest nearest(raw, rules.reach);
    for (const auto& run : plan.runs) {
        if (leftOut(rules, run->id))
            continue;
        const double length = units::inMetres(plan::lengthOf(*run));
        double before = 0.0;
        for (std::size_t i = 0; i + 1 < run->vertices.size(); ++i) {
            const auto& a = run->vertices[i];
            const auto& b = run->vertices[i + 1];
            const double rise = units::inMetres(b.level - a.level);
            const double leg = std::hypot(metresBetween(a.at, b.at), rise);
            double share = 0.0;
            const auto at = footOn(a.at, b.at, raw, rules, share);
            const double station = length > 0.0 ? std::clamp((before + share * leg) / length, 0.0, 1.0) : 0.0;
            before += leg;
            nearest.offer(at, CueKind::run, plan::OntoRun{run->id, station},
                          [&] { return Words::tr("onto %1").arg(text::subject(plan, run->id)); });
        }
    }
    return nearest.found();
}

std::optional<Snapped> atOutline(const plan::Plan& plan, plan::Point raw, const SnapRules& rules, bool pointsOnly)
{
    Nearest nearest(raw, rules.reach);
    const auto line = [&](plan::Point a, plan::Point b, const QString& name, bool corners) {
        if (!pointsOnly)
            nearest.offer(nearestOn(a, b, raw), CueKind::edge, plan::Nowhere{},
                          [&] { return Words::tr("edge of %1").arg(name); });
        else if (corners)
            for (const auto& corner : {a, b})
                nearest.offer(corner, CueKind::vertex, plan::Nowhere{},
                              [&] { return Words::tr("corner of %1").arg(name); });
    };
    const auto outline = [&](const std::vector<plan::Point>& corners, const QString& name, bool withCorners) {
        for (std::size_t i = 0; i < corners.size(); ++i)
            line(corners[i], corners[(i + 1) % corners.size()], name, withCorners);
    };
    for (const auto& vessel : plan.vessels) {
        if (leftOut(rules, vessel->id))
            continue;
        const QString name = text::subject(plan, vessel->id);
        outline(plan::outlineOf(*vessel), name, !std::holds_alternative<plan::RoundShape>(vessel->shape));
        if (pointsOnly)
            nearest.offer(vessel->centre, CueKind::centre, plan::Nowhere{},
                          [&] { return Words::tr("centre of %1").arg(name); });
    }
    for (const auto& fixture : plan.fixtures)
        if (!leftOut(rules, fixture->id))
            line(fixture->from, fixture->to, text::subject(plan, fixture->id), true);
    outline(plan.floor->outline, Words::tr("floor"), true);
    return nearest.found();
}
} // namespace

units::Length toStep(units::Length value, units::Length step)
{
    const double steps = std::round(units::inMetres(value) / units::inMetres(step));
    // Whole micrometres, so that 12 steps of 0.1 m are 1.2 m and not 1.2000000000000002 m.
    return units::metres(std::round(steps * units::inMetres(step) * 1e6) / 1e6 + 0.0);
}

plan::Point toGrid(plan::Point raw, units::Length step) { return {toStep(raw.x, step), toStep(raw.y, step)}; }

const plan::Vessel* vesselAt(const plan::Plan& plan, plan::Point place)
{
    const plan::Vessel* found = nullptr;
    for (const auto& vessel : plan.vessels) {
        const QPolygonF outline = canvas::toScene(plan::outlineOf(*vessel));
        const bool within = outline.containsPoint(canvas::toScene(place), Qt::OddEvenFill);
        if (within && (!found || vessel->baseLevel > found->baseLevel))
            found = vessel.get();
    }
    return found;
}

plan::Point offsetIn(const plan::Vessel& vessel, plan::Point place)
{
    return plan::turned(place - vessel.centre, -vessel.turn);
}

std::vector<Connection> connectionsOf(const plan::Plan& plan)
{
    std::vector<Connection> found;
    for (const auto& vessel : plan.vessels)
        for (const auto& port : vessel->ports)
            if (!plan::runAtPort(plan, vessel->id, port.id))
                found.push_back(
                    {plan::AtPort{vessel->id, port.id}, plan::placeOf(*vessel, port), text::subject(plan, port.id)});
    for (const auto& pump : plan.pumps) {
        const auto* vessel = plan.vessels.find(pump->vessel);
        if (vessel && !plan::runAtPump(plan, pump->id))
            found.push_back({plan::AtPump{pump->id}, plan::placeOf(*vessel, *pump), text::subject(plan, pump->id)});
    }
    for (const auto& tee : plan.tees)
        found.push_back({plan::AtTee{tee->id}, tee->at, text::subject(plan, tee->id)});
    return found;
}

Snapped snap(const plan::Plan& plan, plan::Point raw, const SnapRules& rules)
{
    if (!rules.on)
        return {raw, std::nullopt};
    std::optional<Snapped> found;
    if (rules.connections) {
        found = atConnection(plan, raw, rules);
        if (!found)
            found = ontoRun(plan, raw, rules);
    }
    if (!found && rules.outlines) {
        found = atOutline(plan, raw, rules, true);
        if (!found)
            found = atOutline(plan, raw, rules, false);
    }
    if (found)
        return *found;
    if (!rules.toGrid)
        return {raw, std::nullopt};
    const auto at = toGrid(raw, rules.grid);
    return {at, canvas::SnapCue{CueKind::grid, canvas::toScene(at), QString()}};
}

} // namespace sumpwright::ui::tools

// Moving by drag: lined up with the outlines of others, or to the grid.
#include <QObject>

#include <algorithm>
#include <cmath>

#include "core/plan/edits/arrange.hpp"
#include "core/plan/edits/move.hpp"
#include "core/plan/edits/pump.hpp"
#include "ui/canvas/scene_point.hpp"
#include "ui/text/subject.hpp"
#include "ui/tools/gesture.hpp"

namespace sumpwright::ui::tools
{

namespace
{
double m(units::Length v) { return units::inMetres(v); }

// Along one axis: the shift that lines one of the moved marks up with one of the others, the least there is.
struct Alignment {
    double shift = 0.0; // metres, to be added
    double mark = 0.0;  // where the two meet
    plan::Box other;
    base::Id element; // none: the floor
};

struct Marks {
    plan::Box box;
    base::Id element;
};

bool standsInPlan(const plan::Plan& plan, base::Id id) { return plan.vessels.find(id) || plan.fixtures.find(id); }

std::vector<Marks> othersOf(const plan::Plan& plan, const std::vector<base::Id>& moved)
{
    std::vector<Marks> others;
    const auto add = [&](base::Id id) {
        if (std::find(moved.begin(), moved.end(), id) == moved.end())
            others.push_back({plan::boxOf(plan, id), id});
    };
    for (const auto& vessel : plan.vessels)
        add(vessel->id);
    for (const auto& fixture : plan.fixtures)
        if (fixture->kind != plan::FixtureKind::door)
            add(fixture->id);
    if (!plan.floor->outline.empty()) {
        plan::Box box{plan.floor->outline.front(), plan.floor->outline.front()};
        for (const auto& corner : plan.floor->outline) {
            box.low = {std::min(box.low.x, corner.x), std::min(box.low.y, corner.y)};
            box.high = {std::max(box.high.x, corner.x), std::max(box.high.y, corner.y)};
        }
        others.push_back({box, {}});
    }
    return others;
}

template <class Read>
std::optional<Alignment> lineUp(const plan::Box& moved, const std::vector<Marks>& others, double reach, Read&& read)
{
    const double mine[] = {read(moved.low), (read(moved.low) + read(moved.high)) / 2.0, read(moved.high)};
    std::optional<Alignment> best;
    for (const auto& other : others) {
        const double theirs[] = {read(other.box.low), (read(other.box.low) + read(other.box.high)) / 2.0,
                                 read(other.box.high)};
        for (const double a : mine)
            for (const double b : theirs)
                if (std::abs(b - a) < (best ? std::abs(best->shift) - 1e-9 : reach))
                    best = Alignment{b - a, b, other.box, other.element};
    }
    return best;
}

class MoveGesture final : public Gesture
{
public:
    MoveGesture(std::vector<base::Id> elements, base::Id grabbed, plan::Point start)
        : m_elements(std::move(elements)), m_grabbed(grabbed), m_start(start)
    {
    }

    std::optional<plan::Edit> editAt(const GestureSpot& spot, canvas::Overlay& overlay) override
    {
        auto by = spot.raw - m_start;
        if (const auto typed = typedLength(0, spot)) {
            const double whole = std::hypot(m(by.x), m(by.y));
            if (whole > 1e-9)
                by = {by.x * (m(*typed) / whole), by.y * (m(*typed) / whole)};
        } else if (spot.rules.on) {
            by = snapped(by, spot, overlay);
        }
        const auto still = units::metres(0.0);
        overlay.readOut =
            typed().empty() ? spot.figures.size(by.x) + QStringLiteral(", ") + spot.figures.size(by.y) : typed().text();
        overlay.readOutAt = canvas::toScene(spot.raw);
        if (by.x == still && by.y == still)
            return std::nullopt;
        return edit(by, spot);
    }

private:
    // A pump dragged into another vessel stands there.
    plan::Edit edit(plan::Point by, const GestureSpot& spot) const
    {
        const auto* pump = m_elements.size() == 1 ? spot.plan.pumps.find(m_elements.front()) : nullptr;
        if (pump) {
            const auto place = plan::anchorOf(spot.plan, pump->id) + by;
            const auto* vessel = vesselAt(spot.plan, place);
            if (vessel && vessel->id != pump->vessel)
                return plan::standPump(pump->id, vessel->id, place);
        }
        return plan::moveElements(m_elements, by);
    }

    plan::Point snapped(plan::Point by, const GestureSpot& spot, canvas::Overlay& overlay) const
    {
        const auto anchor = plan::anchorOf(spot.plan, m_grabbed);
        const auto onGrid = toGrid(anchor + by, spot.rules.grid) - anchor;
        plan::Point result = onGrid;
        if (!standsInPlan(spot.plan, m_grabbed))
            return result;
        auto box = plan::boxOf(spot.plan, m_grabbed);
        box = {box.low + by, box.high + by};
        const auto others = othersOf(spot.plan, m_elements);
        const double reach = m(spot.rules.reach);
        if (const auto x = lineUp(box, others, reach, [](plan::Point p) { return m(p.x); })) {
            result.x = toStep(by.x + units::metres(x->shift), units::millimetres(0.001));
            const double low = std::min(m(box.low.y), m(x->other.low.y));
            const double high = std::max(m(box.high.y), m(x->other.high.y));
            guide(overlay, spot, *x, {x->mark, low}, {x->mark, high});
        }
        if (const auto y = lineUp(box, others, reach, [](plan::Point p) { return m(p.y); })) {
            result.y = toStep(by.y + units::metres(y->shift), units::millimetres(0.001));
            const double low = std::min(m(box.low.x), m(y->other.low.x));
            const double high = std::max(m(box.high.x), m(y->other.high.x));
            guide(overlay, spot, *y, {low, y->mark}, {high, y->mark});
        }
        return result;
    }

    static void guide(canvas::Overlay& overlay, const GestureSpot& spot, const Alignment& with,
                      std::pair<double, double> from, std::pair<double, double> to)
    {
        const QPointF start(from.first * 1000.0, -from.second * 1000.0);
        const QPointF end(to.first * 1000.0, -to.second * 1000.0);
        overlay.guides.emplace_back(start, end);
        const QString name = with.element.valid() ? text::subject(spot.plan, with.element) : QObject::tr("floor");
        overlay.cue =
            canvas::SnapCue{canvas::CueKind::edge, (start + end) / 2.0, QObject::tr("in line with %1").arg(name)};
    }

    std::vector<base::Id> m_elements;
    base::Id m_grabbed;
    plan::Point m_start;
};
} // namespace

std::unique_ptr<Gesture> moveGesture(std::vector<base::Id> elements, base::Id grabbed, plan::Point start)
{
    return std::make_unique<MoveGesture>(std::move(elements), grabbed, start);
}

} // namespace sumpwright::ui::tools

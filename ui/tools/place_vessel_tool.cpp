#include "ui/tools/place_vessel_tool.hpp"

#include <QKeyEvent>

#include <cmath>

#include "ui/canvas/plan_view.hpp"
#include "ui/canvas/scene_point.hpp"
#include "ui/text/names.hpp"

namespace sumpwright::ui::tools
{

namespace
{
constexpr auto leastSide = units::millimetres(100.0); // smaller drags are slips
constexpr auto roundStep = units::millimetres(10.0);  // of a dragged diameter

units::Length magnitude(units::Length v) { return v < units::metres(0.0) ? -v : v; }

// The corner at the pointer, its sides replaced by what was typed, in the direction of the drag.
units::Length side(units::Length dragged, std::optional<units::Length> typed)
{
    if (!typed)
        return dragged;
    return dragged < units::metres(0.0) ? -*typed : *typed;
}
} // namespace

PlaceVesselTool::PlaceVesselTool(canvas::PlanView& view, plan::VesselKind kind, std::optional<plan::Shape> shape)
    : PointingTool(view), m_kind(kind), m_shape(std::move(shape))
{
}

QString PlaceVesselTool::hint() const
{
    return tr("Click to place a %1, or drag to size it; type a number while dragging to fix a length. "
              "Ctrl suspends snapping.")
        .arg(text::nameOf(m_kind));
}

plan::VesselWish PlaceVesselTool::wishAt(plan::Point place) const
{
    plan::VesselWish wish;
    wish.kind = m_kind;
    wish.centre = place;
    wish.shape = m_shape;
    return wish;
}

plan::VesselWish PlaceVesselTool::sized(plan::Point to, canvas::Overlay& overlay) const
{
    auto wish = wishAt(m_press->at);
    const auto shape = plan::usualVessel(plan(), wish).shape;
    const auto figures = view().figures();
    const auto first = m_typed.length(0, figures);
    const auto from = m_press->at;
    if (std::holds_alternative<plan::CagedShape>(shape))
        return wishAt(to); // one size only: the drag moves it
    if (std::holds_alternative<plan::RoundShape>(shape)) {
        const auto radius = first ? *first / 2.0 : toStep(plan::distanceBetween(from, to) * 2.0, roundStep) / 2.0;
        if (radius >= leastSide / 2.0)
            wish.shape = plan::RoundShape{radius * 2.0};
        overlay.figures.push_back({canvas::toScene({from.x - radius, from.y}),
                                   canvas::toScene({from.x + radius, from.y}), 0.0, figures.size(radius * 2.0)});
        return wish;
    }
    const auto length = side(to.x - from.x, first);
    const auto width = side(to.y - from.y, m_typed.length(1, figures));
    wish.centre = {from.x + length / 2.0, from.y + width / 2.0};
    if (magnitude(length) >= leastSide && magnitude(width) >= leastSide)
        wish.shape = plan::RectangleShape{magnitude(length), magnitude(width)};
    const plan::Point corner{from.x + length, from.y + width};
    const double away = 24.0 * view().pixel();
    overlay.figures.push_back({canvas::toScene(plan::Point{from.x, corner.y}), canvas::toScene(corner),
                               length * width < units::squareMetres(0.0) ? -away : away,
                               figures.size(magnitude(length))});
    overlay.figures.push_back({canvas::toScene(plan::Point{corner.x, from.y}), canvas::toScene(corner),
                               length * width < units::squareMetres(0.0) ? away : -away,
                               figures.size(magnitude(width))});
    return wish;
}

void PlaceVesselTool::pressed(const canvas::CanvasPointer& pointer)
{
    if (!mayEdit())
        return;
    const auto found = snapped(pointer);
    m_press = Press{found.at, pointer.view, false, found.cue};
    m_typed.clear();
}

void PlaceVesselTool::moved(const canvas::CanvasPointer& pointer)
{
    if (m_press && !(pointer.buttons & Qt::LeftButton))
        giveBack(); // let go where nobody saw it
    if (m_press) {
        m_press->dragged = m_press->dragged || (pointer.view - m_press->view).manhattanLength() > dragPixels;
        if (m_press->dragged)
            showSizing();
        return;
    }
    const auto found = snapped(pointer);
    announce(found.cue);
    canvas::Overlay overlay;
    overlay.cue = found.cue;
    overlay.sketch = canvas::toScene(plan::outlineOf(plan::usualVessel(plan(), wishAt(found.at))));
    overlay.sketchClosed = true;
    show(std::move(overlay));
}

void PlaceVesselTool::showSizing()
{
    const auto found = snapped(pointer());
    announce(found.cue);
    canvas::Overlay overlay;
    const auto wish = sized(found.at, overlay);
    overlay.cue = found.cue;
    if (!m_typed.empty()) {
        overlay.readOut = m_typed.text();
        overlay.readOutAt = pointer().scene;
    }
    document().preview(plan::placeVessel(wish));
    show(std::move(overlay));
}

void PlaceVesselTool::released(const canvas::CanvasPointer& pointer)
{
    if (!m_press)
        return;
    if (takenOut(pointer))
        giveBack();
    else
        finish(pointer);
}

void PlaceVesselTool::finish(const canvas::CanvasPointer& pointer)
{
    canvas::Overlay unused;
    const auto wish = m_press->dragged ? sized(snapped(pointer).at, unused) : wishAt(m_press->at);
    m_press.reset();
    place(wish, pointer.modifiers & Qt::ShiftModifier);
}

void PlaceVesselTool::place(const plan::VesselWish& wish, bool goOn)
{
    const base::Id placed{plan().nextId};
    m_typed.clear();
    if (!document().commit(plan::placeVessel(wish)))
        return;
    document().select({placed});
    show({});
    if (!goOn)
        Q_EMIT finished();
}

bool PlaceVesselTool::otherKey(QKeyEvent& event)
{
    if (!m_press || !m_press->dragged)
        return false;
    if (m_typed.key(event)) {
        showSizing();
        return true;
    }
    if (event.key() == Qt::Key_Return || event.key() == Qt::Key_Enter) {
        finish(pointer()); // wherever the pointer is
        return true;
    }
    return false;
}

void PlaceVesselTool::giveBack()
{
    m_press.reset();
    m_typed.clear();
    document().dropPreview();
    show({});
}

} // namespace sumpwright::ui::tools

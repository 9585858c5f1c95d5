// Sizing and turning a vessel by its handles.
#include <QObject>

#include <algorithm>
#include <cmath>

#include "core/plan/edits/move.hpp"
#include "core/plan/edits/vessel.hpp"
#include "ui/canvas/scene_point.hpp"
#include "ui/tools/gesture.hpp"

namespace sumpwright::ui::tools
{

namespace
{
constexpr auto leastSide = units::millimetres(100.0);
constexpr double turnStep = 15.0;      // degrees
constexpr double turnHandleOff = 30.0; // pixels beyond the frame

struct Pull {
    int x; // which way the handle pulls in the vessel's own frame
    int y;
};
// Corners counter-clockwise from the lower left, then the sides from the lower one.
constexpr Pull pulls[] = {{-1, -1}, {1, -1}, {1, 1}, {-1, 1}, {0, -1}, {1, 0}, {0, 1}, {-1, 0}};
constexpr int turnHandle = 8;

plan::Point inPlan(const plan::Vessel& vessel, plan::Point own)
{
    return vessel.centre + plan::turned(own, vessel.turn);
}

bool slanted(units::Angle turn) { return std::abs(std::remainder(units::inDegrees(turn), 90.0)) > 1e-6; }

class ResizeGesture final : public Gesture
{
public:
    ResizeGesture(base::Id vessel, int handle) : m_vessel(vessel), m_pull(pulls[handle]) {}

    std::optional<plan::Edit> editAt(const GestureSpot& spot, canvas::Overlay& overlay) override
    {
        const auto* vessel = spot.plan.vessels.find(m_vessel);
        if (!vessel)
            return std::nullopt;
        auto rules = spot.rules;
        rules.leftOut = {m_vessel};
        const auto found = snap(spot.plan, spot.raw, rules);
        overlay.cue = found.cue;
        const auto own = offsetIn(*vessel, found.at);
        if (std::holds_alternative<plan::RoundShape>(vessel->shape))
            return resizeRound(*vessel, own, spot, overlay);
        return resizeRectangle(*vessel, own, spot, overlay);
    }

private:
    std::optional<plan::Edit> resizeRound(const plan::Vessel& vessel, plan::Point own, const GestureSpot& spot,
                                          canvas::Overlay& overlay) const
    {
        const auto dragged = plan::distanceBetween({}, own) * 2.0;
        const auto stepped = spot.rules.on ? toStep(dragged, units::millimetres(10.0)) : dragged;
        const auto diameter = std::max(leastSide, typedLength(0, spot).value_or(stepped));
        overlay.figures.push_back({canvas::toScene({vessel.centre.x - diameter / 2.0, vessel.centre.y}),
                                   canvas::toScene({vessel.centre.x + diameter / 2.0, vessel.centre.y}), 0.0,
                                   spot.figures.size(diameter)});
        return plan::resizeVessel(m_vessel, plan::RoundShape{diameter}, vessel.centre);
    }

    // One side: from the middle to the pulled edge, the other edge stays.
    units::Length side(int pull, units::Length old, units::Length to, std::optional<units::Length> typed,
                       const GestureSpot& spot, bool slant) const
    {
        if (pull == 0)
            return old;
        auto length = typed.value_or(old / 2.0 + to * static_cast<double>(pull));
        if (!typed && slant && spot.rules.on)
            length = toStep(length, spot.rules.grid);
        return std::max(leastSide, toStep(length, units::millimetres(0.01)));
    }

    std::optional<plan::Edit> resizeRectangle(const plan::Vessel& vessel, plan::Point own, const GestureSpot& spot,
                                              canvas::Overlay& overlay) const
    {
        const auto frame = plan::frameOf(vessel.shape);
        const bool slant = slanted(vessel.turn);
        const auto typedWidth = m_pull.x == 0 ? typedLength(0, spot) : typedLength(1, spot);
        const auto length = side(m_pull.x, frame.length, own.x, typedLength(0, spot), spot, slant);
        const auto width = side(m_pull.y, frame.width, own.y, typedWidth, spot, slant);
        const plan::Point shift{(length - frame.length) / 2.0 * static_cast<double>(m_pull.x),
                                (width - frame.width) / 2.0 * static_cast<double>(m_pull.y)};
        plan::Vessel sized = vessel;
        sized.centre = inPlan(vessel, shift);
        const auto at = [&](double x, double y) { return canvas::toScene(inPlan(sized, {length * x, width * y})); };
        const double off = 24.0 * spot.pixel;
        overlay.figures.push_back({at(-0.5, 0.5), at(0.5, 0.5), off, spot.figures.size(length)});
        overlay.figures.push_back({at(0.5, 0.5), at(0.5, -0.5), off, spot.figures.size(width)});
        return plan::resizeVessel(m_vessel, plan::RectangleShape{length, width}, sized.centre);
    }

    base::Id m_vessel;
    Pull m_pull;
};

class TurnGesture final : public Gesture
{
public:
    explicit TurnGesture(base::Id vessel) : m_vessel(vessel) {}

    std::optional<plan::Edit> editAt(const GestureSpot& spot, canvas::Overlay& overlay) override
    {
        const auto* vessel = spot.plan.vessels.find(m_vessel);
        if (!vessel || plan::distanceBetween(vessel->centre, spot.raw) < units::millimetres(1.0))
            return std::nullopt;
        double degrees = units::inDegrees(plan::bearingOf(spot.raw - vessel->centre)) - 90.0;
        if (spot.rules.on)
            degrees = std::round(degrees / turnStep) * turnStep;
        degrees = std::remainder(degrees, 360.0) + 0.0;
        overlay.readOut = spot.figures.text(units::degrees(degrees));
        overlay.readOutAt = canvas::toScene(spot.raw);
        overlay.guides.emplace_back(canvas::toScene(vessel->centre), canvas::toScene(spot.raw));
        return plan::setTurn({m_vessel}, units::degrees(degrees));
    }

private:
    base::Id m_vessel;
};

QString nameOfHandle(int index)
{
    if (index == turnHandle)
        return QObject::tr("turn");
    return index < 4 ? QObject::tr("size: corner") : QObject::tr("size: side");
}
} // namespace

std::unique_ptr<Gesture> resizeGesture(base::Id vessel, int handle)
{
    return std::make_unique<ResizeGesture>(vessel, handle);
}

std::unique_ptr<Gesture> turnGesture(base::Id vessel) { return std::make_unique<TurnGesture>(vessel); }

// Handles keep a target's width from each other; where a vessel is too small on screen, fewer are offered.
std::vector<canvas::Handle> vesselHandles(const plan::Vessel& vessel, double pixel)
{
    std::vector<canvas::Handle> handles;
    const auto frame = plan::frameOf(vessel.shape);
    const double turn = canvas::sceneRotation(vessel.turn);
    const double along = canvas::toScene(frame.length) / pixel;
    const double up = canvas::toScene(frame.width) / pixel;
    const bool round = std::holds_alternative<plan::RoundShape>(vessel.shape);
    const bool caged = std::holds_alternative<plan::CagedShape>(vessel.shape);
    const double room = canvas::handleTarget;
    for (int i = 0; i < turnHandle && !caged; ++i) {
        const bool corner = i < 4;
        const bool roomy = corner ? !round && along >= room && up >= room
                                  : (round ? along >= 2.0 * room : (pulls[i].x == 0 ? along : up) >= 3.0 * room);
        if (!roomy)
            continue;
        const plan::Point own{frame.length / 2.0 * static_cast<double>(pulls[i].x),
                              frame.width / 2.0 * static_cast<double>(pulls[i].y)};
        handles.push_back({corner ? canvas::HandleKind::corner : canvas::HandleKind::side, i,
                           canvas::toScene(inPlan(vessel, own)), turn, nameOfHandle(i)});
    }
    if (!round || !vessel.ports.empty()) {
        const plan::Point own{units::metres(0.0), frame.width / 2.0 + canvas::lengthFromScene(turnHandleOff * pixel)};
        handles.push_back({canvas::HandleKind::turn, turnHandle, canvas::toScene(inPlan(vessel, own)), turn,
                           nameOfHandle(turnHandle)});
    }
    return handles;
}

} // namespace sumpwright::ui::tools

// Gesture: one drag of the select tool - moving, sizing, turning, a vertex, an end - as the edit meant at each place of
// the pointer. Always from the plan as it was when the drag began; nothing is kept from move to move.
#pragma once

#include <memory>
#include <optional>

#include "core/plan/edits/edit.hpp"
#include "ui/canvas/canvas_tool.hpp"
#include "ui/canvas/figures.hpp"
#include "ui/canvas/overlay.hpp"
#include "ui/tools/snap.hpp"
#include "ui/tools/typed_lengths.hpp"

namespace sumpwright::ui::tools
{

struct GestureSpot {
    const plan::Plan& plan; // as committed
    plan::Point raw;        // where the pointer is
    SnapRules rules;
    canvas::Figures figures;
    double pixel = 1.0; // scene millimetres
};

class Gesture
{
public:
    virtual ~Gesture() = default;
    // Adds cue, guides and figures to the overlay. Nothing: the place means no change.
    virtual std::optional<plan::Edit> editAt(const GestureSpot& spot, canvas::Overlay& overlay) = 0;
    TypedLengths& typed() { return m_typed; }

protected:
    std::optional<units::Length> typedLength(int index, const GestureSpot& spot) const
    {
        return m_typed.length(index, spot.figures);
    }

private:
    TypedLengths m_typed{2};
};

// Moves elements; `grabbed` is the one whose place goes to the grid. Edges and centres line up with others.
std::unique_ptr<Gesture> moveGesture(std::vector<base::Id> elements, base::Id grabbed, plan::Point start);
std::unique_ptr<Gesture> resizeGesture(base::Id vessel, int handle);
std::unique_ptr<Gesture> turnGesture(base::Id vessel);
// A vertex of a run; an end lets go of what it met and may be led to something else.
std::unique_ptr<Gesture> vertexGesture(base::Id run, std::size_t vertex);
// One end of a wall, door or dimension line; handle 2 of a dimension line is its distance from the measured points.
std::unique_ptr<Gesture> endGesture(base::Id element, int end);

// Handles of one selected element, and the gesture each begins. None for what is moved only.
std::vector<canvas::Handle> handlesOf(const plan::Plan& plan, base::Id element, double pixel);
std::unique_ptr<Gesture> gestureOf(const plan::Plan& plan, base::Id element, const canvas::Handle& handle);

} // namespace sumpwright::ui::tools

// Tool: what all tools share - document, view, snapping, the crosshair that lets the keyboard point, typed numbers.
//
// One gesture is one undo step: tools preview while it lasts and commit once. Ctrl held suspends snapping. Tools that
// place things: arrow keys move a crosshair by one grid step (Shift ten, Ctrl 1 mm), Enter clicks there, Esc gives
// back. Before a gesture two numbers, as "1.85 x 0.7", and Enter put the crosshair there.
#pragma once

#include <QObject>

#include <optional>

#include "ui/canvas/canvas_tool.hpp"
#include "ui/canvas/overlay.hpp"
#include "ui/document/document.hpp"
#include "ui/tools/snap.hpp"
#include "ui/tools/typed_lengths.hpp"

namespace sumpwright::ui::canvas
{
class PlanView;
}

namespace sumpwright::ui::tools
{

class Tool : public QObject, public canvas::CanvasTool
{
    Q_OBJECT

public:
    explicit Tool(canvas::PlanView& view);

    virtual void begin() {}                     // became the active tool
    virtual void end() { conclude(); }          // another one takes over
    virtual QString hint() const { return {}; } // what to do next, for the status bar
    Qt::CursorShape cursor() const override { return Qt::CrossCursor; }

Q_SIGNALS:
    void hintChanged();
    void finished(); // done: the select tool takes over

protected:
    canvas::PlanView& view() const { return m_view; }
    document::Document& document() const;
    const plan::Plan& plan() const { return document().committed(); }
    SnapRules rulesFor(const canvas::CanvasPointer& pointer) const;
    Snapped snapped(const canvas::CanvasPointer& pointer) const;
    bool mayEdit(); // false on a read-only plan, and says so
    // A press that is taken out of the plan before it is let go does nothing, and says so.
    bool takenOut(const canvas::CanvasPointer& released);
    void announce(const std::optional<canvas::SnapCue>& cue); // its name in the status bar, once

    static constexpr double reachPixels = 10.0;
    // Of the crosshair: it stands where the keys put it, and is led to nothing but what it stands on.
    static constexpr auto keyReach = units::millimetres(1.0);
    static constexpr int dragPixels = 5; // a press becomes a drag beyond this

private:
    canvas::PlanView& m_view;
    QString m_announced;
};

// A tool that points: with the mouse or with the keyboard's crosshair.
class PointingTool : public Tool
{
    Q_OBJECT

public:
    using Tool::Tool;
    void end() override;
    bool key(QKeyEvent& event) override;
    // A letter ends what goes on and takes its tool, unless it is one of this tool's or belongs to a number.
    bool wantsKey(const QKeyEvent& event) const override;
    void conclude() final;
    void press(const canvas::CanvasPointer& pointer) final;
    void move(const canvas::CanvasPointer& pointer) final;
    void release(const canvas::CanvasPointer& pointer) final;
    const std::optional<plan::Point>& crosshair() const { return m_crosshair; }

protected:
    virtual void pressed(const canvas::CanvasPointer& pointer) = 0;
    virtual void moved(const canvas::CanvasPointer& pointer) = 0;
    virtual void released(const canvas::CanvasPointer&) {}
    virtual bool otherKey(QKeyEvent&) { return false; }
    virtual bool ownLetter(int) const { return false; } // a Qt::Key this tool takes for itself
    virtual bool typing() const { return false; }       // a number is under way
    virtual bool chain() const { return busy(); }       // of clicks: a letter may end it; a drag it does not
    virtual void keepFinished() {}                      // of a gesture that ends; what cannot be kept is given back
    void show(canvas::Overlay overlay);                 // adds the crosshair
    void putCrosshair(plan::Point place);
    // The last place pointed at, by either means.
    const canvas::CanvasPointer& pointer() const { return m_pointer; }

private:
    bool moveCrosshair(const QKeyEvent& event);
    bool typePlace(const QKeyEvent& event);
    canvas::CanvasPointer crosshairPointer() const;

    std::optional<plan::Point> m_crosshair;
    TypedLengths m_place{2}; // typed so far
    canvas::CanvasPointer m_pointer;
    bool m_pointed = false;
};

} // namespace sumpwright::ui::tools

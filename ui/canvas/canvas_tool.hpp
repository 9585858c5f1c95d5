// CanvasTool: what the plan view hands pointer and keys to. Tools live in ui/tools.
#pragma once

#include <QPoint>
#include <QPointF>
#include <Qt>

QT_BEGIN_NAMESPACE
class QKeyEvent;
QT_END_NAMESPACE

namespace sumpwright::ui::canvas
{

struct CanvasPointer {
    QPointF scene;
    QPoint view;                           // viewport pixels
    Qt::MouseButton button = Qt::NoButton; // the one pressed or released
    Qt::MouseButtons buttons;              // held
    Qt::KeyboardModifiers modifiers;
    bool byKey = false; // the keyboard's crosshair stands for the pointer
};

class CanvasTool
{
public:
    virtual ~CanvasTool() = default;
    virtual void press(const CanvasPointer&) {}
    virtual void move(const CanvasPointer&) {} // with and without a button held
    virtual void release(const CanvasPointer&) {}
    virtual void doubleClick(const CanvasPointer& pointer) { press(pointer); }
    virtual bool key(QKeyEvent&) { return false; }                   // true: used up
    virtual bool wantsKey(const QKeyEvent&) const { return busy(); } // before any shortcut of that letter
    virtual void planChanged() {}               // the shown plan, the selection or the zoom changed
    virtual bool busy() const { return false; } // a gesture is under way
    virtual void giveBack() {}                  // ends the gesture without an edit
    virtual void conclude() { giveBack(); }     // ends it, keeping what is finished of it
    virtual Qt::CursorShape cursor() const { return Qt::ArrowCursor; }
};

} // namespace sumpwright::ui::canvas

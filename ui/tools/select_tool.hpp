// SelectTool: picks, moves, sizes, turns; the tool one comes back to.
//
// Click selects (again on the same place: what lies below), Ctrl adds, Shift toggles; a drag on nothing draws a
// marquee. Drags snap, Ctrl held suspends that; a number typed fixes a length. Arrows nudge by one grid step, Shift by
// ten, Ctrl by 1 mm. Esc gives back, Del deletes and says what came loose. Enter or double click asks for properties;
// on a corner of the selected run, or on the level written there, a double click types that level in place.
#pragma once

#include <memory>

#include "ui/tools/gesture.hpp"
#include "ui/tools/tool.hpp"

namespace sumpwright::ui::tools
{

class LevelEditor;

class SelectTool final : public Tool
{
    Q_OBJECT

public:
    explicit SelectTool(canvas::PlanView& view);
    ~SelectTool() override;
    QString hint() const override;
    bool busy() const override;
    bool wantsKey(const QKeyEvent& event) const override;
    void begin() override { planChanged(); }
    void end() override;
    void press(const canvas::CanvasPointer& pointer) override;
    void move(const canvas::CanvasPointer& pointer) override;
    void release(const canvas::CanvasPointer& pointer) override;
    void doubleClick(const canvas::CanvasPointer& pointer) override;
    bool key(QKeyEvent& event) override;
    void planChanged() override; // handles follow the plan, unless a drag is under way
    void giveBack() override;
    void conclude() override; // a level that is being typed counts
    Qt::CursorShape cursor() const override { return m_cursor; }

    void typeLevels(); // of the one run selected, vertex by vertex; says why where that cannot be
    LevelEditor& levels() const { return *m_levels; }

private:
    struct Press {
        canvas::CanvasPointer pointer;
        std::unique_ptr<Gesture> gesture; // null: a marquee
        base::Id element;                 // picked up; none on nothing
        QPointF grip;                     // from the handle to the place pressed: what is dragged does not jump
        bool dragged = false;
        bool plainClick = true;       // neither adds nor toggles
        std::vector<base::Id> before; // the selection a marquee starts from
        std::optional<plan::Edit> edit;
    };
    std::optional<canvas::Handle> handleAt(QPointF scene) const;
    const plan::Run* chosenRun() const; // null: not one run alone
    std::optional<std::size_t> levelLabelAt(QPointF scene) const;
    std::optional<std::size_t> levelAt(QPointF scene) const;
    void takeRunBack(QPointF scene);
    void pick(const canvas::CanvasPointer& pointer, Press& press);
    void dragGesture(const canvas::CanvasPointer& pointer);
    void dragMarquee(const canvas::CanvasPointer& pointer);
    void clicked(const canvas::CanvasPointer& pointer, const Press& press);
    void showHandles();
    void nudge(plan::Point by);
    void deleteSelected();
    bool gestureKey(QKeyEvent& event);
    bool nudgeKey(const QKeyEvent& event);

    LevelEditor* m_levels;
    std::optional<Press> m_press;
    bool m_runChosen = false; // the hint tells of it
    base::Id m_former;        // selected before the last click picked what lies below
    canvas::CanvasPointer m_last;
    Qt::CursorShape m_cursor = Qt::ArrowCursor;
};

} // namespace sumpwright::ui::tools

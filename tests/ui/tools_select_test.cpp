// Selecting, moving, sizing, turning, nudging, deleting.
#include "tests/ui/canvas_stage.hpp"

#include <QApplication>
#include <QSignalSpy>
#include <QUndoStack>

#include "ui/canvas/scene_point.hpp"

namespace sumpwright::test
{

using ui::canvas::Handle;
using ui::canvas::HandleKind;

class Select : public CanvasStage
{
protected:
    void SetUp() override
    {
        CanvasStage::SetUp();
        open(samplePlan());
    }
    bool selected(const char* tag) { return document.isSelected(idOf(plan(), tag)); }
    plan::Point handleAt(HandleKind kind, int index) const
    {
        for (const auto& handle : view.overlay().handles)
            if (handle.kind == kind && handle.index == index)
                return ui::canvas::toPlan(handle.at);
        ADD_FAILURE() << "no handle " << index;
        return {};
    }
    // Empty places inside the beds, off their pipes.
    void clickBed(const char* tag, Qt::KeyboardModifiers modifiers = {})
    {
        const auto centre = vessel(tag).centre;
        click(units::inMetres(centre.x), units::inMetres(centre.y) - 0.5, modifiers);
    }
};

TEST_F(Select, ClickSelectsCtrlAddsShiftTogglesNothingClears)
{
    clickBed("B1");
    EXPECT_TRUE(selected("B1"));
    clickBed("B3", Qt::ControlModifier);
    EXPECT_EQ(document.selection().size(), 2U);
    clickBed("B3", Qt::ControlModifier);
    EXPECT_EQ(document.selection().size(), 2U) << "Ctrl adds, it does not take away";
    clickBed("B1", Qt::ShiftModifier);
    EXPECT_FALSE(selected("B1"));
    EXPECT_TRUE(selected("B3"));
    clickBed("B1", Qt::ShiftModifier);
    EXPECT_TRUE(selected("B1"));
    click(-0.6, -0.3);
    EXPECT_TRUE(document.selection().empty());
    EXPECT_EQ(steps(), 0);
}

TEST_F(Select, AClickOnOneOfSeveralLeavesThatOne)
{
    clickBed("B1");
    clickBed("B3", Qt::ControlModifier);
    clickBed("B1");
    EXPECT_EQ(document.selection().size(), 1U);
    EXPECT_TRUE(selected("B1"));
}

TEST_F(Select, ASecondClickPicksWhatLiesBelow)
{
    // The pump's middle, where its run begins: the pump first, then the run that lies on it, then the sump below both.
    for (const auto* tag : {"P1", "R3", "S1", "P1"}) {
        click(2.1, 2.2);
        EXPECT_TRUE(selected(tag)) << tag;
        EXPECT_EQ(document.selection().size(), 1U);
        QTest::qWait(QApplication::doubleClickInterval() + 20);
    }
}

TEST_F(Select, ADoubleClickOpensWhatWasSelectedNotWhatLiesBelow)
{
    document.select({idOf(plan(), "R3")});
    QSignalSpy asked(&view, &ui::canvas::PlanView::elementActivated);
    doubleClick(2.3, 2.2); // on the run, over the sump
    ASSERT_EQ(asked.count(), 1);
    EXPECT_EQ(asked.front().front().value<base::Id>(), idOf(plan(), "R3"));
    EXPECT_TRUE(selected("R3"));
    release(2.3, 2.2);
    EXPECT_TRUE(selected("R3"));
}

TEST_F(Select, MarqueeTakesEnclosedAndWithTheOptionTouched)
{
    const auto from = at(3.4, 0.55);
    const auto to = at(5.0, 2.95);
    drag(from, to);
    EXPECT_TRUE(selected("B5"));
    EXPECT_FALSE(selected("R18"));
    settings.setMarqueeTouching(true);
    drag(from, to);
    EXPECT_TRUE(selected("B5"));
    EXPECT_TRUE(selected("R18"));
    EXPECT_EQ(steps(), 0);
}

TEST_F(Select, MarqueeWithCtrlAddsAndWithShiftToggles)
{
    clickBed("B1");
    press(3.4, 0.55, Qt::ControlModifier);
    moveTo(4.0, 1.0, Qt::ControlModifier);
    moveTo(5.0, 2.95, Qt::ControlModifier);
    release(5.0, 2.95, Qt::ControlModifier);
    EXPECT_TRUE(selected("B1"));
    EXPECT_TRUE(selected("B5"));
    press(3.4, 0.55, Qt::ShiftModifier);
    moveTo(4.0, 1.0, Qt::ShiftModifier);
    moveTo(5.0, 2.95, Qt::ShiftModifier);
    release(5.0, 2.95, Qt::ShiftModifier);
    EXPECT_TRUE(selected("B1"));
    EXPECT_FALSE(selected("B5"));
}

TEST_F(Select, EscInAMarqueeGivesTheSelectionBack)
{
    clickBed("B1");
    press(3.4, 0.55);
    moveTo(4.0, 1.0);
    moveTo(5.0, 2.95);
    EXPECT_TRUE(selected("B5"));
    key(Qt::Key_Escape);
    EXPECT_FALSE(selected("B5"));
    release(5.0, 2.95);
    EXPECT_FALSE(view.overlay().marquee.has_value());
}

TEST_F(Select, DragMovesOnTheGridInOneStepAndUndoBringsItBack)
{
    const auto before = vessel("B1").centre;
    drag(before + at(0.0, -0.5), before + at(0.23, -0.94));
    EXPECT_EQ(steps(), 1);
    EXPECT_TRUE(isAt(vessel("B1").centre, units::inMetres(before.x) + 0.2, units::inMetres(before.y) - 0.4));
    document.undoStack().undo();
    EXPECT_EQ(vessel("B1").centre, before);
    EXPECT_EQ(view.planScene().plan(), plan());
}

TEST_F(Select, FiftyMovesOfOneDragAreOneStep)
{
    const auto centre = vessel("B1").centre;
    const double x = units::inMetres(centre.x);
    const double y = units::inMetres(centre.y) - 0.5;
    press(x, y);
    for (int i = 1; i <= 50; ++i)
        moveTo(x + 0.01 * i, y - 0.005 * i);
    EXPECT_EQ(steps(), 0);
    release(x + 0.5, y - 0.25);
    EXPECT_EQ(steps(), 1);
}

TEST_F(Select, CtrlWhileDraggingSuspendsSnapping)
{
    view.zoomToScale(96.0 / 25.4);
    view.showElements({idOf(plan(), "PS1")});
    const auto before = plan().fixtures.find(idOf(plan(), "PS1"))->from;
    drag(before, before + at(0.137, 0.043), Qt::ControlModifier);
    const auto after = plan().fixtures.find(idOf(plan(), "PS1"))->from;
    EXPECT_TRUE(isAt(after, units::inMetres(before.x) + 0.137, units::inMetres(before.y) + 0.043));
}

TEST_F(Select, LinesUpWithAnotherVesselAndSaysSo)
{
    document.select({idOf(plan(), "B3")});
    const auto centre = vessel("B3").centre;
    key(Qt::Key_Up, Qt::ControlModifier); // 1 mm off the others
    press(units::inMetres(centre.x), units::inMetres(centre.y) - 0.5);
    moveTo(units::inMetres(centre.x) + 0.3, units::inMetres(centre.y) - 0.45);
    moveTo(units::inMetres(centre.x) + 0.3, units::inMetres(centre.y) - 0.49);
    ASSERT_TRUE(view.overlay().cue.has_value());
    EXPECT_NE(view.overlay().cue->name.toStdString().find("in line with"), std::string::npos);
    EXPECT_FALSE(view.overlay().guides.empty());
    EXPECT_EQ(said, view.overlay().cue->name.toStdString()) << "its name is in the status bar";
    release(units::inMetres(centre.x) + 0.3, units::inMetres(centre.y) - 0.49);
    EXPECT_NEAR(units::inMetres(vessel("B3").centre.y), 2.0, 1e-9) << "level with its neighbours again";
}

TEST_F(Select, EscInADragLeavesNoStep)
{
    const auto before = vessel("B1").centre;
    press(units::inMetres(before.x), units::inMetres(before.y) - 0.5);
    moveTo(units::inMetres(before.x) + 0.5, units::inMetres(before.y) - 0.5);
    EXPECT_TRUE(document.previewing());
    key(Qt::Key_Escape);
    release(units::inMetres(before.x) + 0.5, units::inMetres(before.y) - 0.5);
    EXPECT_EQ(steps(), 0);
    EXPECT_EQ(vessel("B1").centre, before);
    EXPECT_TRUE(selected("B1"));
}

TEST_F(Select, ADragThatComesBackLeavesNoStep)
{
    const auto centre = vessel("B1").centre;
    const auto grip = centre + at(0.0, -0.5);
    press(units::inMetres(grip.x), units::inMetres(grip.y));
    moveTo(units::inMetres(grip.x) + 0.6, units::inMetres(grip.y));
    moveTo(units::inMetres(grip.x), units::inMetres(grip.y));
    release(units::inMetres(grip.x), units::inMetres(grip.y));
    EXPECT_EQ(steps(), 0);
}

TEST_F(Select, ADragBegunByTheSecondPressOfADoubleClickIsADrag)
{
    const auto centre = vessel("B1").centre;
    const double x = units::inMetres(centre.x);
    const double y = units::inMetres(centre.y) - 0.5;
    QTest::mouseClick(view.viewport(), Qt::LeftButton, {}, pixelOf(x, y));
    QMouseEvent again(QEvent::MouseButtonDblClick, pixelOf(x, y), view.viewport()->mapToGlobal(QPointF(pixelOf(x, y))),
                      Qt::LeftButton, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(view.viewport(), &again);
    moveTo(x + 0.2, y);
    moveTo(x + 0.4, y);
    release(x + 0.4, y);
    EXPECT_EQ(steps(), 1);
    EXPECT_NEAR(units::inMetres(vessel("B1").centre.x - centre.x), 0.4, 1e-9);
}

TEST_F(Select, DoubleClickAndEnterAskForProperties)
{
    QSignalSpy asked(&view, &ui::canvas::PlanView::elementActivated);
    const auto centre = vessel("B1").centre;
    doubleClick(units::inMetres(centre.x), units::inMetres(centre.y) - 0.5);
    EXPECT_EQ(asked.count(), 1);
    EXPECT_TRUE(selected("B1"));
    release(units::inMetres(centre.x), units::inMetres(centre.y) - 0.5);
    key(Qt::Key_Return);
    EXPECT_EQ(asked.count(), 2);
    EXPECT_EQ(steps(), 0);
}

TEST_F(Select, ArrowsNudgeByGridTenGridsAndOneMillimetreInOneStep)
{
    document.select({idOf(plan(), "B1")});
    const auto before = vessel("B1").centre;
    key(Qt::Key_Right);
    key(Qt::Key_Right);
    key(Qt::Key_Up, Qt::ShiftModifier);
    key(Qt::Key_Left, Qt::ControlModifier);
    EXPECT_TRUE(isAt(vessel("B1").centre, units::inMetres(before.x) + 0.2 - 0.001, units::inMetres(before.y) + 1.0));
    EXPECT_EQ(steps(), 1) << "one burst of nudges is one step";
    document.undoStack().undo();
    EXPECT_EQ(vessel("B1").centre, before);
}

TEST_F(Select, HandlesAreAtLeast24PixelsAndKeepApart)
{
    for (const auto* tag : {"T1", "S1", "B1", "R18", "R1", "W1", "D1"})
        for (const double denominator : {100.0, 50.0, 20.0}) {
            document.select({idOf(plan(), tag)});
            view.zoomToScale(denominator);
            const auto& handles = view.overlay().handles;
            for (std::size_t i = 0; i < handles.size(); ++i) {
                const auto target = ui::canvas::targetOf(handles[i], view.pixel());
                EXPECT_GE(target.width() * view.zoom(), 24.0 - 1e-9);
                EXPECT_GE(target.height() * view.zoom(), 24.0 - 1e-9);
                EXPECT_FALSE(handles[i].name.isEmpty());
                for (std::size_t j = i + 1; j < handles.size(); ++j)
                    EXPECT_FALSE(target.contains(handles[j].at)) << tag << " at 1:" << denominator;
            }
        }
    document.select({idOf(plan(), "S1")});
    view.zoomToScale(20.0);
    EXPECT_EQ(view.overlay().handles.size(), 9U) << "four corners, four sides, one to turn";
}

TEST_F(Select, ASideHandlePressedElevenPixelsOffStillSizes)
{
    document.select({idOf(plan(), "B1")});
    QApplication::processEvents();
    const auto handle = handleAt(HandleKind::side, 5); // right side
    const double off = 11.0 * view.pixel() / 1000.0;
    drag(handle + at(off, 0.0), handle + at(0.4 + off, 0.0));
    EXPECT_EQ(steps(), 1);
    EXPECT_NEAR(units::inMetres(plan::frameOf(vessel("B1").shape).length), 1.6, 1e-9) << "the side does not jump";
    EXPECT_NEAR(units::inMetres(plan::frameOf(vessel("B1").shape).width), 1.6, 1e-9);
}

TEST_F(Select, CornerHandleSizesBothSidesAndTheOppositeCornerStays)
{
    document.select({idOf(plan(), "B1")});
    QApplication::processEvents();
    const auto corner = handleAt(HandleKind::corner, 1); // right, low
    drag(corner, corner + at(0.2, -0.1));
    const auto frame = plan::frameOf(vessel("B1").shape);
    EXPECT_NEAR(units::inMetres(frame.length), 1.4, 1e-9);
    EXPECT_NEAR(units::inMetres(frame.width), 1.7, 1e-9);
    EXPECT_TRUE(isAt(vessel("B1").centre - at(0.7, -0.85), 7.2, 2.8)) << "the upper left corner";
}

TEST_F(Select, ANumberTypedWhileSizingFixesTheSide)
{
    document.select({idOf(plan(), "B1")});
    QApplication::processEvents();
    const auto side = handleAt(HandleKind::side, 5);
    press(units::inMetres(side.x), units::inMetres(side.y));
    moveTo(units::inMetres(side.x) + 0.3, units::inMetres(side.y));
    type("1.35");
    key(Qt::Key_Return);
    EXPECT_NEAR(units::inMetres(plan::frameOf(vessel("B1").shape).length), 1.35, 1e-9);
    release(units::inMetres(side.x) + 0.3, units::inMetres(side.y));
    EXPECT_EQ(steps(), 1);
}

TEST_F(Select, TurnHandleTurnsByFifteenDegrees)
{
    document.select({idOf(plan(), "B1")});
    QApplication::processEvents();
    const auto handle = handleAt(HandleKind::turn, 8);
    const auto centre = vessel("B1").centre;
    drag(handle, centre + at(-1.0, 1.05)); // about 43.6 degrees
    EXPECT_NEAR(units::inDegrees(vessel("B1").turn), 45.0, 1e-9);
    EXPECT_EQ(steps(), 1);
}

TEST_F(Select, AVertexIsDraggedAndAnOpenEndIsLedToAPort)
{
    document.select({idOf(plan(), "R5")}); // the open end of the header
    QApplication::processEvents();
    const auto& handles = view.overlay().handles;
    ASSERT_FALSE(handles.empty());
    const auto end = handleAt(HandleKind::vertex, static_cast<int>(run("R5").vertices.size()) - 1);
    drag(end, at(8.6, 2.2));
    EXPECT_EQ(steps(), 1);
    EXPECT_TRUE(isAt(run("R5").vertices.back().at, 8.6, 2.2));
}

TEST_F(Select, DeleteSaysWhatComesLooseAndUndoBringsItBack)
{
    const auto before = plan();
    document.select({idOf(plan(), "T1")});
    key(Qt::Key_Delete);
    EXPECT_EQ(plan().vessels.size(), before.vessels.size() - 1);
    EXPECT_NE(said.find("open at one end"), std::string::npos) << said;
    EXPECT_EQ(steps(), 1);
    document.undoStack().undo();
    EXPECT_EQ(plan(), before);
}

TEST_F(Select, ReadOnlyPlanIsSelectedButNotMoved)
{
    document.setReadOnly(true);
    const auto centre = vessel("B1").centre;
    drag(centre + at(0.0, -0.5), centre + at(0.6, -0.5));
    EXPECT_EQ(vessel("B1").centre, centre);
    EXPECT_TRUE(selected("B1"));
    EXPECT_TRUE(view.overlay().handles.empty());
}

} // namespace sumpwright::test

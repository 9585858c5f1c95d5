// A gesture of several clicks that another tool, the right button or the end of the work cuts short: what is finished
// of it stays, as one step; a letter is free for the next tool unless a number is being typed.
#include "tests/ui/canvas_stage.hpp"

#include <QKeyEvent>
#include <QLineEdit>
#include <QUndoStack>

#include "core/plan/edits/place.hpp"
#include "ui/tools/note_tool.hpp"
#include "ui/tools/pipe_tool.hpp"

namespace sumpwright::test
{

class Chain : public CanvasStage
{
protected:
    // Whether the plan keeps a key for its tool: then no command with that key is run.
    bool keeps(Qt::Key key, const char* text)
    {
        QKeyEvent event(QEvent::ShortcutOverride, key, Qt::NoModifier, QString::fromLatin1(text));
        event.ignore();
        QApplication::sendEvent(&view, &event);
        return event.isAccepted();
    }
    void rightPress(double x, double y)
    {
        QTest::mousePress(view.viewport(), Qt::RightButton, {}, pixelOf(x, y));
        QTest::mouseRelease(view.viewport(), Qt::RightButton, {}, pixelOf(x, y));
    }
};

TEST_F(Chain, LettersAreFreeForToolsUnlessANumberIsTyped)
{
    toolbox.activate("place.run");
    click(1.0, 1.0);
    click(2.0, 1.0);
    EXPECT_FALSE(keeps(Qt::Key_W, "w"));
    EXPECT_FALSE(keeps(Qt::Key_X, "x"));
    EXPECT_TRUE(keeps(Qt::Key_L, "l")) << "the level of this tool";
    EXPECT_TRUE(keeps(Qt::Key_J, "j"));
    EXPECT_TRUE(keeps(Qt::Key_1, "1"));
    EXPECT_TRUE(keeps(Qt::Key_Backspace, "\b"));
    hover(2.0, 2.0);
    type("1.2");
    EXPECT_TRUE(keeps(Qt::Key_M, "m")) << "metres of a number";
    EXPECT_TRUE(keeps(Qt::Key_W, "w"));
    key(Qt::Key_Return);
    EXPECT_FALSE(keeps(Qt::Key_W, "w"));
    toolbox.activate("place.wall");
    click(1.0, 1.0);
    EXPECT_FALSE(keeps(Qt::Key_S, "s"));
    type("2");
    EXPECT_TRUE(keeps(Qt::Key_C, "c"));
    toolbox.activate("place.post");
    press(6.0, 6.0);
    EXPECT_TRUE(keeps(Qt::Key_S, "s")) << "a button that is held is no chain";
    release(6.0, 6.0);
}

TEST_F(Chain, APipeEndsAtItsLastCornerWhenAnotherToolIsTaken)
{
    toolbox.activate("place.run");
    click(1.0, 1.0);
    click(2.0, 1.0);
    click(2.0, 3.0);
    hover(4.0, 3.0);
    toolbox.activate("place.wall");
    EXPECT_EQ(toolbox.active(), "place.wall");
    ASSERT_EQ(plan().runs.size(), 1U);
    EXPECT_TRUE(isAt(run("R1").vertices.back().at, 2.0, 3.0));
    EXPECT_EQ(steps(), 1);
    document.undoStack().undo();
    EXPECT_TRUE(plan().runs.empty());
}

TEST_F(Chain, APipeOfOnePlaceLeavesNothing)
{
    toolbox.activate("place.run");
    click(1.0, 1.0);
    hover(4.0, 3.0);
    toolbox.activate("place.wall");
    EXPECT_EQ(steps(), 0);
    EXPECT_FALSE(toolbox.tool("place.run").busy());
}

TEST_F(Chain, WallsDrawnStayAndTheOpenOneGoes)
{
    toolbox.activate("place.wall");
    click(1.0, 1.0);
    click(3.0, 1.0);
    hover(3.0, 3.0);
    toolbox.activate("place.door");
    EXPECT_EQ(plan().fixtures.size(), 1U);
    EXPECT_EQ(steps(), 1);
    EXPECT_EQ(toolbox.active(), "place.door");
}

TEST_F(Chain, AFloorOfThreeCornersIsClosed)
{
    const auto before = plan().floor;
    toolbox.activate("place.floor");
    click(1.0, 1.0);
    click(5.0, 1.0);
    toolbox.activate("select");
    EXPECT_EQ(plan().floor, before);
    toolbox.activate("place.floor");
    for (const auto& [x, y] : {std::pair(1.0, 1.0), {5.0, 1.0}, {5.0, 4.0}})
        click(x, y);
    toolbox.activate("place.wall");
    EXPECT_EQ(plan().floor->outline.size(), 3U);
    EXPECT_EQ(steps(), 1);
    EXPECT_EQ(toolbox.active(), "place.wall");
}

TEST_F(Chain, WordsOfANoteStayWhenAnotherToolOrPlaceIsTaken)
{
    auto& tool = static_cast<ui::tools::NoteTool&>(toolbox.tool("place.note"));
    toolbox.activate("place.note");
    click(2.0, 2.0);
    QTest::keyClicks(tool.field(), QStringLiteral("Tap here"));
    toolbox.activate("place.wall");
    EXPECT_EQ(toolbox.active(), "place.wall");
    ASSERT_EQ(plan().notes.size(), 1U);
    EXPECT_EQ((*plan().notes.begin())->text, "Tap here");
    toolbox.activate("place.note");
    click(3.0, 2.0);
    QTest::keyClicks(tool.field(), QStringLiteral("Hose"));
    click(5.0, 5.0);
    ASSERT_EQ(plan().notes.size(), 2U);
    EXPECT_EQ(steps(), 2);
    toolbox.activate("place.note");
    click(3.0, 3.0);
    toolbox.activate("select"); // no words: no note
    EXPECT_EQ(plan().notes.size(), 2U);
}

TEST_F(Chain, TheRightButtonEndsItAndOpensNoMenu)
{
    int menus = 0;
    QObject::connect(&view, &ui::canvas::PlanView::menuRequested, [&] { ++menus; });
    toolbox.activate("place.run");
    click(1.0, 1.0);
    click(2.0, 1.0);
    rightPress(4.0, 4.0);
    QContextMenuEvent menu(QContextMenuEvent::Mouse, pixelOf(4.0, 4.0), view.viewport()->mapToGlobal(QPoint()));
    QApplication::sendEvent(view.viewport(), &menu);
    EXPECT_EQ(menus, 0);
    EXPECT_EQ(plan().runs.size(), 1U);
    EXPECT_FALSE(toolbox.tool("place.run").busy());
    EXPECT_EQ(toolbox.active(), "place.run");
    rightPress(4.0, 4.0); // nothing goes on: the menu
    QApplication::sendEvent(view.viewport(), &menu);
    EXPECT_EQ(menus, 1);
}

TEST_F(Chain, TheRightButtonGivesADragBack)
{
    open(applied({}, plan::placeVessel({plan::VesselKind::sump, at(4.0, 4.0), units::radians(0.0), {}, {}, {}})));
    press(4.0, 4.0);
    moveTo(4.5, 4.5);
    moveTo(5.0, 5.0);
    EXPECT_TRUE(document.previewing());
    QMouseEvent right(QEvent::MouseButtonPress, QPointF(pixelOf(5.0, 5.0)), QPointF(pixelOf(5.0, 5.0)), Qt::RightButton,
                      Qt::LeftButton | Qt::RightButton, Qt::NoModifier);
    QApplication::sendEvent(view.viewport(), &right);
    EXPECT_FALSE(document.previewing());
    release(5.0, 5.0);
    EXPECT_EQ(steps(), 0);
    EXPECT_TRUE(isAt(vessel("S1").centre, 4.0, 4.0));
}

TEST_F(Chain, ADragWhoseReleaseGotLostIsGivenBack)
{
    open(applied({}, plan::placeVessel({plan::VesselKind::sump, at(4.0, 4.0), units::radians(0.0), {}, {}, {}})));
    press(4.0, 4.0);
    moveTo(4.5, 4.5);
    moveTo(5.0, 5.0);
    hover(5.5, 5.5); // no button is down any more
    EXPECT_FALSE(document.previewing());
    EXPECT_EQ(steps(), 0);
    toolbox.activate("place.fish-tank");
    press(7.0, 4.0);
    moveTo(7.5, 4.5);
    hover(7.6, 4.6);
    EXPECT_FALSE(document.previewing());
    EXPECT_EQ(plan().vessels.size(), 1U);
}

} // namespace sumpwright::test

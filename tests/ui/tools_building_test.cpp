// Floor, fixtures, notes, dimension lines, measuring.
#include "tests/ui/canvas_stage.hpp"

#include <QApplication>
#include <QLineEdit>
#include <QSignalSpy>

#include "ui/canvas/scene_point.hpp"
#include "ui/tools/measuring_tools.hpp"
#include "ui/tools/note_tool.hpp"

namespace sumpwright::test
{

class Building : public CanvasStage
{
};

TEST_F(Building, FloorIsOneDrag)
{
    toolbox.activate("place.floor");
    drag(at(0.0, 0.0), at(9.0, 6.0));
    ASSERT_EQ(plan().floor->outline.size(), 4U);
    EXPECT_NEAR(units::inSquareMetres(plan::areaOf(*plan().floor)), 54.0, 1e-9);
    EXPECT_EQ(steps(), 1);
    EXPECT_EQ(toolbox.active(), "select");
}

TEST_F(Building, FloorIsCornersOneAfterTheOther)
{
    toolbox.activate("place.floor");
    for (const auto& [x, y] : {std::pair(0.0, 0.0), {6.0, 0.03}, {6.02, 3.0}, {3.0, 3.0}, {3.0, 5.0}, {0.0, 5.0}})
        click(x, y);
    EXPECT_EQ(steps(), 0);
    click(0.02, 0.02); // the first corner closes it
    ASSERT_EQ(plan().floor->outline.size(), 6U);
    EXPECT_NEAR(units::inSquareMetres(plan::areaOf(*plan().floor)), 6.0 * 3.0 + 3.0 * 2.0, 1e-9);
}

TEST_F(Building, FloorThatCrossesItselfIsRefusedAndTheCornersStay)
{
    toolbox.activate("place.floor");
    for (const auto& [x, y] : {std::pair(0.0, 0.0), {4.0, 4.0}, {4.0, 0.0}, {0.0, 3.0}})
        click(x, y);
    key(Qt::Key_Return);
    EXPECT_TRUE(plan().floor->outline.empty());
    EXPECT_EQ(steps(), 0);
    key(Qt::Key_Backspace);
    key(Qt::Key_Return);
    EXPECT_EQ(plan().floor->outline.size(), 3U) << "mended by taking the last corner back";
}

TEST_F(Building, FloorIsTypedAndWalkedByKeyboard)
{
    toolbox.activate("place.floor");
    key(Qt::Key_Right);
    key(Qt::Key_Return);
    const auto walk = [this](Qt::Key way) {
        key(way, Qt::ShiftModifier);
        key(way, Qt::ShiftModifier);
        key(Qt::Key_Return);
    };
    walk(Qt::Key_Right);
    walk(Qt::Key_Up);
    walk(Qt::Key_Left);
    key(Qt::Key_Return); // a second Enter on the same place closes
    ASSERT_EQ(plan().floor->outline.size(), 4U);
    EXPECT_NEAR(units::inSquareMetres(plan::areaOf(*plan().floor)), 4.0, 1e-9);
}

TEST_F(Building, WallsGoOnFromEndToEndUntilEsc)
{
    toolbox.activate("place.wall");
    click(0.0, 0.0);
    click(5.0, 0.0);
    hover(5.0, 2.0);
    type("3.2");
    key(Qt::Key_Return);
    EXPECT_EQ(plan().fixtures.size(), 2U);
    EXPECT_EQ(steps(), 2);
    key(Qt::Key_Escape);
    EXPECT_EQ(toolbox.active(), "place.wall");
    key(Qt::Key_Escape);
    EXPECT_EQ(toolbox.active(), "select");
    const auto& second = **std::next(plan().fixtures.begin());
    EXPECT_TRUE(isAt(second.from, 5.0, 0.0));
    EXPECT_TRUE(isAt(second.to, 5.0, 3.2));
}

TEST_F(Building, DoorPostAndPowerPointArePlaced)
{
    toolbox.activate("place.door");
    drag(at(1.0, 1.0), at(1.9, 1.0));
    toolbox.activate("place.post");
    click(3.0, 3.0);
    toolbox.activate("place.power-point");
    click(4.0, 3.0);
    ASSERT_EQ(plan().fixtures.size(), 3U);
    EXPECT_EQ(steps(), 3);
    const auto& door = *plan().fixtures.find(idOf(plan(), "D1"));
    EXPECT_NEAR(units::inMetres(plan::distanceBetween(door.from, door.to)), 0.9, 1e-9);
    EXPECT_EQ(plan().fixtures.find(idOf(plan(), "PP1"))->kind, plan::FixtureKind::powerPoint);
}

TEST_F(Building, NoteIsTypedInPlaceAndAnEmptyOneIsNone)
{
    auto& tool = static_cast<ui::tools::NoteTool&>(toolbox.tool("place.note"));
    toolbox.activate("place.note");
    click(2.0, 2.0);
    ASSERT_TRUE(tool.field()->hasFocus());
    QTest::keyClick(tool.field(), Qt::Key_Return);
    EXPECT_TRUE(plan().notes.empty());
    click(2.0, 2.0);
    QTest::keyClicks(tool.field(), QStringLiteral("Keep clear"));
    QTest::keyClick(tool.field(), Qt::Key_Return);
    ASSERT_EQ(plan().notes.size(), 1U);
    EXPECT_EQ((*plan().notes.begin())->text, "Keep clear");
    EXPECT_EQ(steps(), 1);
    EXPECT_TRUE(view.hasFocus());
}

TEST_F(Building, NoteGivenUpWithEscIsNone)
{
    auto& tool = static_cast<ui::tools::NoteTool&>(toolbox.tool("place.note"));
    toolbox.activate("place.note");
    click(2.0, 2.0);
    QTest::keyClicks(tool.field(), QStringLiteral("Keep"));
    QTest::keyClick(tool.field(), Qt::Key_Escape);
    EXPECT_FALSE(tool.field()->isVisible());
    EXPECT_TRUE(plan().notes.empty());
}

TEST_F(Building, NoteIsPlacedByKeyboardAloneAndItsEnterGoesNoFurther)
{
    auto& tool = static_cast<ui::tools::NoteTool&>(toolbox.tool("place.note"));
    QSignalSpy opened(&view, &ui::canvas::PlanView::elementActivated);
    toolbox.activate("place.note");
    key(Qt::Key_Right);
    const auto place = ui::canvas::toPlan(*view.overlay().crosshair);
    key(Qt::Key_Return);
    ASSERT_TRUE(tool.field()->hasFocus());
    QTest::keyClick(tool.field(), Qt::Key_Return); // no words: no note, and no second field
    EXPECT_FALSE(tool.field()->isVisible());
    EXPECT_TRUE(view.hasFocus());
    key(Qt::Key_Return);
    QTest::keyClicks(tool.field(), QStringLiteral("Keep clear"));
    QTest::keyClick(tool.field(), Qt::Key_Up);
    QTest::keyClick(tool.field(), Qt::Key_Return);
    ASSERT_EQ(plan().notes.size(), 1U);
    EXPECT_EQ((*plan().notes.begin())->at, place);
    EXPECT_EQ(toolbox.active(), "select");
    EXPECT_EQ(opened.count(), 0) << "the note's Enter asks for no properties";
}

TEST_F(Building, DimensionAndMeasureAreWalkedByKeyboard)
{
    const auto walk = [this](Qt::Key way) {
        key(way, Qt::ShiftModifier);
        key(Qt::Key_Return);
    };
    toolbox.activate("place.dimension");
    key(Qt::Key_Right);
    key(Qt::Key_Return);
    walk(Qt::Key_Right);
    key(Qt::Key_Up);
    walk(Qt::Key_Left);
    ASSERT_EQ(plan().dimensions.size(), 1U);
    const auto& line = **plan().dimensions.begin();
    EXPECT_NEAR(units::inMetres(line.to.x - line.from.x), 1.0, 1e-9);
    EXPECT_EQ(line.to.y, line.from.y);
    EXPECT_NEAR(units::inMetres(line.offset), 0.1, 1e-9);
    EXPECT_EQ(steps(), 1);

    auto& measure = static_cast<ui::tools::MeasureTool&>(toolbox.tool("measure"));
    toolbox.activate("measure");
    key(Qt::Key_Right);
    key(Qt::Key_Return);
    walk(Qt::Key_Down);
    EXPECT_TRUE(measure.result().startsWith(QString::fromStdString(units::format(units::metres(1.0)))))
        << measure.result().toStdString();
    EXPECT_EQ(steps(), 1);
}

TEST_F(Building, FixturesArePlacedByKeyboardAlone)
{
    for (const auto* tool : {"place.wall", "place.door"}) {
        toolbox.activate(tool);
        key(Qt::Key_Right);
        key(Qt::Key_Return);
        key(Qt::Key_Up, Qt::ShiftModifier);
        key(Qt::Key_Return);
        key(Qt::Key_Escape);
        key(Qt::Key_Escape);
    }
    for (const auto* tool : {"place.post", "place.power-point"}) {
        toolbox.activate(tool);
        key(Qt::Key_Right);
        key(Qt::Key_Return);
    }
    ASSERT_EQ(plan().fixtures.size(), 4U);
    EXPECT_EQ(steps(), 4);
    for (const auto* tag : {"W1", "D1"}) {
        const auto& fixture = *plan().fixtures.find(idOf(plan(), tag));
        EXPECT_NEAR(units::inMetres(plan::distanceBetween(fixture.from, fixture.to)), 1.0, 1e-9) << tag;
    }
}

TEST_F(Building, EndsOfWallsAndDimensionsAndTheOffsetAreDragged)
{
    toolbox.activate("place.wall");
    drag(at(1.0, 1.0), at(4.0, 1.0));
    key(Qt::Key_Escape);
    toolbox.activate("select");
    document.select({idOf(plan(), "W1")});
    drag(at(4.0, 1.0), at(4.0, 3.5));
    EXPECT_TRUE(isAt(plan().fixtures.find(idOf(plan(), "W1"))->to, 4.0, 3.5));

    toolbox.activate("place.dimension");
    click(6.0, 1.0);
    click(8.0, 1.0);
    click(7.0, 1.5);
    drag(at(7.0, 1.5), at(7.0, 2.2)); // selected: its handles show
    const auto& moved = **plan().dimensions.begin();
    EXPECT_NEAR(units::inMetres(moved.offset), 1.2, 1e-9);
    drag(at(8.0, 1.0), at(9.0, 1.0));
    const auto& longer = **plan().dimensions.begin();
    EXPECT_TRUE(isAt(longer.to, 9.0, 1.0));
    EXPECT_EQ(steps(), 5);
}

TEST_F(Building, DimensionTakesTwoPointsAndADistance)
{
    toolbox.activate("place.dimension");
    click(1.0, 1.0);
    click(4.0, 1.0);
    EXPECT_EQ(steps(), 0);
    hover(2.0, 1.52);
    EXPECT_FALSE(view.overlay().figures.empty());
    click(2.0, 1.52);
    ASSERT_EQ(plan().dimensions.size(), 1U);
    const auto& line = **plan().dimensions.begin();
    EXPECT_TRUE(isAt(line.from, 1.0, 1.0));
    EXPECT_TRUE(isAt(line.to, 4.0, 1.0));
    EXPECT_NEAR(units::inMetres(line.offset), 0.5, 1e-9) << "left of from-to is positive";
    EXPECT_EQ(steps(), 1);
}

TEST_F(Building, MeasuringTellsTheDistanceAndLeavesNothing)
{
    auto& tool = static_cast<ui::tools::MeasureTool&>(toolbox.tool("measure"));
    document.setReadOnly(true); // measuring is no edit
    toolbox.activate("measure");
    click(1.0, 1.0);
    click(4.0, 5.0);
    EXPECT_EQ(steps(), 0);
    EXPECT_TRUE(tool.result().startsWith(QString::fromStdString(units::format(units::metres(5.0)))))
        << tool.result().toStdString();
    EXPECT_NE(said.find(units::format(units::metres(4.0))), std::string::npos) << said;
}

TEST_F(Building, LinesAndFloorsTakenOutOfThePlanAreNone)
{
    for (const auto* tool : {"place.floor", "place.wall", "place.dimension"}) {
        toolbox.activate(tool);
        press(1.0, 1.0);
        moveTo(3.0, 2.0);
        moveTo(40.0, 3.0);
        release(40.0, 3.0);
        EXPECT_EQ(steps(), 0) << tool;
        EXPECT_FALSE(toolbox.tool(tool).busy()) << tool;
    }
}

} // namespace sumpwright::test

// Placing vessels and pumps by mouse and by keyboard.
#include "tests/ui/canvas_stage.hpp"

#include <QApplication>

#include "ui/canvas/scene_point.hpp"

namespace sumpwright::test
{

using ui::canvas::CueKind;

class PlaceVessel : public CanvasStage
{
protected:
    // One pixel is one millimetre, so that a place can be pointed at exactly.
    void nearby() { view.zoomToScale(96.0 / 25.4); }
    plan::RectangleShape sizeOf(const char* tag) const { return plan::frameOf(vessel(tag).shape); }
};

TEST_F(PlaceVessel, SnapsToTheGridAndCtrlSuspendsThat)
{
    open({});
    view.zoomToRect(QRectF(900.0, -1100.0, 700.0, 500.0));
    nearby();
    toolbox.activate("place.sump");
    hover(1.234, 0.777);
    ASSERT_TRUE(view.overlay().cue.has_value()) << "a visible cue";
    EXPECT_EQ(view.overlay().cue->kind, CueKind::grid);
    click(1.234, 0.777);
    EXPECT_TRUE(isAt(vessel("S1").centre, 1.2, 0.8));

    toolbox.activate("place.sump");
    hover(1.234, 0.777, Qt::ControlModifier);
    EXPECT_FALSE(view.overlay().cue.has_value());
    click(1.234, 0.777, Qt::ControlModifier);
    EXPECT_TRUE(isAt(vessel("S2").centre, 1.234, 0.777));
    EXPECT_EQ(steps(), 2);
}

TEST_F(PlaceVessel, EveryKindIsPlacedByOneClickAndOneStep)
{
    int expected = 0;
    for (const auto& spec : toolbox.specs()) {
        if (spec.id.find("tank") == std::string::npos && spec.id.find("bed") == std::string::npos &&
            spec.id != "place.sump" && spec.id != "place.settler")
            continue;
        toolbox.activate(spec.id);
        click(1.0 + 1.7 * (expected % 5), 2.0 + 3.0 * (expected / 5));
        EXPECT_EQ(steps(), ++expected) << spec.id;
        EXPECT_EQ(plan().vessels.size(), static_cast<std::size_t>(expected)) << spec.id;
        EXPECT_EQ(toolbox.active(), "select") << spec.id;
        ASSERT_EQ(document.selection().size(), 1U);
        EXPECT_TRUE(plan().vessels.find(document.selection().front()));
    }
    EXPECT_EQ(expected, 7);
}

TEST_F(PlaceVessel, DragSizesARectangleInOneStep)
{
    toolbox.activate("place.media-bed");
    drag(at(2.0, 1.0), at(3.4, 3.0));
    EXPECT_EQ(steps(), 1);
    EXPECT_DOUBLE_EQ(units::inMetres(sizeOf("B1").length), 1.4);
    EXPECT_DOUBLE_EQ(units::inMetres(sizeOf("B1").width), 2.0);
    EXPECT_TRUE(isAt(vessel("B1").centre, 2.7, 2.0));
}

TEST_F(PlaceVessel, DragSizesARoundOneFromItsCentre)
{
    toolbox.activate("place.fish-tank");
    drag(at(4.0, 3.0), at(4.9, 3.0));
    const auto* round = std::get_if<plan::RoundShape>(&vessel("T1").shape);
    ASSERT_NE(round, nullptr);
    EXPECT_DOUBLE_EQ(units::inMetres(round->diameter), 1.8);
    EXPECT_TRUE(isAt(vessel("T1").centre, 4.0, 3.0));
}

TEST_F(PlaceVessel, ANumberTypedWhileDraggingFixesTheLength)
{
    toolbox.activate("place.media-bed");
    press(2.0, 1.0);
    moveTo(2.5, 1.5);
    moveTo(3.1, 2.2);
    type("1.25x600");
    type("mm");
    release(3.1, 2.2);
    EXPECT_DOUBLE_EQ(units::inMetres(sizeOf("B1").length), 1.25);
    EXPECT_NEAR(units::inMetres(sizeOf("B1").width), 0.6, 1e-12);
    EXPECT_TRUE(isAt(vessel("B1").centre, 2.625, 1.3)) << "the pressed corner stays";
    EXPECT_EQ(steps(), 1);
}

TEST_F(PlaceVessel, EscGivesBackAndLeavesNoStep)
{
    toolbox.activate("place.media-bed");
    press(2.0, 1.0);
    moveTo(2.5, 1.5);
    moveTo(3.1, 2.2);
    EXPECT_TRUE(document.previewing());
    EXPECT_EQ(document.shown().vessels.size(), 1U);
    key(Qt::Key_Escape);
    EXPECT_FALSE(document.previewing());
    release(3.1, 2.2);
    EXPECT_EQ(steps(), 0);
    EXPECT_TRUE(plan().vessels.empty());
    EXPECT_EQ(toolbox.active(), "place.media-bed") << "the first Esc gives back the gesture";
    key(Qt::Key_Escape);
    EXPECT_EQ(toolbox.active(), "select") << "the second leaves the tool";
}

TEST_F(PlaceVessel, ResultsThatArriveInMidDragChangeNothing)
{
    toolbox.activate("place.media-bed");
    press(2.0, 1.0);
    moveTo(2.5, 1.5);
    moveTo(3.4, 3.0);
    const auto revision = document.revision();
    QTest::qWait(150); // the engine has answered by now
    EXPECT_NE(document.assessment(), nullptr);
    EXPECT_EQ(document.revision(), revision);
    EXPECT_TRUE(document.previewing());
    release(3.4, 3.0);
    EXPECT_EQ(steps(), 1);
    EXPECT_DOUBLE_EQ(units::inMetres(sizeOf("B1").width), 2.0);
}

TEST_F(PlaceVessel, ShiftKeepsTheToolForTheNextOne)
{
    toolbox.activate("place.media-bed");
    click(2.0, 2.0, Qt::ShiftModifier);
    EXPECT_EQ(toolbox.active(), "place.media-bed");
    click(4.0, 2.0);
    EXPECT_EQ(toolbox.active(), "select");
    EXPECT_EQ(plan().vessels.size(), 2U);
}

TEST_F(PlaceVessel, IsDoneByKeyboardAlone)
{
    toolbox.activate("place.fish-tank");
    key(Qt::Key_Right); // the crosshair appears
    ASSERT_TRUE(view.overlay().crosshair.has_value());
    const auto start = *view.overlay().crosshair;
    key(Qt::Key_Right);
    key(Qt::Key_Up, Qt::ShiftModifier);
    key(Qt::Key_Left, Qt::ControlModifier);
    EXPECT_EQ(*view.overlay().crosshair, start + QPointF(100.0 - 1.0, -1000.0));
    const auto place = ui::canvas::toPlan(*view.overlay().crosshair);
    key(Qt::Key_Return);
    ASSERT_EQ(plan().vessels.size(), 1U);
    EXPECT_TRUE(isAt(vessel("T1").centre, units::inMetres(place.x), units::inMetres(place.y)))
        << "the 1 mm step is kept: the crosshair is not snapped again";
}

TEST_F(PlaceVessel, IsRefusedKindlyOnAReadOnlyPlan)
{
    document.setReadOnly(true);
    toolbox.activate("place.sump");
    click(2.0, 2.0);
    EXPECT_TRUE(plan().vessels.empty());
    EXPECT_NE(said.find("read-only"), std::string::npos);
}

TEST_F(PlaceVessel, PumpStandsOnlyInAVessel)
{
    toolbox.activate("place.pump");
    click(1.0, 1.0);
    EXPECT_TRUE(plan().pumps.empty());
    EXPECT_NE(said.find("sump"), std::string::npos) << said;
    toolbox.activate("place.sump");
    click(4.0, 3.0);
    toolbox.activate("place.pump");
    click(4.31, 3.18); // out of reach of the sump's centre and of its walls: the grid
    ASSERT_EQ(plan().pumps.size(), 1U);
    const auto& pump = **plan().pumps.begin();
    EXPECT_EQ(pump.vessel, idOf(plan(), "S1"));
    EXPECT_TRUE(isAt(pump.offset, 0.3, 0.2));
    EXPECT_TRUE(document.catalogue()->pump(pump.modelId).ok());
    EXPECT_EQ(steps(), 2);
}

TEST_F(PlaceVessel, PumpIsStoodByKeyboardAlone)
{
    toolbox.activate("place.sump");
    key(Qt::Key_Right);
    key(Qt::Key_Return);
    ASSERT_EQ(plan().vessels.size(), 1U);
    toolbox.activate("place.pump");
    key(Qt::Key_Right); // the crosshair starts in the middle, where the sump stands
    key(Qt::Key_Right);
    key(Qt::Key_Return);
    ASSERT_EQ(plan().pumps.size(), 1U);
    EXPECT_EQ((*plan().pumps.begin())->vessel, idOf(plan(), "S1"));
    EXPECT_EQ(steps(), 2);
}

TEST_F(PlaceVessel, APressTakenOutOfThePlanDoesNothing)
{
    toolbox.activate("place.media-bed");
    press(2.0, 1.0);
    moveTo(3.0, 2.0);
    moveTo(40.0, 2.0);
    release(40.0, 2.0);
    EXPECT_TRUE(plan().vessels.empty());
    EXPECT_FALSE(document.previewing());
    EXPECT_EQ(steps(), 0);
    EXPECT_NE(said.find("outside the plan"), std::string::npos) << said;
    press(2.0, 1.0);
    moveTo(3.0, 2.0);
    moveTo(40.0, 2.0);
    type("1.25x0.6");
    key(Qt::Key_Return); // typed: meant, wherever the pointer has got to
    ASSERT_EQ(plan().vessels.size(), 1U);
    EXPECT_DOUBLE_EQ(units::inMetres(sizeOf("B1").length), 1.25);
}

} // namespace sumpwright::test

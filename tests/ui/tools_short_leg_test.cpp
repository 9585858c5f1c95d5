// Legs shorter than the reach of snapping, by keys, by typed lengths and by mouse: nothing is drawn back to where it
// started, and what the keyboard points at stays where the keys put it.
#include "tests/ui/canvas_stage.hpp"

#include <QUndoStack>

#include "core/plan/edits/place.hpp"
#include "ui/canvas/scene_point.hpp"
#include "ui/tools/pipe_tool.hpp"

namespace sumpwright::test
{

class ShortLeg : public CanvasStage
{
protected:
    void SetUp() override
    {
        CanvasStage::SetUp();
        toolbox.activate("place.run");
        click(3.0, 0.5);
        doubleClick(3.0, 6.5); // the main that is led off from
        ASSERT_EQ(plan().runs.size(), 1U);
        ASSERT_GT(10.0 * view.pixel(), 110.0) << "the reach is longer than the legs drawn here";
        toolbox.activate("place.run");
    }
    void placeCrosshair(const char* place)
    {
        type(place);
        key(Qt::Key_Return);
        key(Qt::Key_Return); // and clicks there
    }
    void branchOff() // a tee at 3.0, 4.3
    {
        click(3.0, 4.3);
        click(5.0, 4.3);
        key(Qt::Key_Return);
        ASSERT_EQ(plan().tees.size(), 1U);
        toolbox.activate("place.run");
    }
    // Led off the main, away from it.
    const plan::Run& branch() const
    {
        for (const auto& run : plan().runs)
            if (std::holds_alternative<plan::TeeEnd>(run->from) && run->vertices[1].at.x != units::metres(3.0))
                return *run;
        ADD_FAILURE() << "nothing leads off the main";
        return **plan().runs.begin();
    }
    ui::tools::PipeTool& tool() { return static_cast<ui::tools::PipeTool&>(toolbox.tool("place.run")); }
};

TEST_F(ShortLeg, ByTheCrosshairStaysWhereTheKeysPutIt)
{
    placeCrosshair("3x4.3");
    key(Qt::Key_Left);
    key(Qt::Key_Return);
    ASSERT_EQ(tool().sketch().vertices().size(), 2U);
    EXPECT_TRUE(isAt(tool().sketch().last(), 2.9, 4.3));
    key(Qt::Key_Up);
    key(Qt::Key_Return);
    key(Qt::Key_Return);
    ASSERT_EQ(plan().tees.size(), 1U);
    EXPECT_TRUE(isAt((*plan().tees.begin())->at, 3.0, 4.3));
    EXPECT_TRUE(isAt(branch().vertices.back().at, 2.9, 4.4));
}

TEST_F(ShortLeg, ByATypedLengthIsAsLongAsTyped)
{
    placeCrosshair("3x4.3");
    key(Qt::Key_Left);
    type("0.05");
    key(Qt::Key_Return);
    ASSERT_EQ(tool().sketch().vertices().size(), 2U);
    EXPECT_TRUE(isAt(tool().sketch().last(), 2.95, 4.3));
    ASSERT_TRUE(tool().crosshair());
    EXPECT_TRUE(isAt(*tool().crosshair(), 2.95, 4.3));
}

TEST_F(ShortLeg, OffATeeIsDrawnByKeysAndByMouse)
{
    branchOff();
    placeCrosshair("3x4.3");
    key(Qt::Key_Left);
    key(Qt::Key_Return);
    EXPECT_TRUE(isAt(tool().sketch().last(), 2.9, 4.3));
    key(Qt::Key_Escape);
    click(3.0, 4.3);
    click(2.9, 4.3);
    EXPECT_TRUE(isAt(tool().sketch().last(), 2.9, 4.3));
    click(2.9, 4.4);
    EXPECT_TRUE(isAt(tool().sketch().last(), 2.9, 4.4));
}

TEST_F(ShortLeg, ByTheMouseIsDrawnOffARun)
{
    click(3.0, 4.3);
    hover(2.9, 4.3);
    ASSERT_TRUE(view.overlay().cue.has_value());
    EXPECT_EQ(view.overlay().cue->name, QString()) << "the start is offered as the end";
    click(2.9, 4.3);
    click(2.9, 4.4);
    click(2.2, 4.4);
    key(Qt::Key_Return);
    const auto& vertices = branch().vertices;
    ASSERT_EQ(vertices.size(), 4U);
    EXPECT_TRUE(isAt(vertices[0].at, 3.0, 4.3));
    EXPECT_TRUE(isAt(vertices[1].at, 2.9, 4.3));
    EXPECT_TRUE(isAt(vertices[2].at, 2.9, 4.4));
    EXPECT_TRUE(isAt(vertices[3].at, 2.2, 4.4));
}

TEST_F(ShortLeg, BackToTheSameRunFartherAlongIsStillOffered)
{
    click(3.0, 2.0);
    click(4.0, 2.0);
    click(4.0, 5.0);
    click(3.05, 5.0);
    EXPECT_FALSE(tool().busy());
    EXPECT_EQ(plan().tees.size(), 2U) << "a bypass";
}

TEST_F(ShortLeg, ByATypedLengthUnderTheMouseIsLedToNothingOnItsWay)
{
    click(3.0, 4.3);
    hover(2.95, 4.3);
    type("0.07");
    ASSERT_FALSE(view.overlay().sketch.isEmpty());
    EXPECT_NEAR(view.overlay().sketch.back().x(), 2930.0, 0.01) << "the end is shown where it will be";
    key(Qt::Key_Return);
    EXPECT_TRUE(isAt(tool().sketch().last(), 2.93, 4.3));
}

TEST_F(ShortLeg, ALengthThatIsNoneIsToldAndDrawsNothing)
{
    click(1.0, 1.0);
    hover(2.0, 1.0);
    type("1..2");
    key(Qt::Key_Return);
    EXPECT_EQ(tool().sketch().vertices().size(), 1U);
    EXPECT_NE(said.find("1..2"), std::string::npos) << said;
    EXPECT_EQ(plan().runs.size(), 1U);
}

TEST_F(ShortLeg, TheCrosshairIsLedToAPortOnlyWhenItStandsThere)
{
    plan::VesselWish tank{plan::VesselKind::fishTank,           at(6.0, 3.0), units::radians(0.0),
                          plan::RoundShape{units::metres(1.4)}, {},           {}};
    open(applied(plan(), plan::placeVessel(tank)));
    toolbox.activate("place.run");
    const auto port = plan::placeOf(vessel("T1"), vessel("T1").ports.front());
    const QString beside = QStringLiteral("%1x%2").arg(units::inMetres(port.x) + 0.04).arg(units::inMetres(port.y));
    placeCrosshair(beside.toLatin1().constData());
    ASSERT_TRUE(tool().busy());
    EXPECT_TRUE(isAt(tool().sketch().last(), units::inMetres(port.x) + 0.04, units::inMetres(port.y)));
    key(Qt::Key_Escape);
    type(beside.toLatin1().constData());
    key(Qt::Key_Return);
    ASSERT_TRUE(view.overlay().cue.has_value());
    EXPECT_TRUE(view.overlay().cue->name.contains(QStringLiteral("J"))) << "the port is one key away";
    key(Qt::Key_J);
    key(Qt::Key_Return);
    EXPECT_TRUE(std::holds_alternative<plan::AtPort>(tool().sketch().from()));
    key(Qt::Key_Escape);
    const QString there = QStringLiteral("%1x%2").arg(units::inMetres(port.x)).arg(units::inMetres(port.y));
    placeCrosshair(there.toLatin1().constData());
    EXPECT_TRUE(std::holds_alternative<plan::AtPort>(tool().sketch().from()));
}

TEST_F(ShortLeg, WallsGoOnByLessThanTheReach)
{
    toolbox.activate("place.wall");
    click(1.0, 1.0);
    click(2.0, 1.0);
    click(2.0, 1.1);
    click(2.6, 1.1);
    key(Qt::Key_Escape);
    ASSERT_EQ(plan().fixtures.size(), 3U);
    auto at = plan().fixtures.begin();
    ++at;
    EXPECT_TRUE(isAt((*at)->from, 2.0, 1.0));
    EXPECT_TRUE(isAt((*at)->to, 2.0, 1.1));
}

TEST_F(ShortLeg, ATypedWallUnderTheMouseIsAsLongAsTyped)
{
    toolbox.activate("place.wall");
    click(1.0, 1.0);
    click(2.0, 1.0);
    hover(2.05, 1.0);
    type("0.06");
    key(Qt::Key_Return);
    key(Qt::Key_Escape);
    ASSERT_EQ(plan().fixtures.size(), 2U);
    const auto& wall = *plan().fixtures.find(idOf(plan(), "W2"));
    EXPECT_NEAR(units::inMetres(plan::distanceBetween(wall.from, wall.to)), 0.06, 1e-6);
}

} // namespace sumpwright::test

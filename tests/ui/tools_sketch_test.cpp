// The site sketch: scaled, moved and straightened, by mouse and by keyboard.
#include "tests/ui/canvas_stage.hpp"

#include <QApplication>
#include <QLineEdit>

#include "core/plan/edits/underlay.hpp"
#include "ui/canvas/scene_point.hpp"
#include "ui/tools/measuring_tools.hpp"

namespace sumpwright::test
{

class Sketch : public CanvasStage
{
};

TEST_F(Sketch, IsScaledByKeyboardAlone)
{
    plan::Underlay underlay;
    underlay.fileName = "shed.png";
    document.commit(plan::setUnderlay(underlay));
    auto& tool = static_cast<ui::tools::UnderlayScaleTool&>(toolbox.tool("underlay.scale"));
    toolbox.activate("underlay.scale");
    key(Qt::Key_Right);
    key(Qt::Key_Return);
    key(Qt::Key_Right, Qt::ShiftModifier);
    key(Qt::Key_Return);
    ASSERT_TRUE(tool.distanceField()->hasFocus());
    QTest::keyClicks(tool.distanceField(), QStringLiteral("3 m"));
    QTest::keyClick(tool.distanceField(), Qt::Key_Return);
    EXPECT_NEAR(units::inMillimetres(plan().underlay->pixelSize), 15.0, 1e-6) << "1 m on the sheet is 3 m";
    EXPECT_EQ(toolbox.active(), "select");
    EXPECT_TRUE(view.hasFocus());
}

TEST_F(Sketch, IsScaledByTwoPointsAndADistance)
{
    plan::Underlay underlay;
    underlay.fileName = "shed.png";
    document.commit(plan::setUnderlay(underlay));
    auto& tool = static_cast<ui::tools::UnderlayScaleTool&>(toolbox.tool("underlay.scale"));
    toolbox.activate("underlay.scale");
    click(1.0, 1.0);
    click(3.0, 1.0);
    ASSERT_TRUE(tool.distanceField()->hasFocus());
    QTest::keyClicks(tool.distanceField(), QStringLiteral("4 m"));
    QTest::keyClick(tool.distanceField(), Qt::Key_Return);
    EXPECT_NEAR(units::inMillimetres(plan().underlay->pixelSize), 10.0, 0.15) << "twice 5 mm, to the pixel clicked";
    EXPECT_EQ(steps(), 2);
}

TEST_F(Sketch, IsMovedByAPointOfItToWhereThatBelongs)
{
    plan::Underlay underlay;
    underlay.fileName = "shed.png";
    underlay.corner = at(0.5, 0.5);
    document.commit(plan::setUnderlay(underlay));
    toolbox.activate("underlay.move");
    click(1.03, 1.06);
    hover(3.02, 2.03); // the second point snaps to the grid
    EXPECT_TRUE(document.previewing()) << "the sketch goes along";
    EXPECT_EQ(steps(), 1);
    click(3.02, 2.03);
    EXPECT_FALSE(document.previewing());
    const auto moved = plan().underlay->corner;
    EXPECT_NEAR(units::inMetres(moved.x), 0.5 + 3.0 - 1.03, 0.012) << "to the pixel clicked";
    EXPECT_NEAR(units::inMetres(moved.y), 0.5 + 2.0 - 1.06, 0.012);
    EXPECT_EQ(steps(), 2);

    toolbox.activate("underlay.move"); // and by the keyboard, exactly
    key(Qt::Key_Right);
    key(Qt::Key_Return);
    key(Qt::Key_Right, Qt::ShiftModifier);
    key(Qt::Key_Escape);
    EXPECT_FALSE(document.previewing());
    EXPECT_EQ(plan().underlay->corner, moved) << "Esc gives back";
    key(Qt::Key_Right);
    key(Qt::Key_Return);
    key(Qt::Key_Right, Qt::ShiftModifier);
    key(Qt::Key_Return);
    EXPECT_NEAR(units::inMetres(plan().underlay->corner.x - moved.x), 1.0, 1e-9);
    EXPECT_EQ(toolbox.active(), "select");
}

TEST_F(Sketch, IsStraightenedAlongAnEdgeOfIt)
{
    plan::Underlay underlay;
    underlay.fileName = "shed.png";
    underlay.corner = at(1.0, 1.0);
    document.commit(plan::setUnderlay(underlay));
    toolbox.activate("underlay.turn");
    key(Qt::Key_Right);
    const auto pivot = ui::canvas::toPlan(*view.overlay().crosshair);
    key(Qt::Key_Return);
    for (int i = 0; i < 4; ++i)
        key(Qt::Key_Right, Qt::ShiftModifier);
    for (int i = 0; i < 3; ++i)
        key(Qt::Key_Up, Qt::ShiftModifier);
    key(Qt::Key_Return); // an edge that rises 3 in 4: by hand, 36.87 degrees
    EXPECT_NEAR(units::inDegrees(plan().underlay->turn), -36.869898, 1e-5);
    EXPECT_NEAR(units::inMetres(plan::distanceBetween(plan().underlay->corner, pivot)),
                units::inMetres(plan::distanceBetween(at(1.0, 1.0), pivot)), 1e-6)
        << "it turns about the first point";
    EXPECT_EQ(steps(), 2) << "one step";
    toolbox.activate("underlay.turn");
    key(Qt::Key_Right);
    key(Qt::Key_Return);
    key(Qt::Key_Return);
    EXPECT_NE(said.find("two points are one"), std::string::npos) << said;
    EXPECT_EQ(steps(), 2);
}

TEST_F(Sketch, ScalingWithoutASketchSaysSo)
{
    toolbox.activate("underlay.scale");
    click(1.0, 1.0);
    click(3.0, 1.0);
    EXPECT_NE(said.find("no site sketch"), std::string::npos) << said;
    EXPECT_EQ(steps(), 0);
}

} // namespace sumpwright::test

// The levels of a run, typed where they stand on the plan: by double click on a vertex or on the level written beside
// it, and by keys alone.
#include "tests/ui/canvas_stage.hpp"

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QUndoStack>

#include "core/plan/edits/place.hpp"
#include "ui/canvas/label_layer.hpp"
#include "ui/canvas/scene_point.hpp"
#include "ui/tools/level_editor.hpp"
#include "ui/tools/pipe_tool.hpp"
#include "ui/tools/select_tool.hpp"

namespace sumpwright::test
{

class Levels : public CanvasStage
{
protected:
    void SetUp() override
    {
        CanvasStage::SetUp();
        toolbox.activate("place.run");
        click(1.0, 1.0);
        click(4.0, 1.0);
        key(Qt::Key_L); // a vertical leg at the second place
        auto* level = static_cast<ui::tools::PipeTool&>(toolbox.tool("place.run")).levelField();
        QTest::keyClicks(level, QStringLiteral("1.2 m"));
        QTest::keyClick(level, Qt::Key_Return);
        click(4.0, 5.0);
        key(Qt::Key_Return);
        ASSERT_EQ(plan().runs.size(), 1U);
        toolbox.activate("select");
        document.select({idOf(plan(), "R1")});
        before = steps();
        view.planScene().relabel();
    }
    ui::tools::LevelEditor& editor() { return static_cast<ui::tools::SelectTool&>(toolbox.tool("select")).levels(); }
    void typed(const char* text, Qt::Key end = Qt::Key_Return)
    {
        QTest::keyClicks(editor().field(), QString::fromLatin1(text));
        QTest::keyClick(editor().field(), end);
    }
    double level(std::size_t vertex) { return units::inMetres(run("R1").vertices.at(vertex).level); }
    int before = 0;
};

TEST_F(Levels, AreTypedByDoubleClickOnAVertexInOneStep)
{
    doubleClick(4.0, 5.0);
    ASSERT_TRUE(editor().isOpen());
    ASSERT_TRUE(editor().field()->hasFocus());
    EXPECT_TRUE(editor().field()->text().contains(QStringLiteral("1.2"))) << editor().field()->text().toStdString();
    typed("0.9 m + 5 cm");
    EXPECT_NEAR(level(3), 0.95, 1e-9);
    EXPECT_EQ(steps(), before + 1);
    EXPECT_FALSE(editor().isOpen());
    EXPECT_TRUE(view.hasFocus());
    EXPECT_TRUE(document.isSelected(idOf(plan(), "R1")));
}

TEST_F(Levels, AreTypedByDoubleClickOnTheLevelWritten)
{
    const ui::canvas::LabelLayer::Shown* written = nullptr;
    for (const auto& label : view.planScene().labels().shown())
        if (label.element == idOf(plan(), "R1") && label.part == 2)
            written = &label;
    ASSERT_TRUE(written) << "the vertical leg tells both its levels";
    const auto half = [&](double share) {
        return view.mapFromScene(written->rect.topLeft() +
                                 QPointF(written->rect.width() * share, written->rect.height() / 2.0));
    };
    const QPoint foot = half(0.25);
    const QPoint top = half(0.75);
    for (const auto& [place, vertex] : {std::pair(foot, 1), std::pair(top, 2)}) {
        QTest::mouseClick(view.viewport(), Qt::LeftButton, {}, place);
        EXPECT_TRUE(document.isSelected(idOf(plan(), "R1"))) << "the letters belong to the run";
        QTest::mouseDClick(view.viewport(), Qt::LeftButton, {}, place);
        ASSERT_TRUE(editor().isOpen());
        EXPECT_TRUE(editor().field()->accessibleName().endsWith(QString::number(vertex + 1)))
            << editor().field()->accessibleName().toStdString();
        QTest::keyClick(editor().field(), Qt::Key_Escape);
    }
    EXPECT_EQ(steps(), before);
}

TEST_F(Levels, AreTypedByKeysAloneFromVertexToVertex)
{
    toolbox.typeLevels();
    ASSERT_TRUE(editor().isOpen());
    typed("0.2 m", Qt::Key_Tab);
    EXPECT_NEAR(level(0), 0.2, 1e-9);
    ASSERT_TRUE(editor().isOpen());
    EXPECT_TRUE(editor().findChild<QLabel*>()->text().contains(QStringLiteral("foot")))
        << editor().findChild<QLabel*>()->text().toStdString();
    QTest::keyClick(editor().field(), Qt::Key_Tab); // as it is
    EXPECT_TRUE(editor().findChild<QLabel*>()->text().contains(QStringLiteral("top")));
    typed("1.1 m", Qt::Key_Backtab);
    EXPECT_NEAR(level(2), 1.1, 1e-9);
    EXPECT_TRUE(editor().field()->accessibleName().endsWith(QStringLiteral("2")));
    EXPECT_EQ(steps(), before + 2) << "what was not typed is no step";
    QTest::keyClick(editor().field(), Qt::Key_Escape);
    EXPECT_FALSE(editor().isOpen());
    EXPECT_TRUE(view.hasFocus());
}

TEST_F(Levels, RefusesWhatIsNoneAndKeepsTheOldOne)
{
    doubleClick(4.0, 5.0);
    typed("3 kg");
    EXPECT_TRUE(editor().isOpen());
    EXPECT_NEAR(level(3), 1.2, 1e-9);
    EXPECT_EQ(steps(), before);
    bool told = false;
    for (const auto* label : editor().findChildren<QLabel*>())
        told = told || (label->isVisible() && label->text().contains(QStringLiteral("3 kg")));
    EXPECT_TRUE(told);
    QTest::keyClick(editor().field(), Qt::Key_Escape);
    EXPECT_FALSE(editor().isOpen());
}

TEST_F(Levels, TypedAreKeptWhenThePlanIsClickedOrAnotherToolTaken)
{
    doubleClick(4.0, 5.0);
    QTest::keyClicks(editor().field(), QStringLiteral("0.7 m"));
    click(8.0, 8.0);
    EXPECT_NEAR(level(3), 0.7, 1e-9);
    document.select({idOf(plan(), "R1")});
    doubleClick(4.0, 5.0);
    QTest::keyClicks(editor().field(), QStringLiteral("0.6 m"));
    toolbox.activate("place.wall");
    EXPECT_NEAR(level(3), 0.6, 1e-9);
    EXPECT_FALSE(editor().isOpen());
}

TEST_F(Levels, OfEndsThatFollowAVesselAreNotOfferedAndSaidSo)
{
    plan::VesselWish tank{plan::VesselKind::fishTank,           at(6.0, 3.0), units::radians(0.0),
                          plan::RoundShape{units::metres(1.4)}, {},           {}};
    ASSERT_TRUE(document.commit(plan::placeVessel(tank)));
    const auto port = plan::placeOf(vessel("T1"), vessel("T1").ports.front());
    toolbox.activate("place.run");
    click(units::inMetres(port.x), units::inMetres(port.y));
    click(6.0, 6.0);
    key(Qt::Key_Return);
    toolbox.activate("select");
    document.select({idOf(plan(), "R2")});
    doubleClick(units::inMetres(port.x), units::inMetres(port.y));
    EXPECT_FALSE(editor().isOpen());
    EXPECT_NE(said.find("follows"), std::string::npos) << said;
    toolbox.typeLevels();
    ASSERT_TRUE(editor().isOpen());
    const QPointF held = ui::canvas::toScene(port);
    for (int i = 0; i < 3; ++i) { // round over all that are free
        EXPECT_GT((editor().place() - held).manhattanLength(), 1.0);
        QTest::keyClick(editor().field(), Qt::Key_Tab);
    }
}

TEST_F(Levels, GoWithTheirRun)
{
    doubleClick(4.0, 5.0);
    ASSERT_TRUE(editor().isOpen());
    document.undoStack().undo();
    EXPECT_TRUE(plan().runs.empty());
    EXPECT_FALSE(editor().isOpen());
    toolbox.typeLevels();
    EXPECT_FALSE(editor().isOpen());
    EXPECT_NE(said.find("run"), std::string::npos) << said;
}

} // namespace sumpwright::test

// Levels dragged, moved by keys and typed in elevation and section; one undo step each.
#include <QLineEdit>

#include "tests/ui/levels_fixture.hpp"
#include "ui/canvas/canvas_settings.hpp"
#include "ui/section/level_field.hpp"

namespace sumpwright::tests
{
namespace
{

using plan::LevelKind;
using ui::section::Mode;

class LevelDragging : public LevelsWindow
{
protected:
    LevelDragging() { open(); }
};

TEST_F(LevelDragging, OfALipChangesThePlanInOneStepThatUndoTakesBack)
{
    const auto lip = levelOf("T1", LevelKind::lip);
    const double was = metres(lip);
    const int before = steps();
    drag(at(lip), above(at(lip), -0.1));
    EXPECT_NEAR(metres(lip), was - 0.1, 0.0101); // on the level grid of 10 mm
    EXPECT_NEAR(std::remainder(metres(lip), 0.01), 0.0, 1e-9);
    EXPECT_EQ(steps(), before + 1);
    document().undoStack().undo();
    EXPECT_DOUBLE_EQ(metres(lip), was);
}

TEST_F(LevelDragging, ShowsThePlanAsItWouldBeAndEscGivesItBack)
{
    const auto lip = levelOf("T1", LevelKind::lip);
    const double was = metres(lip);
    const int before = steps();
    const QPoint place = at(lip);
    press(place);
    move(above(place, -0.05));
    move(above(place, -0.1));
    ASSERT_TRUE(document().previewing());
    EXPECT_LT(units::inMetres(*plan::levelOf(document().shown(), lip)), was - 0.05);
    EXPECT_TRUE(view().readOut().contains(QStringLiteral("verflow"))) << view().readOut().toStdString();
    key(Qt::Key_Escape);
    EXPECT_FALSE(document().previewing());
    release(above(place, -0.1));
    EXPECT_DOUBLE_EQ(metres(lip), was);
    EXPECT_EQ(steps(), before);
}

TEST_F(LevelDragging, TellsWhyALevelIsRefusedAndLeavesThePlan)
{
    const auto lip = levelOf("T1", LevelKind::lip);
    const double was = metres(lip);
    const QPoint place = at(lip);
    press(place);
    move(above(place, 0.2));
    move(above(place, 0.6)); // over the rim
    EXPECT_TRUE(view().readOut().contains(u'\n')) << view().readOut().toStdString();
    EXPECT_TRUE(view().readOut().contains(QStringLiteral("rim"))) << view().readOut().toStdString();
    release(above(place, 0.6));
    EXPECT_DOUBLE_EQ(metres(lip), was);
}

TEST_F(LevelDragging, TakesALevelTypedMeanwhile)
{
    const auto lip = levelOf("T1", LevelKind::lip);
    const QPoint place = at(lip);
    press(place);
    move(above(place, -0.05));
    move(above(place, -0.1));
    type("0.876");
    EXPECT_NEAR(units::inMetres(*plan::levelOf(document().shown(), lip)), 0.876, 1e-9);
    key(Qt::Key_Return);
    EXPECT_NEAR(metres(lip), 0.876, 1e-9);
    release(place);
    EXPECT_NEAR(metres(lip), 0.876, 1e-9);
}

TEST_F(LevelDragging, LinesUpWithTheLevelOfAnother)
{
    const auto rim = levelOf("B1", LevelKind::rim), other = levelOf("B2", LevelKind::rim);
    ASSERT_TRUE(document().commit(plan::setLevel(other, units::elevationMetres(0.9137))));
    document().select({idOf("B1")}); // another bed stands right behind it
    drag(at(rim), {at(rim).x(), at(other).y()});
    EXPECT_NEAR(metres(rim), 0.9137, 1e-9);
}

TEST_F(LevelDragging, OfTheBaseTakesTheWholeVesselAlong)
{
    const auto base = levelOf("B3", LevelKind::base), rim = levelOf("B3", LevelKind::rim);
    document().select({idOf("B3")}); // beds stand behind one another: the chosen one is meant
    const double height = metres(rim) - metres(base), was = metres(base);
    drag(at(base), above(at(base), 0.1));
    EXPECT_GT(metres(base), was + 0.05);
    EXPECT_NEAR(metres(rim) - metres(base), height, 1e-9);
}

TEST_F(LevelDragging, InTheSectionDoesTheSame)
{
    show(Mode::section);
    const auto lip = levelOf("T1", LevelKind::lip);
    const double was = metres(lip);
    const int before = steps();
    drag(at(lip), above(at(lip), -0.2));
    EXPECT_LT(metres(lip), was - 0.1);
    EXPECT_EQ(steps(), before + 1);
}

TEST_F(LevelDragging, OfTheSumpsRunningLevelIsThere)
{
    const auto running = levelOf("S1", LevelKind::running);
    const double was = metres(running);
    drag(at(running), above(at(running), 0.06));
    EXPECT_GT(metres(running), was + 0.03);
}

TEST_F(LevelDragging, DoesNotHappenOnAPlanForReadingOnly)
{
    document().setReadOnly(true);
    const auto lip = levelOf("T1", LevelKind::lip);
    const double was = metres(lip);
    drag(at(lip), above(at(lip), -0.1));
    EXPECT_DOUBLE_EQ(metres(lip), was);
}

TEST_F(LevelDragging, WithoutSnappingKeepsThePointersLevel)
{
    work.canvas.setSnapping(false);
    const auto lip = levelOf("T1", LevelKind::lip);
    const QPoint place = at(lip);
    drag(place, place + QPoint(0, 7));
    EXPECT_NEAR(metres(lip), 0.95 - 7.0 / view().sheet().tall(), 1e-6);
}

class LevelKeys : public LevelsWindow
{
protected:
    LevelKeys()
    {
        open();
        view().setFocus();
    }
};

TEST_F(LevelKeys, WalkFromLevelToLevelAndMoveTheOneTheyAreOn)
{
    key(Qt::Key_Home);
    ASSERT_TRUE(view().current());
    const auto first = *view().current();
    key(Qt::Key_Right);
    ASSERT_TRUE(view().current());
    EXPECT_FALSE(*view().current() == first);
    EXPECT_EQ(document().selection(), std::vector{view().current()->element});
    key(Qt::Key_Left);
    EXPECT_TRUE(*view().current() == first);
}

TEST_F(LevelKeys, MoveByATenthOfTheGridByTheGridAndByAMillimetreInOneBurst)
{
    const auto lip = levelOf("T1", LevelKind::lip);
    click(at(lip));
    ASSERT_TRUE(view().current() == lip);
    const double was = metres(lip);
    const int before = steps();
    key(Qt::Key_Down);
    EXPECT_NEAR(metres(lip), was - 0.01, 1e-9);
    key(Qt::Key_Down, Qt::ShiftModifier);
    EXPECT_NEAR(metres(lip), was - 0.11, 1e-9);
    key(Qt::Key_Up, Qt::ControlModifier);
    EXPECT_NEAR(metres(lip), was - 0.109, 1e-9);
    EXPECT_EQ(steps(), before + 1);
}

TEST_F(LevelKeys, BeginAtTheElementChosenInThePlan)
{
    document().select({idOf("B5")});
    key(Qt::Key_Right);
    ASSERT_TRUE(view().current());
    EXPECT_EQ(view().current()->element, idOf("B5"));
    EXPECT_EQ(view().current()->kind, LevelKind::base);
    QTest::keyClick(&view(), Qt::Key_Tab);
    EXPECT_FALSE(view().hasFocus()); // no trap
}

TEST_F(LevelKeys, EnterTypesALevelAndEscLeavesIt)
{
    const auto lip = levelOf("T1", LevelKind::lip);
    click(at(lip));
    key(Qt::Key_Return);
    ASSERT_TRUE(view().field().isOpen());
    ASSERT_TRUE(view().field().field()->hasFocus());
    QTest::keyClicks(view().field().field(), QStringLiteral("90 cm"));
    QTest::keyClick(view().field().field(), Qt::Key_Return);
    EXPECT_FALSE(view().field().isOpen());
    EXPECT_NEAR(metres(lip), 0.9, 1e-9);
    EXPECT_TRUE(view().hasFocus());
    key(Qt::Key_L);
    ASSERT_TRUE(view().field().isOpen());
    QTest::keyClicks(view().field().field(), QStringLiteral("0.8"));
    QTest::keyClick(view().field().field(), Qt::Key_Escape);
    EXPECT_NEAR(metres(lip), 0.9, 1e-9);
}

TEST_F(LevelKeys, ARefusedEntryStaysOpenAndSaysWhy)
{
    const auto lip = levelOf("T1", LevelKind::lip);
    const double was = metres(lip);
    click(at(lip));
    for (const char* wrong : {"3 kg", "9 m", "much"}) {
        key(Qt::Key_Return);
        ASSERT_TRUE(view().field().isOpen());
        view().field().field()->setText(QString::fromLatin1(wrong));
        QTest::keyClick(view().field().field(), Qt::Key_Return);
        EXPECT_TRUE(view().field().isOpen()) << wrong;
        EXPECT_DOUBLE_EQ(metres(lip), was) << wrong;
        QTest::keyClick(view().field().field(), Qt::Key_Escape);
    }
}

} // namespace
} // namespace sumpwright::tests

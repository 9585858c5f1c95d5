// The toolbox: ids, words and keys for the menus; activating and leaving tools.
#include "tests/ui/canvas_stage.hpp"

#include <QApplication>
#include <QKeySequence>
#include <QSignalSpy>

#include <set>

#include "ui/tools/tool.hpp"

namespace sumpwright::test
{

class Tools : public CanvasStage
{
};

TEST_F(Tools, HaveUniqueIdsKeysAndWords)
{
    std::set<std::string> ids;
    std::set<QString> keys;
    for (const auto& spec : toolbox.specs()) {
        EXPECT_TRUE(ids.insert(spec.id).second) << spec.id;
        EXPECT_FALSE(spec.text.isEmpty()) << spec.id;
        EXPECT_TRUE(spec.tip.endsWith(QLatin1Char('.'))) << spec.id;
        EXPECT_TRUE(keys.insert(QKeySequence(QString::fromLatin1(spec.key)).toString()).second) << spec.id;
        EXPECT_FALSE(QKeySequence(QString::fromLatin1(spec.key)).isEmpty()) << spec.id;
    }
    EXPECT_GE(ids.size(), 19U);
    EXPECT_FALSE(keys.count(QStringLiteral("L"))) << "the pipe tool's level";
    EXPECT_FALSE(keys.count(QStringLiteral("J"))) << "the pipe tool's walk";
    EXPECT_FALSE(keys.count(QStringLiteral("N"))) << "the walk over the elements";
}

TEST_F(Tools, EachTellsWhatToDoNext)
{
    QSignalSpy hints(&toolbox, &ui::tools::Toolbox::hintChanged);
    for (const auto& spec : toolbox.specs()) {
        toolbox.activate(spec.id);
        EXPECT_EQ(toolbox.active(), spec.id);
        EXPECT_FALSE(toolbox.hint().isEmpty()) << spec.id;
    }
    EXPECT_GE(hints.count(), static_cast<int>(toolbox.specs().size()));
}

TEST_F(Tools, SurviveEveryClickAndKeyOnAnEmptyAndAFullPlan)
{
    for (const auto& start : {plan::Plan(), samplePlan()})
        for (const auto& spec : toolbox.specs()) {
            open(start);
            toolbox.activate(spec.id);
            for (const auto& [x, y] : {std::pair(1.5, 2.4), {4.0, 4.8}, {4.0, 4.8}, {-0.5, 7.0}}) {
                click(x, y);
                view.setFocus();
                for (const auto key : {Qt::Key_Up, Qt::Key_Return, Qt::Key_Backspace, Qt::Key_7, Qt::Key_Delete,
                                       Qt::Key_J, Qt::Key_Escape})
                    QTest::keyClick(&view, key);
            }
            toolbox.activate("select");
            EXPECT_FALSE(document.previewing()) << spec.id;
            EXPECT_TRUE(view.overlay().sketch.isEmpty()) << spec.id;
        }
}

TEST_F(Tools, ChangingTheToolInMidDragGivesBack)
{
    open(samplePlan());
    const auto before = plan();
    press(7.8, 4.2);
    moveTo(8.4, 4.2);
    EXPECT_TRUE(document.previewing());
    toolbox.activate("measure");
    EXPECT_FALSE(document.previewing());
    release(8.4, 4.2);
    EXPECT_EQ(plan(), before);
}

TEST_F(Tools, LettersTypedIntoAGestureDoNotChooseAnotherTool)
{
    toolbox.activate("place.media-bed");
    press(1.0, 1.0);
    moveTo(2.0, 2.0);
    QKeyEvent typed(QEvent::ShortcutOverride, Qt::Key_M, Qt::NoModifier, QStringLiteral("m"));
    typed.ignore();
    QApplication::sendEvent(&view, &typed);
    EXPECT_TRUE(typed.isAccepted()) << "the tool takes the letter before a shortcut can";
    key(Qt::Key_Escape);
    release(2.0, 2.0);
    QKeyEvent idle(QEvent::ShortcutOverride, Qt::Key_M, Qt::NoModifier, QStringLiteral("m"));
    idle.ignore();
    QApplication::sendEvent(&view, &idle);
    EXPECT_FALSE(idle.isAccepted());
}

} // namespace sumpwright::test

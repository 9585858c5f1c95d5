// Results in the real window: findings that lead to their elements, limits and comparisons the person sets, working.
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QUndoStack>

#include "core/assessment/assessment.hpp"
#include "tests/ui/window_fixture.hpp"
#include "ui/charts/chart_panel.hpp"
#include "ui/document/document.hpp"
#include "ui/findings/findings_list.hpp"
#include "ui/worksheets/worksheet_panel.hpp"

namespace sumpwright::tests
{
namespace
{

class ResultWindow : public OpenWindow
{
protected:
    ResultWindow()
    {
        EXPECT_TRUE(
            window.files().openPath(QStringLiteral(SUMPWRIGHT_SOURCE "/resources/examples/community_shed.sumpwright")));
        settle();
    }
    void settle()
    {
        EXPECT_TRUE(QTest::qWaitFor([&] { return work.document.assessment() && !work.document.stale(); }, 20000));
        QTest::qWait(50);
    }
    template <class Part> Part* named(const QString& name)
    {
        for (auto* each : window.findChildren<Part*>())
            if (each->accessibleName() == name && each->isVisible())
                return each;
        return nullptr;
    }
    int findings() { return window.findChild<ui::findings::FindingsList*>()->count(); }
    std::string textOf(const QString& question)
    {
        for (auto* panel : window.findChildren<ui::charts::ChartPanel*>())
            if (panel->question() == question)
                return panel->sentence().toStdString();
        return {};
    }
};

TEST_F(ResultWindow, GoToSelectsTheElementOfAFinding)
{
    auto* list = named<QListView>(QStringLiteral("Findings"));
    auto* goTo = window.findChild<ui::findings::FindingsList*>()->findChild<QPushButton*>();
    ASSERT_TRUE(list && goTo);
    ASSERT_GT(findings(), 0);
    EXPECT_FALSE(goTo->isEnabled()) << "nothing is chosen yet";
    list->setFocus();
    QTest::keyClick(list, Qt::Key_Home);
    ASSERT_TRUE(goTo->isEnabled());
    QTest::mouseClick(goTo, Qt::LeftButton);
    EXPECT_EQ(work.document.selection(), work.document.assessment()->findings->list.front().elements);

    work.document.select({});
    QTest::keyClick(list, Qt::Key_Return); // the same by key
    EXPECT_FALSE(work.document.selection().empty());
}

TEST_F(ResultWindow, AWiderAisleToKeepMakesAFindingAndUndoTakesItAway)
{
    const int before = findings();
    command("check.site")->trigger();
    auto* aisle = named<QLineEdit>(QStringLiteral("Aisle width"));
    ASSERT_TRUE(aisle);
    aisle->setFocus();
    aisle->selectAll();
    QTest::keyClicks(aisle, QStringLiteral("1.4 m"));
    QTest::keyClick(aisle, Qt::Key_Return);
    settle();
    EXPECT_GT(findings(), before) << "the aisle between the beds is 1 m wide";
    work.document.undoStack().undo();
    settle();
    EXPECT_EQ(findings(), before);
}

TEST_F(ResultWindow, LiveLoadIsComparedOnlyOnceAUseIsChosen)
{
    const QString question = QStringLiteral("What does the floor carry?");
    command("check.floor")->trigger();
    settle();
    EXPECT_FALSE(work.document.assessment()->floor->comparison);
    const std::string before = textOf(question);
    command("check.datum")->trigger();
    QTest::qWait(50);
    auto* use = named<QComboBox>(QStringLiteral("Ordinary use to compare with"));
    ASSERT_TRUE(use);
    ASSERT_GT(use->count(), 1);
    use->setFocus();
    QTest::keyClick(use, Qt::Key_Down);
    settle();
    ASSERT_TRUE(work.document.assessment()->floor->comparison);
    EXPECT_NE(textOf(question), before);
    EXPECT_TRUE(work.document.undoStack().canUndo());
}

TEST_F(ResultWindow, ShowWorkingFillsTheWorksheetThatGivesTheSameNumber)
{
    for (const auto& pump : work.document.committed().pumps) // there is one
        work.document.select({pump->id});
    settle();
    auto* button = named<QPushButton>(QStringLiteral("Show working: Power"));
    ASSERT_TRUE(button);
    QTest::mouseClick(button, Qt::LeftButton);
    QTest::qWait(50);
    auto* sheet = window.findChild<ui::worksheets::WorksheetPanel*>();
    ASSERT_TRUE(sheet->isVisible());
    EXPECT_TRUE(sheet->answerText().contains(QStringLiteral("130"))) << sheet->answerText().toStdString();
}

TEST_F(ResultWindow, TheKOfAFittingShowsItsWorking)
{
    for (const auto& run : work.document.committed().runs)
        if (!run->valves.empty()) {
            work.document.select({run->id});
            break;
        }
    settle();
    QPushButton* button = nullptr;
    for (auto* each : window.findChildren<QPushButton*>())
        if (each->isVisible() && each->accessibleName().startsWith(QStringLiteral("Show working: Counted, valve")))
            button = each;
    ASSERT_TRUE(button);
    const auto* value = button->parentWidget()->findChild<QLabel*>();
    const QString k = value->text().section(u',', 0, 0).section(u' ', 1); // "K 3.20, from the catalogue: ..."
    QTest::mouseClick(button, Qt::LeftButton);
    QTest::qWait(50);
    const QString answer = window.findChild<ui::worksheets::WorksheetPanel*>()->answerText();
    EXPECT_TRUE(answer.contains(k)) << k.toStdString() << " in " << answer.toStdString();
    EXPECT_FALSE(k.isEmpty());
}

} // namespace
} // namespace sumpwright::tests

// Levels set where they stand: a lip dragged in the elevation by the mouse, a fall spoiled and mended in the section by
// keys alone; the plan, its numbers and its findings follow, and undo brings back every byte.
#include <algorithm>
#include <cmath>

#include <QUndoStack>

#include "core/plan/level_ref.hpp"
#include "tests/journeys/watched_window.hpp"
#include "ui/section/level_field.hpp"
#include "ui/section/level_panel.hpp"
#include "ui/window/panels.hpp"

namespace sumpwright::tests
{
namespace
{

class LevelJourney : public WatchedWindow
{
protected:
    ui::section::LevelView& pane() { return window.panels().levels().view(); }
    const plan::Plan& plan() { return work.document.committed(); }

    QPoint inWindow(QPointF place) { return pane().viewport()->mapTo(&window, place.toPoint()); }
    std::optional<ui::section::LevelHandle> handleOf(const char* tag, plan::LevelKind kind)
    {
        for (const auto& handle : pane().page().handles())
            if (handle.level.kind == kind && plan::tagOf(plan(), handle.level.element) == tag)
                return handle;
        return std::nullopt;
    }
    // The wheel brings a level that lies off the sheet into view.
    void bringIntoView(const ui::section::LevelHandle& handle)
    {
        const auto seen = [&] {
            const QRect room = pane().viewport()->rect().adjusted(60, 8, -8, -40);
            return room.contains(pane().sheet().at(handle.along, handle.at).toPoint());
        };
        for (int i = 0; i < 12 && !seen(); ++i)
            keys.wheel(*pane().viewport(), -120);
        ASSERT_TRUE(seen());
    }
    // By the mouse, where it lies on the screen.
    void dragBy(const ui::section::LevelHandle& handle, double metres)
    {
        const QPoint from = inWindow(pane().sheet().at(handle.along, handle.at));
        const QPoint to = from - QPoint(0, static_cast<int>(std::lround(metres * pane().sheet().tall())));
        QTest::mouseMove(window.windowHandle(), from);
        QTest::mousePress(window.windowHandle(), Qt::LeftButton, {}, from);
        for (int i = 1; i <= 4; ++i)
            QTest::mouseMove(window.windowHandle(), from + (to - from) * i / 4);
        QTest::mouseRelease(window.windowHandle(), Qt::LeftButton, {}, to);
    }
};

TEST_F(LevelJourney, ALipIsDraggedInTheElevation)
{
    openExample();
    const QByteArray file = bytesOf(work.session.path());
    press(Qt::Key_F12);
    ASSERT_TRUE(QTest::qWaitFor([this] { return !pane().visibleRegion().isEmpty(); }));
    for (int i = 0; i < 4; ++i)
        press(Qt::Key_Minus, Qt::ControlModifier); // until the low pane shows the whole of the tank
    settle();
    const auto lip = handleOf("T1", plan::LevelKind::lip);
    ASSERT_TRUE(lip);
    bringIntoView(*lip);
    const double was = units::inMetres(lip->at);
    dragBy(*lip, -0.12);
    settle();
    EXPECT_TRUE(modified());
    const double now = units::inMetres(handleOf("T1", plan::LevelKind::lip)->at);
    EXPECT_NEAR(now, was - 0.12, 0.02);
    // The plan's own form shows the level, and the plan's water follows it.
    ASSERT_EQ(work.document.selection().size(), 1U);
    EXPECT_NEAR(numberOf(keys.shownIn(QStringLiteral("Level, *L1"))), now, 1e-3)
        << keys.shownIn(QStringLiteral("Level, *L1")).toStdString();
    expectSound("dragging a lip");
    press(Qt::Key_Z, Qt::ControlModifier);
    settle();
    EXPECT_NEAR(units::inMetres(handleOf("T1", plan::LevelKind::lip)->at), was, 1e-12);
    EXPECT_FALSE(modified());
    EXPECT_EQ(bytesOf(work.session.path()), file);
}

TEST_F(LevelJourney, AFallIsSpoiledAndMendedInTheSectionByKeysAlone)
{
    openExample("back_garden");
    press(Qt::Key_F12, Qt::ShiftModifier);
    ASSERT_TRUE(QTest::qWaitFor([this] { return pane().hasFocus(); }));
    press(Qt::Key_Home);
    const auto onDrain = [this] { return pane().current() && plan::tagOf(plan(), pane().current()->element) == "R9"; };
    for (int i = 0; i < 60 && !onDrain(); ++i)
        press(Qt::Key_Right);
    ASSERT_TRUE(onDrain());
    const auto level = *pane().current();
    const double was = units::inMetres(*plan::levelOf(plan(), level));
    press(Qt::Key_Return);
    ASSERT_TRUE(QTest::qWaitFor([this] { return pane().field().isOpen(); }));
    paste(QStringLiteral("-0.1 m"));
    press(Qt::Key_Return);
    settle();
    EXPECT_NEAR(units::inMetres(*plan::levelOf(plan(), level)), -0.1, 1e-9);
    // 120 mm up over 0.92 m: a finding, and the section says how much.
    const auto& findings = work.document.assessment()->findings->list;
    EXPECT_TRUE(std::any_of(findings.begin(), findings.end(), [&](const assessment::Finding& finding) {
        return finding.id == "gravity.rises" && finding.elements.front() == level.element;
    }));
    EXPECT_TRUE(pane().page().told().contains(QStringLiteral("rises 120 mm"))) << pane().page().told().toStdString();
    expectSound("spoiling a fall");
    for (int i = 0; i < 16; ++i)
        press(Qt::Key_Up); // 10 mm each
    settle();
    EXPECT_NEAR(units::inMetres(*plan::levelOf(plan(), level)), 0.06, 1e-9);
    EXPECT_NEAR(was, 0.06, 1e-9);
    EXPECT_FALSE(pane().page().told().contains(QStringLiteral("rises")));
    while (work.document.undoStack().canUndo())
        press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_FALSE(modified());
}

TEST_F(LevelJourney, GesturesBrokenOffInTheMiddleLeaveThePlan)
{
    openExample();
    press(Qt::Key_F12);
    ASSERT_TRUE(QTest::qWaitFor([this] { return !pane().visibleRegion().isEmpty(); }));
    struct Break {
        Qt::Key key;
        Qt::KeyboardModifiers with;
    };
    for (const auto& each :
         {Break{Qt::Key_Escape, {}}, Break{Qt::Key_Z, Qt::ControlModifier}, Break{Qt::Key_F12, {}},
          Break{Qt::Key_F12, Qt::ShiftModifier}, Break{Qt::Key_Delete, {}}, Break{Qt::Key_A, Qt::ControlModifier}}) {
        press(Qt::Key_F12);
        if (pane().visibleRegion().isEmpty() || pane().mode() != ui::section::Mode::elevation)
            press(Qt::Key_F12);
        ASSERT_TRUE(QTest::qWaitFor([this] { return !pane().visibleRegion().isEmpty(); }));
        const auto lip = handleOf("T1", plan::LevelKind::lip);
        ASSERT_TRUE(lip);
        bringIntoView(*lip);
        const QPoint from = inWindow(pane().sheet().at(lip->along, lip->at));
        QTest::mousePress(window.windowHandle(), Qt::LeftButton, {}, from);
        QTest::mouseMove(window.windowHandle(), from + QPoint(0, 10));
        QTest::mouseMove(window.windowHandle(), from + QPoint(0, 20));
        EXPECT_TRUE(work.document.previewing()) << each.key;
        press(each.key, each.with);
        QTest::mouseMove(window.windowHandle(), from + QPoint(0, 24));
        QTest::mouseRelease(window.windowHandle(), Qt::LeftButton, {}, from + QPoint(0, 24));
        EXPECT_FALSE(work.document.previewing());
        while (work.document.undoStack().canUndo())
            work.document.undoStack().undo();
        EXPECT_FALSE(modified()) << each.key;
        expectSound("a level drag broken off");
    }
}

} // namespace
} // namespace sumpwright::tests

// A window on an example plan with the pane of levels in front, driven by mouse and keys.
#pragma once

#include <QUndoStack>

#include "core/assessment/assessment.hpp"
#include "core/plan/edits/level.hpp"
#include "tests/ui/window_fixture.hpp"
#include "ui/document/document.hpp"
#include "ui/section/level_panel.hpp"
#include "ui/window/panels.hpp"

namespace sumpwright::tests
{

class LevelsWindow : public OpenWindow
{
protected:
    void open(const char* name = "community_shed", int width = 1440, int height = 900)
    {
        window.resize(width, height);
        EXPECT_TRUE(window.files().openPath(
            QStringLiteral(SUMPWRIGHT_SOURCE "/resources/examples/%1.sumpwright").arg(QLatin1String(name))));
        settle();
        show(ui::section::Mode::elevation);
    }
    void settle()
    {
        EXPECT_TRUE(QTest::qWaitFor([&] { return document().assessment() && !document().stale(); }, 20000));
        QTest::qWait(30);
    }
    void show(ui::section::Mode mode)
    {
        if (panel().mode() != mode || panel().visibleRegion().isEmpty())
            command(mode == ui::section::Mode::section ? "view.section" : "view.elevation")->trigger();
        QTest::qWait(30);
        EXPECT_FALSE(panel().visibleRegion().isEmpty());
        repaint();
    }
    void repaint() { view().viewport()->repaint(); }

    ui::document::Document& document() { return work.document; }
    const plan::Plan& plan() { return document().committed(); }
    ui::section::LevelPanel& panel() { return window.panels().levels(); }
    ui::section::LevelView& view() { return panel().view(); }
    int steps() { return document().undoStack().index(); }

    base::Id idOf(const char* tag)
    {
        for (const auto& vessel : plan().vessels)
            if (vessel->tag == tag)
                return vessel->id;
        for (const auto& run : plan().runs)
            if (run->tag == tag)
                return run->id;
        for (const auto& pump : plan().pumps)
            if (pump->tag == tag)
                return pump->id;
        ADD_FAILURE() << "no element " << tag;
        return {};
    }
    plan::LevelRef levelOf(const char* tag, plan::LevelKind kind)
    {
        for (const auto& level : plan::levelsOf(plan(), idOf(tag)))
            if (level.kind == kind)
                return level;
        ADD_FAILURE() << "no such level of " << tag;
        return {};
    }
    double metres(const plan::LevelRef& level) { return units::inMetres(plan::levelOf(plan(), level).value()); }

    // Where a level can be taken hold of, in the viewport.
    QPoint at(const plan::LevelRef& level)
    {
        for (const auto& handle : view().page().handles())
            if (handle.level == level)
                return view().sheet().at(handle.along, handle.at).toPoint();
        ADD_FAILURE() << "the level is not on the sheet";
        return {};
    }
    QPoint above(QPoint place, double byMetres)
    {
        return place - QPoint(0, static_cast<int>(std::lround(byMetres * view().sheet().tall())));
    }
    void press(QPoint place) { QTest::mousePress(view().viewport(), Qt::LeftButton, {}, place); }
    void move(QPoint place) { QTest::mouseMove(view().viewport(), place); }
    void release(QPoint place) { QTest::mouseRelease(view().viewport(), Qt::LeftButton, {}, place); }
    void click(QPoint place) { QTest::mouseClick(view().viewport(), Qt::LeftButton, {}, place); }
    void drag(QPoint from, QPoint to)
    {
        press(from);
        move(from + (to - from) / 2);
        move(to);
        release(to);
    }
    void key(Qt::Key which, Qt::KeyboardModifiers with = {}) { QTest::keyClick(&view(), which, with); }
    void type(const char* text) { QTest::keyClicks(&view(), QString::fromLatin1(text)); }
};

} // namespace sumpwright::tests

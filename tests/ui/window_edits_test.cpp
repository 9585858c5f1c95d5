// Every edit of what is drawn, in the real window, by its keys alone: the plan has the keyboard, nothing is dragged.
#include <QGraphicsView>
#include <QMenu>
#include <QUndoStack>

#include "core/plan/edits/arrange.hpp"
#include "tests/ui/window_fixture.hpp"
#include "ui/canvas/plan_scene.hpp"
#include "ui/canvas/scene_point.hpp"

namespace sumpwright::tests
{
namespace
{

using plan::VesselKind;

class EditKeys : public OpenWindow
{
protected:
    EditKeys()
    {
        first = placeTank(1.0);
        second = place(VesselKind::mediaBed, 4.0);
        third = place(VesselKind::sump, 7.5);
        window.planView().setFocus();
    }
    void key(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) { QTest::keyClick(&window.planView(), key, modifiers); }
    const plan::Plan& drawn() const { return work.document.committed(); }
    const plan::Vessel& vessel(base::Id id) const { return *drawn().vessels.find(id); }
    double left(base::Id id) const { return units::inMetres(plan::boxOf(drawn(), id).low.x); }
    double middle(base::Id id) const { return units::inMetres(vessel(id).centre.y); }
    int steps() { return work.document.undoStack().index(); }

    base::Id first, second, third;
};

TEST_F(EditKeys, WalkOverWhatIsDrawn)
{
    key(Qt::Key_N);
    ASSERT_EQ(work.document.selection().size(), 1u);
    EXPECT_EQ(work.document.selection().front(), first);
    key(Qt::Key_N);
    EXPECT_EQ(work.document.selection().front(), second);
    key(Qt::Key_N, Qt::ShiftModifier);
    EXPECT_EQ(work.document.selection().front(), first);
    key(Qt::Key_N, Qt::ShiftModifier);
    EXPECT_EQ(work.document.selection().front(), third) << "round to the last";
    EXPECT_EQ(steps(), 3) << "walking is no edit";
}

TEST_F(EditKeys, SelectSeveralAndMoveThemTogether)
{
    key(Qt::Key_N);
    key(Qt::Key_N, Qt::AltModifier);
    EXPECT_EQ(work.document.selection(), (std::vector<base::Id>{first, second}));
    const auto x = left(first);
    const auto y = left(second);
    const auto z = left(third);
    key(Qt::Key_Right);
    EXPECT_NEAR(left(first) - x, 0.1, 1e-9);
    EXPECT_NEAR(left(second) - y, 0.1, 1e-9);
    EXPECT_NEAR(left(third), z, 1e-9);
    EXPECT_EQ(steps(), 4) << "one step for both";
    key(Qt::Key_N, Qt::AltModifier);
    EXPECT_EQ(work.document.selection().size(), 3u);
    key(Qt::Key_N, Qt::AltModifier);
    EXPECT_EQ(work.document.selection().size(), 3u) << "round, and nothing twice";
}

TEST_F(EditKeys, MoveTurnDuplicateAndDelete)
{
    const auto before = vessel(second).centre;
    key(Qt::Key_N);
    key(Qt::Key_N);
    key(Qt::Key_Right, Qt::ShiftModifier);
    EXPECT_NEAR(units::inMetres(vessel(second).centre.x - before.x), 1.0, 1e-9);
    key(Qt::Key_R, Qt::ControlModifier);
    EXPECT_NEAR(units::inDegrees(vessel(second).turn), -90.0, 1e-9);
    key(Qt::Key_R, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_NEAR(units::inDegrees(vessel(second).turn), 0.0, 1e-9);
    key(Qt::Key_D, Qt::ControlModifier);
    ASSERT_EQ(drawn().vessels.size(), 4u);
    ASSERT_EQ(work.document.selection().size(), 1u);
    const auto copy = work.document.selection().front();
    EXPECT_EQ(vessel(copy).tag, "B2") << "a tag of its own";
    EXPECT_EQ(steps(), 7);
    key(Qt::Key_Delete);
    EXPECT_FALSE(drawn().vessels.find(copy));
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(drawn().vessels.find(copy));
}

TEST_F(EditKeys, AlignAndSpaceWhatIsSelectedAsOneStepEach)
{
    key(Qt::Key_A, Qt::ControlModifier);
    ASSERT_EQ(work.document.selection().size(), 3u);
    const auto chord = [this](Qt::Key letter) {
        key(Qt::Key_E, Qt::ControlModifier);
        key(letter);
    };
    chord(Qt::Key_Left);
    EXPECT_EQ(steps(), 4);
    EXPECT_NEAR(left(first), left(second), 1e-9);
    EXPECT_NEAR(left(first), left(third), 1e-9);
    key(Qt::Key_Z, Qt::ControlModifier);
    chord(Qt::Key_R); // middles in one row: they are, so no step
    EXPECT_NEAR(middle(first), middle(third), 1e-9);
    key(Qt::Key_A, Qt::ControlModifier);
    chord(Qt::Key_G);
    const auto gap = [this](base::Id a, base::Id b) {
        return units::inMetres(plan::boxOf(drawn(), b).low.x - plan::boxOf(drawn(), a).high.x);
    };
    EXPECT_NEAR(gap(first, second), gap(second, third), 1e-6);
    EXPECT_EQ(steps(), 4);
}

TEST_F(EditKeys, ConnectTwoSelectedThings)
{
    work.document.select({first, third});
    key(Qt::Key_K, Qt::ControlModifier);
    ASSERT_EQ(drawn().runs.size(), 1u);
    EXPECT_EQ(steps(), 4);
}

// What a mouse does in the plan, the context menu offers by the Menu key too, and the menu bar always.
TEST_F(EditKeys, ContextMenuComesByMouseAndByKey)
{
    work.document.select({second});
    int shown = 0;
    const auto closeMenu = [&shown] {
        auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
        ASSERT_TRUE(menu);
        ++shown;
        EXPECT_GT(menu->actions().size(), 5);
        menu->close();
    };
    QTimer::singleShot(0, &window, closeMenu);
    const QPoint corner(1, 1);
    QContextMenuEvent byKey(QContextMenuEvent::Keyboard, corner, window.planView().mapToGlobal(corner));
    QApplication::sendEvent(window.planView().viewport(), &byKey);
    QTimer::singleShot(0, &window, closeMenu);
    auto& view = window.planView();
    const QPoint place = view.mapFromScene(ui::canvas::toScene(vessel(third).centre));
    QContextMenuEvent byMouse(QContextMenuEvent::Mouse, place, view.viewport()->mapToGlobal(place));
    QApplication::sendEvent(view.viewport(), &byMouse);
    EXPECT_EQ(shown, 2);
    EXPECT_TRUE(work.document.isSelected(third)) << "what lies under the pointer";
}

} // namespace
} // namespace sumpwright::tests

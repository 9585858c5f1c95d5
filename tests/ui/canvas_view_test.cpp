// Zoom, pan, keys, focus and furniture of the plan view.
#include "tests/ui/canvas_stage.hpp"

#include <QApplication>
#include <QLineEdit>
#include <QSignalSpy>
#include <QVBoxLayout>
#include <QWheelEvent>

#include "ui/canvas/element_item.hpp"
#include "ui/canvas/scene_point.hpp"
#include "ui/style/palette.hpp"

namespace sumpwright::test
{

using namespace ui::canvas;

class View : public CanvasStage
{
protected:
    void wheel(QPoint place, int delta, Qt::KeyboardModifiers modifiers = {})
    {
        QWheelEvent event(place, view.viewport()->mapToGlobal(QPointF(place)), {}, {0, delta}, Qt::NoButton, modifiers,
                          Qt::NoScrollPhase, false);
        QApplication::sendEvent(view.viewport(), &event);
    }
};

TEST_F(View, WheelKeepsThePlaceUnderThePointerWithinOnePixel)
{
    open(samplePlan());
    for (const QPoint place : {QPoint(120, 90), QPoint(700, 500), QPoint(5, 640)}) {
        for (const int delta : {120, 120, 240, -120, -360, -120, 600}) {
            const QPointF before = view.mapToScene(place);
            const double zoom = view.zoom();
            wheel(place, delta);
            EXPECT_NE(view.zoom(), zoom);
            const QPointF off = QPointF(view.mapFromScene(before) - place);
            EXPECT_LE(std::abs(off.x()), 1.0) << "delta " << delta;
            EXPECT_LE(std::abs(off.y()), 1.0) << "delta " << delta;
        }
    }
}

TEST_F(View, ZoomStaysWithinItsLimits)
{
    for (int i = 0; i < 200; ++i)
        wheel({400, 300}, 240);
    EXPECT_LE(view.zoom(), 4.0);
    for (int i = 0; i < 400; ++i)
        wheel({400, 300}, -240);
    EXPECT_GE(view.zoom(), 0.004);
}

TEST_F(View, FitShowsEverythingAndSelectionShowsTheSelected)
{
    open(samplePlan());
    view.zoomToFit();
    EXPECT_TRUE(view.visibleScene().contains(view.planScene().content()));
    const double fit = view.zoom();
    document.select({idOf(plan(), "B2")});
    view.zoomToSelection();
    EXPECT_GT(view.zoom(), 2.0 * fit);
    EXPECT_TRUE(view.visibleScene().contains(view.planScene().item(idOf(plan(), "B2"))->extent()));
    view.zoomToScale(50.0);
    EXPECT_NEAR(view.zoom(), 96.0 / 25.4 / 50.0, 1e-12) << "1:50 at 96 pixels an inch";
    EXPECT_NEAR(view.scaleDenominator(), 50.0, 1e-9);
}

TEST_F(View, StaysFittedAtAnySizeOfTheWindowUntilThePersonZoomsOrPans)
{
    open(samplePlan());
    view.resize(320, 240); // as it may be before the desktop has laid the window out
    view.zoomToFit();
    view.resize(1000, 760);
    QApplication::processEvents();
    const auto content = view.planScene().content();
    EXPECT_TRUE(view.visibleScene().contains(content));
    EXPECT_GT(std::max(content.width() / view.visibleScene().width(), content.height() / view.visibleScene().height()),
              0.8)
        << "it fills the larger window";
    view.zoomIn();
    const double zoom = view.zoom();
    view.resize(700, 500);
    QApplication::processEvents();
    EXPECT_DOUBLE_EQ(view.zoom(), zoom);
    view.zoomToFit();
    view.panBy(QPoint(30, 0));
    const double panned = view.zoom();
    view.resize(1000, 760);
    QApplication::processEvents();
    EXPECT_DOUBLE_EQ(view.zoom(), panned);
}

TEST_F(View, MiddleDragAndSpaceDragPan)
{
    open(samplePlan());
    const QPointF before = view.mapToScene(QPoint(300, 300));
    QTest::mousePress(view.viewport(), Qt::MiddleButton, {}, {300, 300});
    QTest::mouseMove(view.viewport(), {360, 330});
    QTest::mouseRelease(view.viewport(), Qt::MiddleButton, {}, {360, 330});
    EXPECT_EQ(view.mapFromScene(before), QPoint(360, 330));
    QTest::keyPress(&view, Qt::Key_Space);
    QTest::mousePress(view.viewport(), Qt::LeftButton, {}, {360, 330});
    QTest::mouseMove(view.viewport(), {300, 300});
    QTest::mouseRelease(view.viewport(), Qt::LeftButton, {}, {300, 300});
    QTest::keyRelease(&view, Qt::Key_Space);
    EXPECT_EQ(view.mapFromScene(before), QPoint(300, 300));
    EXPECT_EQ(steps(), 0);
    EXPECT_TRUE(document.selection().empty());
}

TEST_F(View, ArrowsPanWhereNothingIsSelected)
{
    open(samplePlan());
    const QPointF before = view.mapToScene(QPoint(300, 300));
    key(Qt::Key_Right);
    EXPECT_EQ(view.mapFromScene(before), QPoint(260, 300));
}

TEST_F(View, WalksTheElementsAndShowsTheOneItIsAt)
{
    open(samplePlan());
    view.zoomToRect(QRectF(toScene(at(8.0, 0.5)), QSizeF(500.0, 500.0)));
    view.selectNext(1);
    ASSERT_EQ(document.selection().size(), 1U);
    const auto first = document.selection().front();
    EXPECT_TRUE(view.visibleScene().intersects(view.planScene().item(first)->extent()));
    EXPECT_FALSE(said.empty());
    view.selectNext(1);
    EXPECT_NE(document.selection().front(), first);
    view.selectNext(-1);
    EXPECT_EQ(document.selection().front(), first);
    view.selectNext(-1);
    EXPECT_EQ(document.selection().front(), view.planScene().elements().back()->id()) << "round to the last";
}

TEST_F(View, DoesNotTrapTab)
{
    QWidget window;
    QVBoxLayout layout(&window);
    QLineEdit before;
    QLineEdit after;
    PlanView inside(document, settings);
    layout.addWidget(&before);
    layout.addWidget(&inside);
    layout.addWidget(&after);
    window.show();
    window.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    inside.setFocus();
    QTest::keyClick(&inside, Qt::Key_Tab);
    EXPECT_EQ(QApplication::focusWidget(), &after);
    QTest::keyClick(&after, Qt::Key_Tab, Qt::ShiftModifier);
    EXPECT_EQ(QApplication::focusWidget(), &inside);
    layout.removeWidget(&inside);
    inside.setParent(nullptr);
    before.setParent(nullptr);
    after.setParent(nullptr);
}

TEST_F(View, TellsWhereThePointerIs)
{
    QSignalSpy moved(&view, &PlanView::pointerMoved);
    hover(3.0, 2.0);
    ASSERT_EQ(moved.count(), 1);
    const auto place = moved.front().front().value<plan::Point>();
    EXPECT_NEAR(units::inMetres(place.x), 3.0, view.pixel() / 1000.0);
    EXPECT_NEAR(units::inMetres(place.y), 2.0, view.pixel() / 1000.0);
}

TEST_F(View, ContextMenuSelectsWhatIsUnderThePointer)
{
    open(samplePlan());
    QSignalSpy asked(&view, &PlanView::menuRequested);
    const QPoint place = pixelOf(8.0, 4.2);
    QContextMenuEvent event(QContextMenuEvent::Mouse, place, view.viewport()->mapToGlobal(place));
    QApplication::sendEvent(view.viewport(), &event);
    EXPECT_EQ(asked.count(), 1);
    ASSERT_EQ(document.selection().size(), 1U);
    EXPECT_EQ(document.selection().front(), idOf(plan(), "B2"));
}

TEST_F(View, FollowsThePaletteFromLightToDark)
{
    open(samplePlan());
    const auto groundOf = [this] {
        QApplication::processEvents();
        return view.grab().toImage().pixelColor(200, 60); // paper above the plan
    };
    const auto& light = ui::style::theme(ui::style::Scheme::light);
    const auto& dark = ui::style::theme(ui::style::Scheme::dark);
    view.setPalette(ui::style::paletteOf(light));
    settings.setGridShown(false);
    EXPECT_EQ(groundOf(), light.paper);
    view.setPalette(ui::style::paletteOf(dark));
    EXPECT_EQ(groundOf(), dark.paper);
    EXPECT_EQ(view.planScene().drawing().theme, &dark);
}

TEST_F(View, ShowsElementsAskedForFromElsewhere)
{
    open(samplePlan());
    view.zoomToRect(QRectF(toScene(at(0.2, 0.8)), QSizeF(600.0, 500.0)));
    document.goTo({idOf(plan(), "B2")});
    EXPECT_TRUE(document.isSelected(idOf(plan(), "B2")));
    EXPECT_TRUE(view.visibleScene().contains(view.planScene().item(idOf(plan(), "B2"))->extent()));
}

} // namespace sumpwright::test

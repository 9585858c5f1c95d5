#include "tests/ui/canvas_stage.hpp"

#include <QApplication>
#include <QUndoStack>

#include <cmath>

#include "ui/canvas/scene_point.hpp"

namespace sumpwright::test
{

CanvasStage::CanvasStage() : view(document, settings), toolbox(view)
{
    QObject::connect(&document, &ui::document::Document::said,
                     [this](const QString& message) { said = message.toStdString(); });
}

void CanvasStage::SetUp()
{
    view.resize(1000, 760);
    view.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&view));
    view.activateWindow();
    view.setFocus();
    open({});
}

void CanvasStage::open(const plan::Plan& plan)
{
    document.reset(plan);
    view.zoomToRect(QRectF(-1000.0, -8000.0, 12000.0, 9000.0));
    QApplication::processEvents();
}

QPoint CanvasStage::pixelOf(double x, double y) const { return view.mapFromScene(ui::canvas::toScene(at(x, y))); }

namespace
{
// QTest's own mouseMove holds no modifiers.
void sendMove(QWidget* viewport, QPoint place, Qt::MouseButtons buttons, Qt::KeyboardModifiers modifiers)
{
    QMouseEvent event(QEvent::MouseMove, place, viewport->mapToGlobal(QPointF(place)), Qt::NoButton, buttons,
                      modifiers);
    QApplication::sendEvent(viewport, &event);
}
} // namespace

void CanvasStage::hover(double x, double y, Qt::KeyboardModifiers modifiers)
{
    sendMove(view.viewport(), pixelOf(x, y), Qt::NoButton, modifiers);
}

void CanvasStage::click(double x, double y, Qt::KeyboardModifiers modifiers)
{
    hover(x, y, modifiers);
    QTest::mouseClick(view.viewport(), Qt::LeftButton, modifiers, pixelOf(x, y));
}

void CanvasStage::doubleClick(double x, double y)
{
    QTest::mouseClick(view.viewport(), Qt::LeftButton, {}, pixelOf(x, y));
    QTest::mouseDClick(view.viewport(), Qt::LeftButton, {}, pixelOf(x, y));
}

void CanvasStage::press(double x, double y, Qt::KeyboardModifiers modifiers)
{
    QTest::mousePress(view.viewport(), Qt::LeftButton, modifiers, pixelOf(x, y));
}

void CanvasStage::moveTo(double x, double y, Qt::KeyboardModifiers modifiers)
{
    sendMove(view.viewport(), pixelOf(x, y), Qt::LeftButton, modifiers);
}

void CanvasStage::release(double x, double y, Qt::KeyboardModifiers modifiers)
{
    QTest::mouseRelease(view.viewport(), Qt::LeftButton, modifiers, pixelOf(x, y));
}

void CanvasStage::drag(plan::Point from, plan::Point to, Qt::KeyboardModifiers modifiers)
{
    const double x = units::inMetres(from.x);
    const double y = units::inMetres(from.y);
    const double dx = units::inMetres(to.x) - x;
    const double dy = units::inMetres(to.y) - y;
    press(x, y);
    for (int i = 1; i <= 10; ++i)
        moveTo(x + dx * i / 10.0, y + dy * i / 10.0, modifiers);
    release(x + dx, y + dy, modifiers);
}

void CanvasStage::key(Qt::Key key, Qt::KeyboardModifiers modifiers) { QTest::keyClick(&view, key, modifiers); }

void CanvasStage::type(const char* text) { QTest::keyClicks(&view, QString::fromLatin1(text)); }

int CanvasStage::steps() { return document.undoStack().index(); }

testing::AssertionResult isAt(plan::Point place, double x, double y)
{
    const double dx = units::inMetres(place.x) - x;
    const double dy = units::inMetres(place.y) - y;
    if (std::hypot(dx, dy) < 1e-5)
        return testing::AssertionSuccess();
    return testing::AssertionFailure() << "at " << units::inMetres(place.x) << ", " << units::inMetres(place.y)
                                       << " instead of " << x << ", " << y;
}

} // namespace sumpwright::test

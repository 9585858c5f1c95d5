#include "tests/journeys/watched_window.hpp"

#include <functional>

#include <QAbstractItemView>
#include <QAccessible>
#include <QApplication>
#include <QClipboard>
#include <QDropEvent>
#include <QElapsedTimer>
#include <QFile>
#include <QFileDialog>
#include <QLineEdit>
#include <QMessageBox>
#include <QMimeData>
#include <QPushButton>
#include <QRegularExpression>
#include <QTimer>
#include <QWindow>

#include "ui/canvas/scene_point.hpp"

namespace sumpwright::tests
{

QByteArray bytesOf(const QString& path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray("absent");
}

void writeBytes(const QString& path, const QByteArray& bytes)
{
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly)) << path.toStdString();
    ASSERT_EQ(file.write(bytes), bytes.size());
}

WatchedWindow::WatchedWindow() : work(folder.filePath(QStringLiteral("state"))), window(work), keys(window)
{
    window.resize(1600, 1000);
    window.show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
}

QString WatchedWindow::openExample(const char* name)
{
    const QString path = file("plan.sumpwright");
    EXPECT_TRUE(QFile::copy(QStringLiteral(SUMPWRIGHT_SOURCE "/resources/examples/%1.sumpwright").arg(name), path));
    QFile::setPermissions(path, QFile::ReadOwner | QFile::WriteOwner);
    window.start(path);
    settle();
    keys.backToPlan();
    return path;
}

void WatchedWindow::settle()
{
    EXPECT_TRUE(QTest::qWaitFor([this] { return work.document.assessment() && !work.document.stale(); }, 30000));
    QApplication::processEvents();
}

void WatchedWindow::press(Qt::Key key, Qt::KeyboardModifiers with)
{
    QWidget* top = QApplication::activePopupWidget();
    if (!top)
        top = QApplication::activeModalWidget();
    QTest::keyClick(top ? top->windowHandle() : window.windowHandle(), key, with);
}

void WatchedWindow::paste(const QString& text)
{
    QApplication::clipboard()->setText(text);
    press(Qt::Key_V, Qt::ControlModifier);
}

QPoint WatchedWindow::pixel(double x, double y) const
{
    const QPoint onPaper =
        window.planView().mapFromScene(ui::canvas::toScene(plan::Point{units::metres(x), units::metres(y)}));
    return window.planView().viewport()->mapTo(&window, onPaper);
}

void WatchedWindow::bringIntoView(double x, double y)
{
    QWidget& paper = *window.planView().viewport();
    const auto seen = [&] { return paper.rect().adjusted(8, 8, -8, -8).contains(paper.mapFrom(&window, pixel(x, y))); };
    for (int i = 0; i < 12 && !seen(); ++i)
        keys.wheel(paper, -120);
    ASSERT_TRUE(seen()) << "off the screen: " << x << ", " << y;
}

void WatchedWindow::rightPress(double x, double y)
{
    leavingBoxes([&] {
        QTest::mousePress(window.windowHandle(), Qt::RightButton, {}, pixel(x, y));
        QTest::mouseRelease(window.windowHandle(), Qt::RightButton, {}, pixel(x, y));
    });
}

void WatchedWindow::leavingBoxes(const std::function<void()>& act)
{
    QTimer hands;
    QObject::connect(&hands, &QTimer::timeout, &hands, [this] {
        QWidget* top = QApplication::activePopupWidget();
        if (!top)
            top = QApplication::activeModalWidget();
        if (!top)
            return;
        if (const auto* box = qobject_cast<QMessageBox*>(top))
            boxTexts << box->text();
        QTest::keyClick(top, Qt::Key_Escape);
    });
    hands.start(20);
    act();
    QTest::qWait(50);
}

void WatchedWindow::mouseDown(double x, double y, Qt::KeyboardModifiers with)
{
    bringIntoView(x, y);
    QTest::mouseMove(window.windowHandle(), pixel(x, y));
    QTest::mousePress(window.windowHandle(), Qt::LeftButton, with, pixel(x, y));
}

void WatchedWindow::mouseTo(double x, double y) { QTest::mouseMove(window.windowHandle(), pixel(x, y)); }

void WatchedWindow::mouseUp(double x, double y)
{
    QTest::mouseRelease(window.windowHandle(), Qt::LeftButton, {}, pixel(x, y));
}

void WatchedWindow::mouseDrag(double x0, double y0, double x1, double y1)
{
    mouseDown(x0, y0);
    for (int i = 1; i <= 4; ++i)
        mouseTo(x0 + (x1 - x0) * i / 4, y0 + (y1 - y0) * i / 4);
    mouseUp(x1, y1);
}

void WatchedWindow::pushStrip(const QString& text)
{
    QApplication::processEvents();
    for (QPushButton* button : window.strips().findChildren<QPushButton*>())
        if (button->text() == text && button->isVisible()) {
            const QPoint at = button->mapTo(&window, button->rect().center());
            QTest::mouseClick(window.windowHandle(), Qt::LeftButton, {}, at);
            return;
        }
    FAIL() << "no choice " << text.toStdString() << " in: " << strips().toStdString();
}

namespace
{
constexpr int patience = 20000; // ms: a box that neither takes a name nor goes by Esc is a fault
}

// What a person does at the box that asks for a file; it is left by Esc where Enter is not taken. Between two boxes
// there may be none for a moment.
void WatchedWindow::inBox(Qt::Key key, Qt::KeyboardModifiers with, const QString& path)
{
    int turn = 0;
    bool done = false;
    QElapsedTimer clock;
    clock.start();
    // A timer waits and posts what is done: that may open a loop of events of its own, and a timer at work starts none.
    std::function<void()> hands;
    const auto soon = [&] {
        QTimer::singleShot(15, &window, [&] { QMetaObject::invokeMethod(&window, hands, Qt::QueuedConnection); });
    };
    hands = [&] {
        if (done)
            return;
        soon();
        QWidget* box = QApplication::activeModalWidget();
        if (!box)
            return;
        if (clock.hasExpired(patience)) {
            ADD_FAILURE() << "a box stays: " << box->windowTitle().toStdString();
            box->close();
            return;
        }
        if (const auto* message = qobject_cast<QMessageBox*>(box))
            boxTexts << message->text();
        if (!qobject_cast<QFileDialog*>(box)) // a message of the box's own
            return QTest::keyClick(box, Qt::Key_Escape);
        if (!box->isAncestorOf(QApplication::focusWidget())) { // not yet on screen, or behind a message that went
            if (turn > 0)
                box->activateWindow(); // as the desktop does
            return;
        }
        if (++turn == 1) {
            QTest::keyClick(QApplication::focusWidget(), Qt::Key_A, Qt::ControlModifier);
            QTest::keyClicks(QApplication::focusWidget(), path);
        }
        // The first Enter may close a list of names only.
        QTest::keyClick(QApplication::focusWidget(), turn <= 4 ? Qt::Key_Return : Qt::Key_Escape);
    };
    keys.backToPlan();
    soon();
    press(key, with);
    done = true;
    QTest::qWait(40); // until the last one posted is gone
    EXPECT_GT(turn, 0) << "no box opened";
    window.activateWindow(); // as the desktop does when a box closes
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
}

void WatchedWindow::openByKeys(const QString& path) { inBox(Qt::Key_O, Qt::ControlModifier, path); }

void WatchedWindow::saveAsByKeys(const QString& path)
{
    inBox(Qt::Key_S, Qt::ControlModifier | Qt::ShiftModifier, path);
}

void WatchedWindow::dropFile(const QString& path)
{
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(path)});
    QDragEnterEvent enter(QPoint(300, 300), Qt::CopyAction, &data, Qt::LeftButton, {});
    QApplication::sendEvent(&window, &enter);
    QDropEvent drop(QPointF(300, 300), Qt::CopyAction, &data, Qt::LeftButton, {});
    QApplication::sendEvent(&window, &drop);
}

namespace
{
void readAloud(QAccessibleInterface* node, QStringList& texts)
{
    if (!node || !node->isValid() || node->state().invisible)
        return;
    for (const auto part : {QAccessible::Name, QAccessible::Description, QAccessible::Value})
        texts << node->text(part);
    for (int i = 0; i < node->childCount(); ++i)
        readAloud(node->child(i), texts);
}
} // namespace

QStringList WatchedWindow::written(bool aloud) const
{
    QStringList texts{window.windowTitle()};
    if (aloud)
        readAloud(QAccessible::queryAccessibleInterface(const_cast<ui::window::MainWindow*>(&window)), texts);
    for (const QWidget* widget : window.findChildren<QWidget*>())
        if (widget->isVisible())
            texts << widget->property("text").toString();
    texts.removeAll(QString());
    return texts;
}

void WatchedWindow::expectSound(const std::string& after, bool aloud) const
{
    // K∞ is the name of a coefficient.
    static const QRegularExpression unsound(QStringLiteral("\\b(nan|inf|infinity)\\b|(?<!K)∞"),
                                            QRegularExpression::CaseInsensitiveOption);
    for (const QString& text : written(aloud)) {
        // Numbers may stand with a sign for "falls": only a bare negative zero is none.
        const auto found = unsound.match(text);
        EXPECT_FALSE(found.hasMatch() && !found.captured(0).startsWith(u'-'))
            << after << ": " << text.left(300).toStdString();
    }
}

} // namespace sumpwright::tests

#include <QClipboard>
#include <QDropEvent>
#include <QFile>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QMimeData>
#include <QSignalSpy>
#include <QStatusBar>
#include <QUndoStack>

#include "tests/ui/window_fixture.hpp"
#include "ui/document/view_settings.hpp"
#include "ui/style/palette.hpp"
#include "ui/window/empty_state.hpp"

namespace sumpwright::tests
{
namespace
{

using plan::VesselKind;

TEST_F(OpenWindow, TitleNamesThePlanAndMarksChanges)
{
    EXPECT_TRUE(window.windowTitle().startsWith(QStringLiteral("Untitled plan")));
    EXPECT_FALSE(window.isWindowModified());
    placeTank();
    EXPECT_TRUE(window.isWindowModified());
    command("edit.undo")->trigger();
    EXPECT_FALSE(window.isWindowModified());
    ASSERT_TRUE(window.files().openPath(savedPlan()));
    EXPECT_TRUE(window.windowTitle().startsWith(QStringLiteral("shed")));
}

TEST_F(OpenWindow, UndoAndRedoNameTheirStep)
{
    EXPECT_FALSE(command("edit.undo")->isEnabled());
    placeTank();
    EXPECT_TRUE(command("edit.undo")->text().contains(QStringLiteral("T1")))
        << command("edit.undo")->text().toStdString();
    QTest::keyClick(&window, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(work.document.committed().vessels.size(), 0u);
    EXPECT_TRUE(command("edit.redo")->text().contains(QStringLiteral("T1")));
    QTest::keyClick(&window, Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(work.document.committed().vessels.size(), 1u);
}

TEST_F(OpenWindow, ClosingAnUnchangedPlanAsksNothing)
{
    EXPECT_TRUE(window.close());
    EXPECT_EQ(boxesAnswered, 0);
}

TEST_F(OpenWindow, ClosingAsksAndCancelStays)
{
    placeTank();
    answerNextBox(QStringLiteral("Cancel"));
    EXPECT_FALSE(window.close());
    EXPECT_EQ(boxesAnswered, 1);
    EXPECT_TRUE(window.isVisible());
    EXPECT_EQ(work.document.committed().vessels.size(), 1u);
}

TEST_F(OpenWindow, ClosingWithDiscardLeavesTheFileAsItWas)
{
    const QString path = savedPlan();
    ASSERT_TRUE(window.files().openPath(path));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QByteArray before = file.readAll();
    placeTank(4.0);
    answerNextBox(QStringLiteral("Discard"));
    EXPECT_TRUE(window.close());
    file.seek(0);
    EXPECT_EQ(file.readAll(), before);
    EXPECT_TRUE(work.session.recoveryOffers().empty());
}

TEST_F(OpenWindow, ClosingWithSaveWritesTheFile)
{
    const QString path = savedPlan();
    ASSERT_TRUE(window.files().openPath(path));
    placeTank(4.0);
    answerNextBox(QStringLiteral("Save"));
    EXPECT_TRUE(window.close());
    ui::document::Document document;
    ui::document::Session session(document, state());
    ASSERT_FALSE(session.open(path));
    EXPECT_EQ(document.committed().vessels.size(), 2u);
}

TEST_F(OpenWindow, SaveThatCannotBeWrittenKeepsTheWindowOpen)
{
    const QString path = savedPlan();
    ASSERT_TRUE(window.files().openPath(path));
    placeTank(4.0);
    ASSERT_TRUE(QFile::remove(path));
    ASSERT_TRUE(QDir().mkpath(path + QStringLiteral("/in-the-way"))); // a folder lies where the file was
    answerNextBox(QStringLiteral("Save"));
    EXPECT_FALSE(window.close());
    EXPECT_TRUE(window.isVisible());
    EXPECT_TRUE(window.isWindowModified());
    EXPECT_FALSE(window.strips().texts().isEmpty());
}

TEST_F(OpenWindow, BadFileIsToldInAStripAndNoBoxOpens)
{
    QFile bad(file("bad.sumpwright"));
    ASSERT_TRUE(bad.open(QIODevice::WriteOnly));
    bad.write("{ \"format\": \"somethi");
    bad.close();
    window.start(bad.fileName());
    EXPECT_FALSE(QApplication::activeModalWidget());
    ASSERT_EQ(window.strips().texts().size(), 1);
    EXPECT_TRUE(window.strips().texts().constFirst().contains(QStringLiteral("bad.sumpwright")));
    EXPECT_TRUE(work.session.path().isEmpty());
    ASSERT_TRUE(window.files().openPath(savedPlan()));
    EXPECT_TRUE(window.strips().texts().isEmpty()); // told no longer
}

TEST_F(OpenWindow, RefusedEditIsToldInAStripUntilTheNextChange)
{
    placeTank();
    const base::Id tank = work.document.committed().vessels.begin()->get()->id;
    work.document.select({tank});
    command("place.connect")->trigger(); // one thing only
    EXPECT_FALSE(QApplication::activeModalWidget());
    work.document.commit({"edit.nothing", {}, [](const plan::Plan&) -> base::Outcome<plan::Plan> {
                              return base::Refusal{"test.refused", "fish tank T1", "it can't float", "lower it"};
                          }});
    ASSERT_EQ(window.strips().texts().size(), 1);
    EXPECT_EQ(window.strips().texts().constFirst(), QStringLiteral("Fish tank T1: it can't float. Lower it."));
    placeTank(5.0);
    EXPECT_TRUE(window.strips().texts().isEmpty());
}

TEST_F(OpenWindow, SavedIsToldInTheStatusLineOnly)
{
    ASSERT_TRUE(window.files().openPath(savedPlan()));
    placeTank(4.0);
    command("file.save")->trigger();
    EXPECT_FALSE(QApplication::activeModalWidget());
    EXPECT_TRUE(window.statusBar()->currentMessage().contains(QStringLiteral("shed.sumpwright")));
    EXPECT_FALSE(window.isWindowModified());
}

QMenu* recentMenu(const ui::window::MainWindow& window)
{
    for (QMenu* menu : window.menuBar()->findChildren<QMenu*>())
        if (menu->title().remove(u'&') == QStringLiteral("Recent plans"))
            return menu;
    return nullptr;
}

TEST_F(OpenWindow, RecentMenuGreysWhatIsMissingAndCanBeCleared)
{
    const QString here = savedPlan("here.sumpwright");
    const QString gone = savedPlan("gone.sumpwright");
    ASSERT_TRUE(window.files().openPath(gone));
    ASSERT_TRUE(window.files().openPath(here));
    ASSERT_TRUE(QFile::remove(gone));
    QMenu* menu = recentMenu(window);
    ASSERT_TRUE(menu);
    Q_EMIT menu->aboutToShow();
    ASSERT_EQ(menu->actions().size(), 4); // two plans, a line, Clear
    EXPECT_TRUE(menu->actions().at(0)->text().contains(QStringLiteral("here")));
    EXPECT_TRUE(menu->actions().at(0)->isEnabled());
    EXPECT_FALSE(menu->actions().at(1)->isEnabled());
    menu->actions().constLast()->trigger();
    Q_EMIT menu->aboutToShow();
    EXPECT_FALSE(menu->actions().at(0)->isEnabled()); // "None yet"
}

TEST_F(OpenWindow, DroppedPlanOpens)
{
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(savedPlan())});
    QDragEnterEvent enter(QPoint(200, 200), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&window, &enter);
    EXPECT_TRUE(enter.isAccepted());
    QDropEvent drop(QPointF(200, 200), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&window, &drop);
    EXPECT_EQ(work.session.path(), file("shed.sumpwright"));
    EXPECT_EQ(work.document.committed().vessels.size(), 1u);
}

TEST_F(OpenWindow, DraggedTextIsNotTaken)
{
    QMimeData data;
    data.setText(QStringLiteral("shed"));
    QDragEnterEvent enter(QPoint(200, 200), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    enter.ignore();
    QApplication::sendEvent(&window, &enter);
    EXPECT_FALSE(enter.isAccepted());
}

TEST_F(OpenWindow, EmptyPlanOffersTwoWaysOnAndGoesWithTheFirstVessel)
{
    auto* empty = window.findChild<ui::window::EmptyState*>();
    ASSERT_TRUE(empty);
    EXPECT_TRUE(empty->isVisible());
    EXPECT_EQ(empty->findChildren<QPushButton*>().size(), 2);
    empty->findChildren<QPushButton*>().constFirst()->click();
    EXPECT_FALSE(empty->isVisible());
    EXPECT_TRUE(command("place.floor")->isChecked());
    EXPECT_TRUE(window.planView().hasFocus());
    command("select")->trigger();
    EXPECT_TRUE(empty->isVisible());
    placeTank();
    EXPECT_FALSE(empty->isVisible());
    command("edit.undo")->trigger();
    EXPECT_TRUE(empty->isVisible());
}

TEST_F(OpenWindow, SecondWindowSaysWhoHoldsThePlanAndEditsNothing)
{
    const QString path = savedPlan();
    ASSERT_TRUE(window.files().openPath(path));
    ui::window::Workplace otherWork(state());
    ui::window::MainWindow other(otherWork);
    other.show();
    ASSERT_TRUE(other.files().openPath(path));
    ASSERT_EQ(other.strips().texts().size(), 1);
    EXPECT_TRUE(other.strips().texts().constFirst().contains(QString::number(getpid())));
    EXPECT_TRUE(other.windowTitle().contains(QStringLiteral("for reading only")));
    EXPECT_FALSE(other.commands().find("place.sump")->isEnabled());
    otherWork.document.select({otherWork.document.committed().vessels.begin()->get()->id});
    EXPECT_FALSE(other.commands().find("edit.delete")->isEnabled());
    EXPECT_TRUE(other.commands().find("file.save-as")->isEnabled());
}

TEST_F(OpenWindow, FileChangedOnDiskOffersReloadAndKeep)
{
    const QString path = savedPlan();
    ASSERT_TRUE(window.files().openPath(path));
    placeTank(4.0);
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::Append));
    file.write("\n");
    file.close();
    ASSERT_TRUE(QTest::qWaitFor([this] { return window.strips().holds(QStringLiteral("disk")); }, 3000));
    EXPECT_EQ(work.document.committed().vessels.size(), 2u);
    ASSERT_TRUE(stripButton(QStringLiteral("Keep what is on screen")));
    stripButton(QStringLiteral("Reload the file"))->click();
    EXPECT_EQ(work.document.committed().vessels.size(), 1u);
    EXPECT_FALSE(window.strips().holds(QStringLiteral("disk")));
}

TEST_F(OpenWindow, DarkAndLightFollowTheCommandAtRunTimeAndAreKept)
{
    command("view.dark")->trigger();
    QApplication::processEvents();
    EXPECT_EQ(ui::style::themeOf(window.planView()).scheme, ui::style::Scheme::dark);
    EXPECT_EQ(ui::window::WindowState(state()).schemeChoice(), ui::document::SchemeChoice::dark);
    command("view.light")->trigger();
    QApplication::processEvents();
    EXPECT_EQ(ui::style::themeOf(window.planView()).scheme, ui::style::Scheme::light);
}

TEST_F(OpenWindow, UnitSwitchIsKeptAndIsNoEdit)
{
    command("view.us")->trigger();
    EXPECT_EQ(work.document.view().unitSystem(), units::UnitSystem::us);
    EXPECT_EQ(work.document.undoStack().count(), 0);
    EXPECT_FALSE(window.isWindowModified());
    EXPECT_EQ(ui::window::WindowState(state()).unitSystem(units::UnitSystem::metric), units::UnitSystem::us);
}

TEST_F(OpenWindow, FaultInsideAnEventIsToldAndTheWorkStays)
{
    placeTank();
    qApp->setProperty("faultExpected", true);
    QTimer::singleShot(0, &window, [] { throw base::BrokenPromise("a wheel came off"); });
    EXPECT_TRUE(QTest::qWaitFor([this] { return window.strips().holds(QStringLiteral("fault")); }, 2000));
    qApp->setProperty("faultExpected", false);
    EXPECT_TRUE(window.strips().texts().constFirst().contains(QStringLiteral("a wheel came off")));
    EXPECT_TRUE(window.isVisible());
    EXPECT_EQ(work.document.committed().vessels.size(), 1u);
}

TEST_F(OpenWindow, DetailsGoToTheClipboardWithoutThePlan)
{
    command("help.details")->trigger();
    const QString text = QApplication::clipboard()->text();
    EXPECT_TRUE(text.startsWith(QStringLiteral("Sumpwright ")));
    EXPECT_TRUE(text.contains(QStringLiteral("Qt 6")));
}

} // namespace
} // namespace sumpwright::tests

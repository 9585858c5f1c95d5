#include <sys/resource.h>
#include <unistd.h>

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QUndoStack>

#include "core/plan/edits/move.hpp"
#include "core/plan/edits/place.hpp"
#include "core/storage/plan_text.hpp"
#include "ui/document/document.hpp"
#include "ui/document/recent_plans.hpp"
#include "ui/document/session.hpp"

namespace sumpwright::ui::document
{
namespace
{

QByteArray bytesOf(const QString& path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray("absent");
}

void write(const QString& path, const QByteArray& bytes)
{
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(bytes);
}

void place(Document& document, double x)
{
    plan::VesselWish wish;
    wish.kind = plan::VesselKind::fishTank;
    wish.centre = {units::metres(x), units::metres(2.0)};
    ASSERT_TRUE(document.commit(plan::placeVessel(wish)));
}

struct Desk { // one window's worth of document and session
    explicit Desk(const QString& state) : session(document, state) {}
    Document document;
    Session session;
};

class OnDisk : public testing::Test
{
protected:
    QString file(const char* name) const { return folder.filePath(QString::fromLatin1(name)); }
    QString state() const { return folder.filePath(QStringLiteral("state")); }
    QStringList journals() const
    {
        return QDir(state()).entryList({QStringLiteral("*.journal")}, QDir::Files | QDir::Hidden);
    }
    // A saved plan with one tank.
    QString savedPlan()
    {
        Desk desk(state());
        place(desk.document, 1.0);
        EXPECT_FALSE(desk.session.saveAs(file("shed.sumpwright")));
        desk.session.close();
        return file("shed.sumpwright");
    }

    QTemporaryDir folder;
};

TEST_F(OnDisk, ModifiedFollowsTheUndoStacksCleanState)
{
    const QString path = savedPlan();
    Desk desk(state());
    ASSERT_FALSE(desk.session.open(path));
    EXPECT_FALSE(desk.session.modified());
    place(desk.document, 3.0);
    EXPECT_TRUE(desk.session.modified());
    desk.document.undoStack().undo();
    EXPECT_FALSE(desk.session.modified());
    desk.document.undoStack().redo();
    ASSERT_FALSE(desk.session.save());
    EXPECT_FALSE(desk.session.modified());
    desk.document.undoStack().undo(); // back past the saved state
    EXPECT_TRUE(desk.session.modified());
}

TEST_F(OnDisk, SavedFileReadsBackEqual)
{
    Desk desk(state());
    place(desk.document, 1.234567891);
    ASSERT_FALSE(desk.session.saveAs(file("a.sumpwright")));
    Desk other(state());
    ASSERT_FALSE(other.session.open(file("a.sumpwright")));
    EXPECT_EQ(other.document.committed(), desk.document.committed());
}

TEST_F(OnDisk, AutosaveGoesToTheStateFolderAndLeavesTheFileAlone)
{
    const QString path = savedPlan();
    const QByteArray before = bytesOf(path);
    Desk desk(state());
    ASSERT_FALSE(desk.session.open(path));
    EXPECT_TRUE(journals().isEmpty());
    place(desk.document, 3.0);
    desk.session.flushJournal();
    EXPECT_EQ(journals().size(), 1);
    EXPECT_EQ(bytesOf(path), before);
}

TEST_F(OnDisk, SavingUndoingToTheSavedStateAndClosingLeaveNoJournal)
{
    const QString path = savedPlan();
    Desk desk(state());
    ASSERT_FALSE(desk.session.open(path));
    place(desk.document, 3.0);
    desk.session.flushJournal();
    desk.document.undoStack().undo();
    EXPECT_TRUE(journals().isEmpty());
    desk.document.undoStack().redo();
    desk.session.flushJournal();
    EXPECT_EQ(journals().size(), 1);
    ASSERT_FALSE(desk.session.save());
    EXPECT_TRUE(journals().isEmpty());
    place(desk.document, 5.0);
    desk.session.flushJournal();
    desk.session.close();
    EXPECT_TRUE(journals().isEmpty());
}

TEST_F(OnDisk, GestureUnderWayIsNotAutosaved)
{
    const QString path = savedPlan();
    Desk desk(state());
    ASSERT_FALSE(desk.session.open(path));
    const base::Id tank = desk.document.committed().vessels.begin()->get()->id;
    desk.document.preview(plan::moveElements({tank}, {units::metres(1.0), units::metres(0.0)}));
    desk.session.flushJournal();
    EXPECT_TRUE(journals().isEmpty());
    EXPECT_FALSE(desk.session.modified());
}

// The largest file this process may write: a full disk that works for the administrator, too.
class SmallestDisk
{
public:
    SmallestDisk()
    {
        getrlimit(RLIMIT_FSIZE, &m_before);
        rlimit small = m_before;
        small.rlim_cur = 16;
        setrlimit(RLIMIT_FSIZE, &small);
    }
    ~SmallestDisk() { setrlimit(RLIMIT_FSIZE, &m_before); }

private:
    rlimit m_before{};
};

TEST_F(OnDisk, SaveFailureKeepsTheOldFileAndStaysModified)
{
    const QString path = savedPlan();
    const QByteArray before = bytesOf(path);
    Desk desk(state());
    ASSERT_FALSE(desk.session.open(path));
    place(desk.document, 3.0);
    desk.session.flushJournal();
    std::optional<base::Refusal> refusal;
    {
        const SmallestDisk full;
        refusal = desk.session.save();
    }
    ASSERT_TRUE(refusal);
    EXPECT_FALSE(refusal->what.empty());
    EXPECT_EQ(bytesOf(path), before);
    EXPECT_TRUE(desk.session.modified());
    EXPECT_EQ(QDir(folder.path()).entryList(QDir::Files | QDir::Hidden),
              QStringList{QStringLiteral("shed.sumpwright")});
}

TEST_F(OnDisk, AutosaveThatFailsIsToldOnceAndTheWorkGoesOn)
{
    const QString path = savedPlan();
    Desk desk(state());
    ASSERT_FALSE(desk.session.open(path));
    QSignalSpy failed(&desk.session, &Session::journalFailed);
    {
        const SmallestDisk full;
        for (int i = 0; i < 3; ++i) {
            place(desk.document, 3.0 + i);
            desk.session.flushJournal();
        }
    }
    EXPECT_TRUE(QTest::qWaitFor([&] { return failed.count() > 0; }, 2000));
    EXPECT_EQ(failed.count(), 1);
    ASSERT_FALSE(desk.session.save());
}

TEST_F(OnDisk, SavingIntoAFolderThatIsAFileIsRefused)
{
    write(file("not-a-folder"), "x");
    Desk desk(state());
    place(desk.document, 1.0);
    const auto refusal = desk.session.saveAs(file("not-a-folder/plan.sumpwright"));
    ASSERT_TRUE(refusal);
    EXPECT_TRUE(desk.session.path().isEmpty());
    EXPECT_TRUE(desk.session.modified());
    EXPECT_EQ(bytesOf(file("not-a-folder")), QByteArray("x"));
}

TEST_F(OnDisk, NewerVersionIsRefusedKindlyAndNothingChanges)
{
    const QString path = savedPlan();
    QByteArray newer = bytesOf(path);
    newer.replace("\"version\": 1", "\"version\": 2");
    ASSERT_NE(newer, bytesOf(path));
    write(file("newer.sumpwright"), newer);
    Desk desk(state());
    ASSERT_FALSE(desk.session.open(path));
    const plan::Plan before = desk.document.committed();
    const auto refusal = desk.session.open(file("newer.sumpwright"));
    ASSERT_TRUE(refusal);
    EXPECT_NE(base::oneLine(*refusal).find("version"), std::string::npos) << base::oneLine(*refusal);
    EXPECT_EQ(desk.document.committed(), before);
    EXPECT_EQ(desk.session.path(), path);
}

TEST_F(OnDisk, SecondWindowReadsOnlyAndSaysWhoHoldsThePlan)
{
    const QString path = savedPlan();
    auto first = std::make_unique<Desk>(state());
    ASSERT_FALSE(first->session.open(path));
    Desk second(state());
    ASSERT_FALSE(second.session.open(path));
    EXPECT_TRUE(second.document.readOnly());
    EXPECT_TRUE(second.session.heldBy().contains(QString::number(getpid()))) << second.session.heldBy().toStdString();
    EXPECT_FALSE(first->document.readOnly());
    first->session.close();
    ASSERT_FALSE(second.session.revert()); // the strip's "Try again"
    EXPECT_FALSE(second.document.readOnly());
    EXPECT_TRUE(second.session.heldBy().isEmpty());
}

TEST_F(OnDisk, ReadOnlyWindowGoesOnUnderAnotherName)
{
    const QString path = savedPlan();
    Desk first(state());
    ASSERT_FALSE(first.session.open(path));
    Desk second(state());
    ASSERT_FALSE(second.session.open(path));
    EXPECT_TRUE(second.session.save());
    EXPECT_TRUE(second.session.saveAs(path)); // still held by the first
    ASSERT_FALSE(second.session.saveAs(file("copy.sumpwright")));
    EXPECT_FALSE(second.document.readOnly());
    place(second.document, 4.0);
    EXPECT_FALSE(second.session.save());
}

TEST_F(OnDisk, FileChangedByOthersIsToldAndNeverOverwrittenUnasked)
{
    const QString path = savedPlan();
    Desk desk(state());
    ASSERT_FALSE(desk.session.open(path));
    QSignalSpy changed(&desk.session, &Session::changedOnDisk);
    place(desk.document, 3.0);
    const QByteArray theirs = bytesOf(path) + "\n";
    write(path, theirs);
    ASSERT_TRUE(QTest::qWaitFor([&] { return changed.count() == 1; }, 3000));
    EXPECT_FALSE(changed.at(0).at(0).toBool());
    ASSERT_TRUE(desk.session.save());
    EXPECT_EQ(bytesOf(path), theirs);
    desk.session.keepMine();
    EXPECT_TRUE(desk.session.modified());
    ASSERT_FALSE(desk.session.save());
    EXPECT_NE(bytesOf(path), theirs);
}

TEST_F(OnDisk, FileRenamedOverByOthersIsToldEachTime)
{
    const QString path = savedPlan();
    Desk desk(state());
    ASSERT_FALSE(desk.session.open(path));
    QSignalSpy changed(&desk.session, &Session::changedOnDisk);
    for (int round = 1; round <= 2; ++round) {
        write(file("other"), bytesOf(path) + QByteArray(round, '\n'));
        ASSERT_EQ(rename(file("other").toUtf8().constData(), path.toUtf8().constData()), 0);
        ASSERT_TRUE(QTest::qWaitFor([&] { return changed.count() == round; }, 3000)) << round;
        ASSERT_FALSE(desk.session.revert());
    }
}

TEST_F(OnDisk, FileThatIsGoneIsToldAndSavingWritesItAgain)
{
    const QString path = savedPlan();
    Desk desk(state());
    ASSERT_FALSE(desk.session.open(path));
    QSignalSpy changed(&desk.session, &Session::changedOnDisk);
    QFile::remove(path);
    ASSERT_TRUE(QTest::qWaitFor([&] { return changed.count() == 1; }, 3000));
    EXPECT_TRUE(changed.at(0).at(0).toBool());
    desk.session.keepMine();
    EXPECT_TRUE(desk.session.modified());
    ASSERT_FALSE(desk.session.save());
    EXPECT_TRUE(QFile::exists(path));
}

TEST_F(OnDisk, OwnSavingIsNoChangeByOthers)
{
    const QString path = savedPlan();
    Desk desk(state());
    ASSERT_FALSE(desk.session.open(path));
    QSignalSpy changed(&desk.session, &Session::changedOnDisk);
    for (int i = 0; i < 3; ++i) {
        place(desk.document, 3.0 + i);
        ASSERT_FALSE(desk.session.save());
        QTest::qWait(250);
    }
    EXPECT_EQ(changed.count(), 0);
}

TEST_F(OnDisk, RevertGivesTheSavedFileBackAndEmptiesUndo)
{
    const QString path = savedPlan();
    Desk desk(state());
    ASSERT_FALSE(desk.session.open(path));
    const plan::Plan saved = desk.document.committed();
    place(desk.document, 3.0);
    ASSERT_FALSE(desk.session.revert());
    EXPECT_EQ(desk.document.committed(), saved);
    EXPECT_EQ(desk.document.undoStack().count(), 0);
    EXPECT_FALSE(desk.session.modified());
}

TEST_F(OnDisk, UnknownKeysAreReportedAndKept)
{
    const QString path = savedPlan();
    QByteArray text = bytesOf(path);
    const qsizetype place = text.indexOf("\"version\"");
    text.insert(place, "\"shade_cloth\": 3,\n  ");
    write(path, text);
    Desk desk(state());
    QSignalSpy noticed(&desk.session, &Session::noticed);
    ASSERT_FALSE(desk.session.open(path));
    ASSERT_EQ(noticed.count(), 1);
    EXPECT_TRUE(noticed.at(0).at(0).toString().contains(QStringLiteral("shade_cloth")));
    ASSERT_FALSE(desk.session.saveAs(file("kept.sumpwright")));
    EXPECT_TRUE(bytesOf(file("kept.sumpwright")).contains("shade_cloth"));
}

TEST_F(OnDisk, ExamplesOpenWithoutAFileAndUnmodified)
{
    Desk desk(state());
    desk.session.startUntitled({}, QStringLiteral("School shed"));
    EXPECT_EQ(desk.session.displayName(), QStringLiteral("School shed"));
    EXPECT_FALSE(desk.session.modified());
    EXPECT_TRUE(desk.session.save()); // needs a name first
}

TEST_F(OnDisk, RecentPlansKeepsTheNewestTenEachOnce)
{
    RecentPlans recent(state());
    for (int i = 1; i <= 12; ++i)
        recent.add(file(qPrintable(QStringLiteral("p%1.sumpwright").arg(i))));
    recent.add(file("p5.sumpwright"));
    EXPECT_EQ(recent.paths().size(), 10);
    EXPECT_EQ(recent.paths().constFirst(), file("p5.sumpwright"));
    EXPECT_EQ(recent.paths().count(file("p5.sumpwright")), 1);
    EXPECT_FALSE(recent.paths().contains(file("p1.sumpwright")));
    EXPECT_EQ(RecentPlans(state()).paths(), recent.paths()); // the next run
    recent.clear();
    EXPECT_TRUE(RecentPlans(state()).paths().isEmpty());
}

TEST(StateFolder, FollowsTheDesktopSpecification)
{
    const QByteArray before = qgetenv("XDG_STATE_HOME");
    const QTemporaryDir home;
    qputenv("XDG_STATE_HOME", home.path().toUtf8());
    EXPECT_EQ(stateFolder(), home.filePath(QStringLiteral("sumpwright")));
    EXPECT_TRUE(QDir(stateFolder()).exists());
    qputenv("XDG_STATE_HOME", "relative/path"); // to be ignored, the specification says
    const QByteArray oldHome = qgetenv("HOME");
    qputenv("HOME", home.path().toUtf8());
    EXPECT_EQ(stateFolder(), home.filePath(QStringLiteral(".local/state/sumpwright")));
    qputenv("HOME", oldHome);
    qputenv("XDG_STATE_HOME", before);
}

} // namespace
} // namespace sumpwright::ui::document

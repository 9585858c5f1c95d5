// A killed program loses next to nothing: whole windows in processes of their own, killed at random moments, also while
// saving; a new window then offers the work and gives it back.
#include <cmath>
#include <csignal>
#include <random>

#include <gtest/gtest.h>

#include <QDir>
#include <QElapsedTimer>
#include <QProcess>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>
#include <QThread>
#include <QUndoStack>

#include "core/plan/edits/place.hpp"
#include "tests/journeys/recovery_child.hpp"
#include "ui/window/file_commands.hpp"
#include "ui/window/main_window.hpp"
#include "ui/window/message_strip.hpp"
#include "ui/window/workplace.hpp"

namespace sumpwright::tests
{
namespace
{

constexpr qint64 mostLost = 1000; // ms of work; autosaving writes four times a second

struct Victim {       // what is known of the killed program
    long last = 0;    // newest edit it told of
    long certain = 0; // newest edit older than mostLost when it was killed
};

Victim killAfter(const QString& state, const QString& plan, int savesEvery, int milliseconds)
{
    QProcess child;
    child.setProcessChannelMode(QProcess::ForwardedErrorChannel);
    child.start(QCoreApplication::applicationFilePath(),
                {QString::fromLatin1(childFlag.data()), state, plan, QString::number(savesEvery)});
    EXPECT_TRUE(child.waitForReadyRead(30000)) << "the window did not start";
    QThread::msleep(static_cast<unsigned long>(milliseconds));
    ::kill(static_cast<pid_t>(child.processId()), SIGKILL);
    QElapsedTimer now;
    now.start();
    const qint64 killed = now.msecsSinceReference();
    EXPECT_TRUE(child.waitForFinished(10000));
    EXPECT_EQ(child.exitStatus(), QProcess::CrashExit);
    Victim victim;
    for (const QByteArray& line : child.readAllStandardOutput().split('\n')) {
        const QList<QByteArray> words = line.split(' ');
        if (words.size() != 2 || !line.contains(' '))
            continue;
        victim.last = words[0].toLong();
        if (words[1].toLongLong() < killed - mostLost)
            victim.certain = victim.last;
    }
    return victim;
}

long editsIn(const plan::Plan& plan)
{
    if (plan.vessels.size() != 1)
        return -1;
    return std::lround((units::inMetres(plan.vessels.begin()->get()->centre.x) - firstPlace) / 0.1);
}

class WithVictims : public testing::Test
{
protected:
    QString state() const { return folder.filePath(QStringLiteral("state")); }
    QString savedPlan()
    {
        ui::document::Document document;
        ui::document::Session session(document, state());
        plan::VesselWish wish;
        wish.centre = {units::metres(firstPlace), units::metres(2.0)};
        EXPECT_TRUE(document.commit(plan::placeVessel(wish)));
        const QString path = folder.filePath(QStringLiteral("shed.sumpwright"));
        EXPECT_FALSE(session.saveAs(path));
        session.close();
        return path;
    }
    // The newest state the next window can give: from the strip's Recover where one is offered, else from the file.
    long recovered(ui::window::Workplace& work, ui::window::MainWindow& window, const QString& plan)
    {
        window.show();
        window.start(plan);
        const long inFile = plan.isEmpty() ? -1 : editsIn(work.document.committed());
        for (QPushButton* button : window.strips().findChildren<QPushButton*>())
            if (button->text() == QStringLiteral("Recover")) {
                button->click();
                EXPECT_TRUE(window.isWindowModified());
                EXPECT_EQ(work.document.undoStack().count(), 0);
                EXPECT_GE(editsIn(work.document.committed()), inFile);
                return editsIn(work.document.committed());
            }
        return inFile;
    }

    QTemporaryDir folder;
};

class Killed : public WithVictims, public testing::WithParamInterface<int>
{
protected:
    int moment() const // ms after the first edit
    {
        std::mt19937 random(static_cast<unsigned>(GetParam()) * 7919u + 11u);
        return std::uniform_int_distribution<int>(50, 2500)(random);
    }
};

class KilledOnce : public WithVictims
{
};

class KilledWhileEditing : public Killed
{
};

TEST_P(KilledWhileEditing, WorkOnANamedPlanComesBackAndTheFileIsUntouched)
{
    const QString plan = savedPlan();
    const Victim victim = killAfter(state(), plan, 0, moment());
    ui::window::Workplace work(state());
    ui::window::MainWindow window(work);
    const long found = recovered(work, window, plan);
    EXPECT_GE(found, victim.certain);
    EXPECT_LE(found, victim.last + 1);
    EXPECT_EQ(work.session.path(), plan);
    ASSERT_FALSE(work.session.revert()); // the saved file, as it was
    EXPECT_EQ(editsIn(work.document.committed()), 0);
    work.session.close();
    EXPECT_TRUE(work.session.recoveryOffers().empty());
}
INSTANTIATE_TEST_SUITE_P(AtRandomMoments, KilledWhileEditing, testing::Range(0, 4));

class KilledWhileSaving : public Killed
{
};

TEST_P(KilledWhileSaving, TheFileIsAlwaysWholeAndTheWorkComesBack)
{
    const QString plan = savedPlan();
    const Victim victim = killAfter(state(), plan, 1, moment());
    ui::window::Workplace work(state());
    ui::window::MainWindow window(work);
    const long found = recovered(work, window, plan);
    EXPECT_FALSE(window.strips().holds(QStringLiteral("file"))) << "the file was not whole";
    EXPECT_GE(found, victim.last); // every edit told of was saved before
    EXPECT_LE(found, victim.last + 1);
    ASSERT_FALSE(work.session.save());
    EXPECT_EQ(QDir(folder.path()).entryList(QDir::Files | QDir::Hidden),
              QStringList{QStringLiteral("shed.sumpwright")}); // no half-written file stays
    work.session.close();
}
INSTANTIATE_TEST_SUITE_P(AtRandomMoments, KilledWhileSaving, testing::Range(10, 14));

class KilledUntitled : public Killed
{
};

TEST_P(KilledUntitled, WorkThatNeverHadAFileComesBack)
{
    const Victim victim = killAfter(state(), QStringLiteral("-"), 0, moment() + 500);
    ui::window::Workplace work(state());
    ui::window::MainWindow window(work);
    const long found = recovered(work, window, {});
    EXPECT_GE(found, victim.certain);
    EXPECT_LE(found, victim.last + 1);
    EXPECT_TRUE(work.session.path().isEmpty());
    work.session.close();
}
INSTANTIATE_TEST_SUITE_P(AtRandomMoments, KilledUntitled, testing::Range(20, 22));

TEST_F(KilledOnce, RecoveredWorkSurvivesBeingKilledAgain)
{
    const QString plan = savedPlan();
    killAfter(state(), plan, 0, 900);
    long found = 0;
    {
        ui::window::Workplace work(state());
        ui::window::MainWindow window(work);
        found = recovered(work, window, plan);
        EXPECT_GT(found, 0);
        const auto journals = QDir(state()).entryList({QStringLiteral("*.journal")}, QDir::Files);
        EXPECT_EQ(journals.size(), 1); // ours now, the dead one's is gone
        work.session.flushJournal();
        // Ends without closing, as a killed program does: the journal stays.
    }
    EXPECT_EQ(QDir(state()).entryList({QStringLiteral("*.journal")}, QDir::Files).size(), 1);
}

TEST_F(KilledOnce, ThrownAwayWorkIsNotOfferedAgain)
{
    const QString plan = savedPlan();
    killAfter(state(), plan, 0, 900);
    ui::window::Workplace work(state());
    ui::window::MainWindow window(work);
    window.show();
    window.start(plan);
    ASSERT_EQ(work.session.recoveryOffers().size(), 1u);
    for (QPushButton* button : window.strips().findChildren<QPushButton*>())
        if (button->text() == QStringLiteral("Throw away"))
            button->click();
    EXPECT_TRUE(work.session.recoveryOffers().empty());
    EXPECT_EQ(editsIn(work.document.committed()), 0);
}

} // namespace
} // namespace sumpwright::tests

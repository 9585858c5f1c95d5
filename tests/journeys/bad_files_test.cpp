// Files that cannot be read or written, and a file that others change, through the window by its keys and buttons: a
// kind message, the plan on screen stays, nothing is overwritten unasked.
#include <sys/resource.h>
#include <sys/stat.h>

#include <algorithm>
#include <csignal>
#include <ctime>

#include <QDir>
#include <QFile>

#include "tests/journeys/watched_window.hpp"

namespace sumpwright::tests
{
namespace
{

class BadFiles : public WatchedWindow
{
protected:
    void SetUp() override
    {
        path = openExample("back_garden");
        saved = bytesOf(path);
        title = window.windowTitle();
    }

    // Of the file named; the plan on screen is still the one before, to the last byte.
    void expectKindlyRefused(const QString& name, const char* reason)
    {
        const QString said = strips();
        EXPECT_TRUE(said.contains(name)) << said.toStdString();
        EXPECT_TRUE(said.contains(QString::fromLatin1(reason), Qt::CaseInsensitive)) << said.toStdString();
        EXPECT_TRUE(said.contains(QStringLiteral("was not opened"))) << said.toStdString();
        EXPECT_LT(said.size(), 600) << said.left(900).toStdString();
        expectSound("a bad file");
        expectUntouched();
    }
    void expectUntouched()
    {
        EXPECT_EQ(window.windowTitle(), title);
        EXPECT_FALSE(modified());
        EXPECT_EQ(bytesOf(path), saved);
        const QString copy = file("copy.sumpwright");
        saveAsByKeys(copy);
        EXPECT_TRUE(bytesOf(copy) == saved) << bytesOf(copy).left(80).toStdString();
    }
    void nudgeSomething()
    {
        keys.backToPlan();
        press(Qt::Key_A, Qt::ControlModifier);
        press(Qt::Key_Right);
        EXPECT_TRUE(modified());
    }

    QString path;
    QByteArray saved;
    QString title;
};

struct Bad {
    const char* name;
    QByteArray (*bytes)(const QByteArray& sound);
    const char* reason; // in the message
};

const Bad badFiles[] = {
    {"Truncated", [](const QByteArray& sound) { return sound.left(sound.size() / 2); }, "line"},
    {"Nested", [](const QByteArray&) { return QByteArray(200000, '['); }, "nest"},
    {"FiftyMegabytes", [](const QByteArray&) { return QByteArray(50000000, ' '); }, "MB"},
    {"NotUtf8", [](const QByteArray&) { return QByteArray("{\"format\": \"\xff\xfe\"}"); }, "UTF-8"},
    {"Newer",
     [](const QByteArray& sound) {
         QByteArray newer = sound;
         newer.replace("\"version\": 1", "\"version\": 9");
         return newer;
     },
     "newer"},
    {"Empty", [](const QByteArray&) { return QByteArray(); }, "empty"},
    {"NoNumber",
     [](const QByteArray& sound) {
         QByteArray bad = sound;
         bad.replace("\"speed\": 1", "\"speed\": NaN");
         return bad;
     },
     "line"},
    {"Picture", [](const QByteArray&) { return QByteArray("\x89PNG\r\n\x1a\n\0\0\0\rIHDR", 16); }, "UTF-8"},
};

class BadContent : public BadFiles, public testing::WithParamInterface<Bad>
{
};

TEST_P(BadContent, IsRefusedKindlyAndThePlanStays)
{
    const QString name = QStringLiteral("given.sumpwright");
    const QString given = folder.filePath(name);
    writeBytes(given, GetParam().bytes(saved));
    ASSERT_NE(bytesOf(given), saved);
    const std::clock_t start = std::clock();
    openByKeys(given);
    EXPECT_LT(static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC, 3.0);
    EXPECT_EQ(bytesOf(given), GetParam().bytes(saved)) << "the bad file itself was written";
    expectKindlyRefused(name, GetParam().reason);
}
INSTANTIATE_TEST_SUITE_P(All, BadContent, testing::ValuesIn(badFiles),
                         [](const auto& each) { return std::string(each.param.name); });

TEST_F(BadFiles, FolderOpenedAsAPlanIsRefused)
{
    QDir(folder.path()).mkdir(QStringLiteral("folder.sumpwright"));
    dropFile(file("folder.sumpwright"));
    expectKindlyRefused(QStringLiteral("folder.sumpwright"), "no ordinary file");
}

TEST_F(BadFiles, MissingFileIsRefused)
{
    dropFile(file("gone.sumpwright"));
    expectKindlyRefused(QStringLiteral("gone.sumpwright"), "No such file");
}

// The box that asks for the file tells it itself, and stays for another name.
TEST_F(BadFiles, MissingFileNamedInTheOpenBoxIsToldThere)
{
    openByKeys(file("gone.sumpwright"));
    EXPECT_TRUE(boxTexts.join(u'\n').contains(QStringLiteral("gone.sumpwright"))) << boxTexts.join(u'\n').toStdString();
    EXPECT_FALSE(strips().contains(QStringLiteral("gone"))) << strips().toStdString();
    expectSound("a missing file");
    expectUntouched();
}

TEST_F(BadFiles, FilesThatCannotBeReadAreRefusedAtOnce)
{
    // A link to itself, a pipe nobody writes into, an endless device: unreadable for the administrator, too.
    ASSERT_TRUE(QFile::link(file("loop.sumpwright"), file("loop.sumpwright")));
    ASSERT_EQ(::mkfifo(file("pipe.sumpwright").toUtf8().constData(), 0600), 0);
    ASSERT_TRUE(QFile::link(QStringLiteral("/dev/zero"), file("endless.sumpwright")));
    for (const char* name : {"loop.sumpwright", "pipe.sumpwright", "endless.sumpwright"}) {
        dropFile(file(name));
        EXPECT_TRUE(strips().contains(QString::fromLatin1(name))) << strips().toStdString();
        pushStrip(QStringLiteral("Dismiss"));
    }
    expectUntouched();
}

TEST_F(BadFiles, PlansWhereNothingCanBeWrittenStayUnsavedAndWhole)
{
    nudgeSomething();
    writeBytes(file("a-file"), "x");
    // Neither folder takes a file, whoever asks.
    for (const QString& target : {QStringLiteral("/proc/plan.sumpwright"), file("a-file/plan.sumpwright"),
                                  file("no/such/folder/plan.sumpwright")}) {
        saveAsByKeys(target);
        EXPECT_TRUE(strips().contains(QStringLiteral("was not saved")))
            << target.toStdString() << strips().toStdString();
        EXPECT_TRUE(modified()) << target.toStdString();
        EXPECT_EQ(window.windowTitle(), title);
        EXPECT_FALSE(QFile::exists(target));
        pushStrip(QStringLiteral("Dismiss"));
    }
    EXPECT_EQ(bytesOf(file("a-file")), QByteArray("x"));
    QDir(folder.path()).mkdir(QStringLiteral("folder.sumpwright"));
    saveAsByKeys(file("folder.sumpwright")); // the box walks into it
    EXPECT_TRUE(QDir(file("folder.sumpwright")).isEmpty());
    EXPECT_TRUE(modified());
    EXPECT_EQ(bytesOf(path), saved);
    saveAsByKeys(file("elsewhere.sumpwright")); // nothing is lost
    EXPECT_FALSE(modified());
    EXPECT_NE(bytesOf(file("elsewhere.sumpwright")), saved);
    EXPECT_EQ(bytesOf(path), saved);
}

TEST_F(BadFiles, FullDiskKeepsTheOldFileAndTheWork)
{
    nudgeSomething();
    const auto quiet = std::signal(SIGXFSZ, SIG_IGN); // the disk's answer is wanted, not the limit's signal
    rlimit before{};
    getrlimit(RLIMIT_FSIZE, &before);
    rlimit small = before;
    small.rlim_cur = 64; // a disk that is full for the administrator, too
    setrlimit(RLIMIT_FSIZE, &small);
    press(Qt::Key_S, Qt::ControlModifier);
    setrlimit(RLIMIT_FSIZE, &before);
    std::signal(SIGXFSZ, quiet);
    EXPECT_TRUE(strips().contains(QStringLiteral("was not saved"))) << strips().toStdString();
    EXPECT_TRUE(modified());
    EXPECT_EQ(bytesOf(path), saved);
    press(Qt::Key_S, Qt::ControlModifier);
    EXPECT_FALSE(modified());
    EXPECT_FALSE(strips().contains(QStringLiteral("was not saved")));
    EXPECT_NE(bytesOf(path), saved);
}

TEST_F(BadFiles, FileChangedByOthersIsOfferedAndNeverOverwritten)
{
    nudgeSomething();
    QByteArray theirs = saved;
    theirs += "\n";
    writeBytes(path, theirs);
    press(Qt::Key_S, Qt::ControlModifier); // before the window can have heard of it
    EXPECT_EQ(bytesOf(path), theirs);
    EXPECT_TRUE(modified());
    EXPECT_TRUE(QTest::qWaitFor([&] { return strips().contains(QStringLiteral("changed by another program")); }, 3000))
        << strips().toStdString();
    press(Qt::Key_S, Qt::ControlModifier);
    EXPECT_EQ(bytesOf(path), theirs);
    pushStrip(QStringLiteral("Keep what is on screen"));
    EXPECT_EQ(bytesOf(path), theirs) << "keeping is not saving";
    EXPECT_TRUE(modified());
    press(Qt::Key_S, Qt::ControlModifier);
    EXPECT_FALSE(modified());
    EXPECT_NE(bytesOf(path), theirs);
}

TEST_F(BadFiles, FileChangedByOthersIsReloadedOnDemand)
{
    nudgeSomething();
    const QByteArray ours = [&] {
        saveAsByKeys(file("ours.sumpwright"));
        return bytesOf(file("ours.sumpwright"));
    }();
    nudgeSomething();
    writeBytes(file("ours.sumpwright"), saved); // theirs
    ASSERT_TRUE(QTest::qWaitFor([&] { return strips().contains(QStringLiteral("changed by another program")); }, 3000));
    pushStrip(QStringLiteral("Reload the file"));
    EXPECT_FALSE(modified());
    saveAsByKeys(file("again.sumpwright"));
    EXPECT_EQ(bytesOf(file("again.sumpwright")), saved);
    EXPECT_NE(ours, saved);
}

TEST_F(BadFiles, FileSpoiledByOthersLeavesThePlanOnScreen)
{
    nudgeSomething();
    writeBytes(path, "{ spoiled");
    ASSERT_TRUE(QTest::qWaitFor([&] { return strips().contains(QStringLiteral("changed by another program")); }, 3000));
    pushStrip(QStringLiteral("Reload the file"));
    EXPECT_TRUE(strips().contains(QStringLiteral("could not be read"))) << strips().toStdString();
    EXPECT_TRUE(modified());
    EXPECT_EQ(bytesOf(path), QByteArray("{ spoiled"));
    saveAsByKeys(file("rescued.sumpwright"));
    EXPECT_FALSE(modified());
    EXPECT_GT(bytesOf(file("rescued.sumpwright")).size(), saved.size() / 2);
}

TEST_F(BadFiles, FilePulledAwayIsToldAndSavingWritesItAgain)
{
    nudgeSomething();
    ASSERT_TRUE(QFile::rename(path, file("moved.sumpwright")));
    EXPECT_TRUE(QTest::qWaitFor([&] { return strips().contains(QStringLiteral("is gone")); }, 3000));
    EXPECT_FALSE(QFile::exists(path));
    press(Qt::Key_S, Qt::ControlModifier);
    EXPECT_TRUE(QFile::exists(path));
    EXPECT_FALSE(modified());
    EXPECT_FALSE(strips().contains(QStringLiteral("is gone"))) << "the message stands though it is mended";
    EXPECT_EQ(bytesOf(file("moved.sumpwright")), saved);
}

TEST_F(BadFiles, FolderPulledAwayKeepsTheWork)
{
    QDir(folder.path()).mkdir(QStringLiteral("desk"));
    saveAsByKeys(file("desk/plan.sumpwright"));
    nudgeSomething();
    ASSERT_TRUE(QDir(folder.path()).rename(QStringLiteral("desk"), QStringLiteral("attic")));
    press(Qt::Key_S, Qt::ControlModifier);
    EXPECT_TRUE(strips().contains(QStringLiteral("was not saved"))) << strips().toStdString();
    EXPECT_TRUE(modified());
    EXPECT_EQ(bytesOf(file("attic/plan.sumpwright")), saved);
    saveAsByKeys(file("elsewhere.sumpwright"));
    EXPECT_FALSE(modified());
}

} // namespace
} // namespace sumpwright::tests

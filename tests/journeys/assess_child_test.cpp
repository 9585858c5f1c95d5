// The program itself over plan files good and spoiled: it always ends by itself, with 0 or 2, one clear line for a bad
// file, and never prints what is no number.
#include <random>

#include <gtest/gtest.h>

#include <QDirIterator>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>

#include "tests/journeys/watched_window.hpp"

namespace sumpwright::tests
{
namespace
{

int assess(const QString& path, const std::string& what)
{
    QProcess program;
    program.start(QStringLiteral(SUMPWRIGHT_PROGRAM), {QStringLiteral("assess"), path, QStringLiteral("--json")});
    EXPECT_TRUE(program.waitForFinished(30000)) << what;
    EXPECT_EQ(program.exitStatus(), QProcess::NormalExit) << what << " ended by a signal";
    const QString out = QString::fromUtf8(program.readAllStandardOutput());
    const QString err = QString::fromUtf8(program.readAllStandardError());
    static const QRegularExpression unsound(QStringLiteral("\\b(nan|inf|infinity)\\b"),
                                            QRegularExpression::CaseInsensitiveOption);
    EXPECT_FALSE(unsound.match(out).hasMatch()) << what;
    EXPECT_TRUE(program.exitCode() == 0 || program.exitCode() == 2) << what << err.toStdString();
    if (program.exitCode() == 2) {
        EXPECT_EQ(err.count(u'\n'), 1) << what << err.toStdString();
        EXPECT_TRUE(out.isEmpty()) << what;
    }
    return program.exitCode();
}

QStringList plansOfTheTree()
{
    QStringList paths;
    for (const char* folder : {SUMPWRIGHT_SOURCE "/tests/files", SUMPWRIGHT_SOURCE "/resources/examples"}) {
        QDirIterator each(QString::fromUtf8(folder), {QStringLiteral("*.sumpwright")}, QDir::Files,
                          QDirIterator::Subdirectories);
        while (each.hasNext())
            paths << each.next();
    }
    return paths;
}

TEST(AssessAsAChild, ReadsEveryPlanOfTheTree)
{
    const QStringList paths = plansOfTheTree();
    EXPECT_GE(paths.size(), 3);
    for (const QString& path : paths)
        EXPECT_EQ(assess(path, path.toStdString()), 0);
}

TEST(AssessAsAChild, EndsByItselfOnSpoiledPlans)
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("spoiled.sumpwright"));
    std::mt19937 random(17);
    static constexpr char likely[] = "0123456789.-+eE\"{}[],: mk";
    int refused = 0;
    for (const QString& sound : plansOfTheTree()) {
        const QByteArray bytes = bytesOf(sound);
        for (int round = 0; round < 16; ++round) {
            QByteArray spoiled = bytes;
            if (round < 4)
                spoiled.truncate(bytes.size() * round / 4);
            else
                spoiled[static_cast<qsizetype>(random() % static_cast<unsigned>(bytes.size()))] =
                    likely[random() % (sizeof likely - 1)];
            writeBytes(path, spoiled);
            refused += assess(path, sound.toStdString() + " round " + std::to_string(round)) == 2 ? 1 : 0;
        }
    }
    EXPECT_GE(refused, 12); // the cut ones at least
}

} // namespace
} // namespace sumpwright::tests

#include "ui/window/log_file.hpp"

#include <cstdio>
#include <cstdlib>

#include <QCoreApplication>
#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QGuiApplication>
#include <QMutex>
#include <QStringList>
#include <QSysInfo>

namespace sumpwright::ui::window
{

namespace
{

constexpr qint64 largest = 1'000'000;
constexpr int shownLines = 100;

QString& openLog()
{
    static QString path;
    return path;
}

void append(const QString& line)
{
    static QMutex lock;
    const QMutexLocker guard(&lock);
    if (openLog().isEmpty())
        return;
    QFile file(openLog());
    if (!file.open(QIODevice::Append))
        return; // nowhere to complain
    file.write((QDateTime::currentDateTime().toString(Qt::ISODate) + u' ' + line + u'\n').toUtf8());
}

const char* wordOf(QtMsgType type)
{
    switch (type) {
    case QtDebugMsg:
        return "debug";
    case QtInfoMsg:
        return "info";
    case QtWarningMsg:
        return "warning";
    case QtCriticalMsg:
        return "error";
    case QtFatalMsg:
        return "fatal";
    }
    return "";
}

void takeMessage(QtMsgType type, const QMessageLogContext&, const QString& message)
{
    append(QString::fromLatin1(wordOf(type)) + QStringLiteral(": ") + message);
    if (type == QtFatalMsg) {
        const QString line = message.section(u'\n', 0, 0);
        std::fprintf(stderr, "sumpwright: %s\n", qPrintable(line));
        std::_Exit(1);
    }
}

} // namespace

void startLog(const QString& stateFolder)
{
    openLog() = QDir(stateFolder).filePath(QStringLiteral("log"));
    if (QFileInfo(openLog()).size() > largest) {
        QFile::remove(openLog() + QStringLiteral(".old"));
        QFile::rename(openLog(), openLog() + QStringLiteral(".old"));
    }
    qInstallMessageHandler(takeMessage);
}

void writeLog(const QString& line) { append(line); }

QString logPath() { return openLog(); }

QString details()
{
    QStringList lines;
    lines << QStringLiteral("Sumpwright %1").arg(QCoreApplication::applicationVersion());
    lines << QStringLiteral("Qt %1, platform %2").arg(QString::fromLatin1(qVersion()), QGuiApplication::platformName());
    lines << QStringLiteral("%1, %2").arg(QSysInfo::prettyProductName(), QSysInfo::currentCpuArchitecture());
    lines << QStringLiteral("Log: %1").arg(logPath());
    QFile file(logPath());
    if (file.open(QIODevice::ReadOnly)) {
        const QStringList log = QString::fromUtf8(file.readAll()).split(u'\n', Qt::SkipEmptyParts);
        lines << log.mid(qMax(0, static_cast<int>(log.size()) - shownLines));
    }
    return lines.join(u'\n') + u'\n';
}

} // namespace sumpwright::ui::window

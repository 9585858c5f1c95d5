#include "ui/document/session.hpp"

#include <QDir>
#include <QFileInfo>
#include <QFileSystemWatcher>
#include <QStandardPaths>
#include <QTimer>
#include <QUndoStack>

#include "core/storage/lock.hpp"
#include "core/storage/plan_text.hpp"
#include "ui/document/document.hpp"
#include "ui/document/journal_writer.hpp"

namespace sumpwright::ui::document
{

namespace
{

constexpr std::chrono::milliseconds settleTime{150}; // others write in several steps

std::filesystem::path asPath(const QString& path) { return std::filesystem::path(path.toStdU16String()); }

base::Refusal noFileYet() { return {"session.untitled", "", "this plan has no file yet", "choose a name for it"}; }

QString unknownKeysMessage(const std::vector<std::string>& keys)
{
    QStringList shown;
    for (const std::string& key : keys) {
        if (shown.size() == 3)
            break;
        shown << QString::fromStdString(key);
    }
    QString list = shown.join(QStringLiteral("; "));
    if (keys.size() > 3)
        list += Session::tr(" and %n more", nullptr, static_cast<int>(keys.size()) - 3);
    return Session::tr("The file has entries this version does not know. They are kept as they are: %1.").arg(list);
}

} // namespace

QString stateFolder()
{
    QString base = qEnvironmentVariable("XDG_STATE_HOME");
    if (base.isEmpty() || !QDir::isAbsolutePath(base)) // relative paths are to be ignored, the specification says
        base = QDir::homePath() + QStringLiteral("/.local/state");
    const QString folder = base + QStringLiteral("/sumpwright");
    QDir().mkpath(folder);
    return folder;
}

Session::Session(Document& document, const QString& stateFolder, QObject* parent)
    : QObject(parent), m_document(document), m_stateFolder(stateFolder),
      m_watcher(std::make_unique<QFileSystemWatcher>()), m_look(std::make_unique<QTimer>())
{
    m_look->setSingleShot(true);
    m_look->setInterval(settleTime);
    connect(m_look.get(), &QTimer::timeout, this, &Session::lookAtDisk);
    const auto later = [this] { m_look->start(); };
    connect(m_watcher.get(), &QFileSystemWatcher::fileChanged, this, later);
    connect(m_watcher.get(), &QFileSystemWatcher::directoryChanged, this, later);
    // Not planChanged: while a command is being pushed the undo stack does not count it yet.
    connect(&m_document.undoStack(), &QUndoStack::indexChanged, this, &Session::journalEdit);
    connect(&m_document.undoStack(), &QUndoStack::cleanChanged, this, &Session::modifiedChanged);
}

Session::~Session() { m_document.undoStack().disconnect(this); }

QString Session::displayName() const
{
    if (!m_path.isEmpty())
        return QFileInfo(m_path).completeBaseName();
    return m_untitledName.isEmpty() ? tr("Untitled plan") : m_untitledName;
}

bool Session::modified() const { return m_differsFromFile || !m_document.undoStack().isClean(); }

std::optional<base::Refusal> Session::open(const QString& path)
{
    const std::filesystem::path file = asPath(QFileInfo(path).absoluteFilePath());
    const auto bytes = storage::readFile(file, storage::largestPlanBytes);
    if (!bytes)
        return bytes.refusal();
    auto loaded = storage::loadText(*bytes);
    if (!loaded)
        return loaded.refusal();
    close();
    adopt(file, loaded->plan, storage::contentHash(*bytes));
    if (!loaded->unknownKeys.empty())
        Q_EMIT noticed(unknownKeysMessage(loaded->unknownKeys));
    if (loaded->fromVersion < storage::planVersion)
        Q_EMIT noticed(tr("This file was written by an older version. Saving writes it in the present form."));
    return std::nullopt;
}

void Session::startUntitled(plan::Plan plan, const QString& name)
{
    close();
    m_untitledName = name;
    m_document.setReadOnly(false);
    m_document.reset(std::move(plan));
    setDiffersFromFile(false);
    Q_EMIT nameChanged();
}

std::optional<base::Refusal> Session::save()
{
    if (m_path.isEmpty())
        return noFileYet();
    if (m_document.readOnly())
        return base::Refusal{"session.read-only", m_path.toStdString(), "the plan is open elsewhere",
                             "save it under another name"};
    if (storage::compareWithDisk(*m_stamp) == storage::FileState::changed) {
        Q_EMIT changedOnDisk(false);
        return base::Refusal{"session.changed-on-disk", m_path.toStdString(),
                             "the file was changed by another program since it was read",
                             "reload it, or keep what is on screen and save again"};
    }
    const std::string text = storage::saveText(m_document.committed());
    if (auto failure = storage::writeFile(m_stamp->path, text))
        return failure;
    m_stamp->content = storage::contentHash(text);
    m_changeReported = false;
    if (m_journal)
        m_journal->discard();
    m_document.undoStack().setClean();
    setDiffersFromFile(false);
    watch();
    Q_EMIT saved();
    return std::nullopt;
}

std::optional<base::Refusal> Session::saveAs(const QString& path)
{
    const std::filesystem::path file = asPath(QFileInfo(path).absoluteFilePath());
    const bool samePlace = m_stamp && file == m_stamp->path && m_lock;
    std::unique_ptr<storage::PlanLock> lock;
    if (!samePlace) {
        auto answer = storage::PlanLock::take(asPath(m_stateFolder), file);
        if (const auto* held = std::get_if<storage::PlanLock::HeldBy>(&answer))
            return base::Refusal{"session.held", path.toStdString(),
                                 "the plan of that name is open in another window of " + held->owner.user,
                                 "choose another name"};
        if (auto* taken = std::get_if<std::unique_ptr<storage::PlanLock>>(&answer))
            lock = std::move(*taken);
    }
    const std::string text = storage::saveText(m_document.committed());
    if (auto failure = storage::writeFile(file, text))
        return failure;
    if (!samePlace) {
        close();
        m_lock = std::move(lock);
    } else if (m_journal) {
        m_journal->discard();
    }
    m_path = QString::fromStdU16String(file.u16string());
    m_stamp = storage::FileStamp{file, storage::contentHash(text)};
    m_changeReported = false;
    m_document.setReadOnly(false);
    m_document.undoStack().setClean();
    setDiffersFromFile(false);
    watch();
    Q_EMIT nameChanged();
    Q_EMIT saved();
    return std::nullopt;
}

std::optional<base::Refusal> Session::revert()
{
    if (m_path.isEmpty())
        return noFileYet();
    return open(QString(m_path)); // a copy: opening clears the path first
}

void Session::keepMine()
{
    if (!m_stamp)
        return;
    if (const auto bytes = storage::readFile(m_stamp->path, storage::largestPlanBytes))
        m_stamp->content = storage::contentHash(*bytes);
    m_changeReported = false;
    setDiffersFromFile(true);
    journalEdit();
}

void Session::close()
{
    if (m_journal)
        m_journal->discard();
    m_journal.reset();
    m_lock.reset();
    if (const QStringList watched = m_watcher->files() + m_watcher->directories(); !watched.isEmpty())
        m_watcher->removePaths(watched);
    m_look->stop();
    m_path.clear();
    m_untitledName.clear();
    m_untitledNumber = 0;
    m_stamp.reset();
    m_heldBy.clear();
    m_changeReported = false;
    m_differsFromFile = false;
}

void Session::adopt(const std::filesystem::path& path, plan::Plan plan, storage::ContentHash content)
{
    m_path = QString::fromStdU16String(path.u16string());
    m_stamp = storage::FileStamp{path, content};
    takeLock();
    m_document.reset(std::move(plan));
    m_document.setReadOnly(!m_heldBy.isEmpty());
    setDiffersFromFile(false);
    watch();
    Q_EMIT nameChanged();
}

void Session::takeLock()
{
    auto answer = storage::PlanLock::take(asPath(m_stateFolder), m_stamp->path);
    if (auto* taken = std::get_if<std::unique_ptr<storage::PlanLock>>(&answer))
        m_lock = std::move(*taken);
    else if (const auto* held = std::get_if<storage::PlanLock::HeldBy>(&answer))
        m_heldBy = tr("%1 on %2 (process %3)")
                       .arg(QString::fromStdString(held->owner.user), QString::fromStdString(held->owner.host))
                       .arg(held->owner.pid);
    else
        Q_EMIT noticed(tr("This plan could not be marked as open here: %1. Do not edit it in two windows.")
                           .arg(QString::fromStdString(std::get<base::Refusal>(answer).what)));
}

void Session::watch()
{
    if (!m_stamp)
        return;
    const QString folder = QFileInfo(m_path).absolutePath();
    if (!m_watcher->files().contains(m_path) && QFileInfo::exists(m_path))
        m_watcher->addPath(m_path); // a file renamed over it ends the watch: watched again after each look
    if (!m_watcher->directories().contains(folder))
        m_watcher->addPath(folder);
}

void Session::lookAtDisk()
{
    if (!m_stamp)
        return;
    watch();
    const storage::FileState state = storage::compareWithDisk(*m_stamp);
    if (state == storage::FileState::same) {
        m_changeReported = false;
        return;
    }
    if (!std::exchange(m_changeReported, true))
        Q_EMIT changedOnDisk(state == storage::FileState::missing);
}

void Session::setDiffersFromFile(bool differs)
{
    m_differsFromFile = differs;
    Q_EMIT modifiedChanged();
}

} // namespace sumpwright::ui::document

// Session: the plan's life on the disk - its file, saving, the autosave journal, recovery, the lock, and changes
// made to the file by others. Holds no widget; the window asks its questions and shows its answers.
//
// The person's file is written only by save() and saveAs(), atomically. Autosaves go to the state folder.
#pragma once

#include <atomic>
#include <filesystem>
#include <memory>
#include <optional>
#include <vector>

#include <QDateTime>
#include <QObject>
#include <QString>

#include "core/base/outcome.hpp"
#include "core/plan/plan.hpp"
#include "core/storage/file.hpp"

QT_BEGIN_NAMESPACE
class QFileSystemWatcher;
class QTimer;
QT_END_NAMESPACE

namespace sumpwright::storage
{
class PlanLock;
}

namespace sumpwright::ui::document
{

class Document;
class JournalWriter;

// $XDG_STATE_HOME/sumpwright, else ~/.local/state/sumpwright: journals, locks, recent plans, log. Made when absent.
QString stateFolder();

// Work found in the state folder that never reached a file.
struct RecoveryOffer {
    QString journal;               // file in the state folder
    QString planPath;              // empty: untitled
    QString name;                  // to show
    QDateTime written;             // last autosave, local time
    bool fileChangedSince = false; // the saved file is not the one this work departs from
};

class Session : public QObject
{
    Q_OBJECT

public:
    Session(Document& document, const QString& stateFolder, QObject* parent = nullptr);
    ~Session() override; // leaves the journal of unsaved work; close() ends cleanly

    const QString& path() const { return m_path; }     // empty: untitled
    QString displayName() const;                       // file name without its ending, or "Untitled plan"
    bool modified() const;                             // undo stack not clean, or recovered and not saved since
    const QString& heldBy() const { return m_heldBy; } // who has the plan open, when it is read-only here

    // Refused: nothing changes. What the reading noticed (unknown keys, an older version) is emitted as noticed().
    std::optional<base::Refusal> open(const QString& path);
    void startUntitled(plan::Plan plan = {}, const QString& name = {}); // examples open this way
    std::optional<base::Refusal> save();                                // needs a path
    std::optional<base::Refusal> saveAs(const QString& path);
    std::optional<base::Refusal> revert(); // the saved file again; undo starts empty
    void keepMine();                       // the file changed on disk: what is on screen stays, save overwrites
    void close();                          // the person is done with this plan: no journal, no lock

    std::vector<RecoveryOffer> recoveryOffers() const;
    std::optional<base::Refusal> recover(const RecoveryOffer& offer); // opens as modified
    void discard(const RecoveryOffer& offer);

    void flushJournal(); // returns when the newest edit is in the journal

Q_SIGNALS:
    void nameChanged(); // path, or who holds the plan
    void modifiedChanged();
    void saved();
    void noticed(const QString& message);
    void changedOnDisk(bool missing); // the file is not what was read or written here; once per change
    void journalFailed(const QString& reason);

private:
    void adopt(const std::filesystem::path& path, plan::Plan plan, storage::ContentHash content);
    void leave();
    void takeLock();
    void startJournal();
    void watch();
    void lookAtDisk();
    void journalEdit();
    void setDiffersFromFile(bool differs);

    Document& m_document;
    QString m_stateFolder;
    QString m_path;
    QString m_untitledName;
    int m_untitledNumber = 0; // of the journal; 0: not yet given
    std::optional<storage::FileStamp> m_stamp;
    QString m_heldBy;
    bool m_differsFromFile = false; // though the undo stack is clean
    bool m_changeReported = false;
    std::atomic<bool> m_journalFailed = false; // set by the writer's thread
    bool m_journalFailureTold = false;
    std::unique_ptr<storage::PlanLock> m_lock;
    std::unique_ptr<JournalWriter> m_journal;
    std::unique_ptr<QFileSystemWatcher> m_watcher;
    std::unique_ptr<QTimer> m_look;
};

} // namespace sumpwright::ui::document

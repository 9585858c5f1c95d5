// Session: the plan's life on the disk - its file, saving, the autosave journal, recovery, the lock, and changes
// made to the file by others. Holds no widget; the window asks its questions and shows its answers.
//
// The person's file is written only by save() and saveAs(), atomically. Autosaves go to the state folder.
#pragma once

#include <chrono>
#include <memory>
#include <optional>
#include <vector>

#include <QDateTime>
#include <QObject>
#include <QString>

#include "core/base/outcome.hpp"
#include "core/plan/plan.hpp"

QT_BEGIN_NAMESPACE
class QFileSystemWatcher;
class QTimer;
QT_END_NAMESPACE

namespace sumpwright::ui::document
{

class Document;

struct SessionPaths {
    QString stateFolder;             // journals, log; made when absent
    static SessionPaths ofDesktop(); // $XDG_STATE_HOME/sumpwright, else ~/.local/state/sumpwright
};

// Work found in the state folder that never reached a file.
struct RecoveryOffer {
    QString journal;   // file in the state folder
    QString planPath;  // empty: untitled
    QString name;      // to show
    QDateTime written; // last autosave
};

class Session : public QObject
{
    Q_OBJECT

public:
    Session(Document& document, SessionPaths paths, QObject* parent = nullptr);
    ~Session() override; // a clean end: removes the journal and the lock

    QString path() const { return m_path; }     // empty: untitled
    QString displayName() const;                // file name without ending, or "Untitled plan"
    bool modified() const;                      // undo stack not clean, or recovered and not saved since
    QString heldBy() const { return m_heldBy; } // who has the plan open, when read-only here

    // Refused: nothing changes. What the reading noticed (unknown keys) is emitted as noticed().
    std::optional<base::Refusal> open(const QString& path);
    void startUntitled(plan::Plan plan = {}, const QString& name = {}); // examples open this way, unsaved
    std::optional<base::Refusal> save();                                // untitled: use saveAs
    std::optional<base::Refusal> saveAs(const QString& path);
    std::optional<base::Refusal> revert(); // the saved file again; undo starts empty
    void keepMine();                       // the file changed on disk: keep what is on screen, save overwrites

    std::vector<RecoveryOffer> recoveryOffers() const;
    std::optional<base::Refusal> recover(const RecoveryOffer& offer); // opens as modified
    void discard(const RecoveryOffer& offer);

    void autosaveNow(); // also runs by itself, 2 s after the last edit and every 10 s during a long burst

Q_SIGNALS:
    void nameChanged(); // path, name or read-only holder
    void modifiedChanged();
    void saved();
    void noticed(const QString& message);
    void changedOnDisk(); // the file is not what was read or written here; once per change
    void journalFailed(const QString& reason);

private:
    struct Journal;
    void adopt(const QString& path, plan::Plan plan, const QString& contentHash);
    std::optional<base::Refusal> writeTo(const QString& path);
    void takeLock();
    void watch();
    void fileTouched();
    void planEdited();

    Document& m_document;
    SessionPaths m_paths;
    QString m_path;
    QString m_untitledName;
    QString m_fileHash; // of the file as read or written here
    QString m_heldBy;
    bool m_recovered = false; // differs from its file though undo is empty
    std::unique_ptr<Journal> m_journal;
    std::unique_ptr<QTimer> m_autosave;
    std::unique_ptr<QTimer> m_autosaveLatest;
    std::unique_ptr<QFileSystemWatcher> m_watcher;
};

} // namespace sumpwright::ui::document

// Session's autosave and recovery.
#include "ui/document/session.hpp"

#include <QFileInfo>
#include <QFileSystemWatcher>
#include <QTimer>
#include <QUndoStack>

#include "core/storage/journal.hpp"
#include "core/storage/lock.hpp"
#include "core/storage/plan_text.hpp"
#include "ui/document/document.hpp"
#include "ui/document/journal_writer.hpp"

namespace sumpwright::ui::document
{

namespace
{

std::filesystem::path asPath(const QString& path) { return std::filesystem::path(path.toStdU16String()); }

RecoveryOffer offerOf(const storage::Recoverable& found)
{
    const storage::JournalEntry& entry = found.entry;
    RecoveryOffer offer;
    offer.journal = QString::fromStdU16String(found.journalFile.u16string());
    offer.planPath = QString::fromStdU16String(entry.planPath.u16string());
    offer.name = offer.planPath.isEmpty() ? Session::tr("Untitled plan %1").arg(entry.untitledNumber)
                                          : QFileInfo(offer.planPath).completeBaseName();
    offer.written = QDateTime::fromSecsSinceEpoch(entry.writtenAt.time_since_epoch().count());
    offer.fileChangedSince = found.savedFile == storage::FileState::changed;
    return offer;
}

} // namespace

// Every committed edit goes to the journal; a gesture under way does not. Back at the saved state there is nothing to
// recover.
void Session::journalEdit()
{
    if (m_document.previewing() || m_document.readOnly())
        return;
    if (!modified()) {
        if (m_journal)
            m_journal->discard();
        return;
    }
    if (!m_journal)
        startJournal();
    m_journal->write(m_document.committed(), m_document.revision(),
                     m_stamp ? m_stamp->content : storage::ContentHash{});
}

void Session::startJournal()
{
    const std::filesystem::path folder = asPath(m_stateFolder);
    if (!m_stamp && m_untitledNumber == 0)
        m_untitledNumber = storage::freeUntitledNumber(folder);
    auto journal = m_stamp ? storage::Journal(folder, m_stamp->path) : storage::Journal(folder, m_untitledNumber);
    m_journal = std::make_unique<JournalWriter>(std::move(journal), [this](std::optional<base::Refusal> failure) {
        m_journalFailed = failure.has_value();
        const QString reason = failure ? QString::fromStdString(base::oneLine(*failure)) : QString();
        QMetaObject::invokeMethod(
            this,
            [this, reason] {
                if (!reason.isEmpty() && !std::exchange(m_journalFailureTold, true))
                    Q_EMIT journalFailed(reason);
                if (reason.isEmpty())
                    m_journalFailureTold = false;
            },
            Qt::QueuedConnection);
    });
}

void Session::flushJournal()
{
    if (m_journal)
        m_journal->flush();
}

std::vector<RecoveryOffer> Session::recoveryOffers() const
{
    std::vector<RecoveryOffer> offers;
    for (const storage::Recoverable& found : storage::recoverable(asPath(m_stateFolder)).found)
        offers.push_back(offerOf(found));
    return offers;
}

std::optional<base::Refusal> Session::recover(const RecoveryOffer& offer)
{
    const auto all = storage::recoverable(asPath(m_stateFolder)).found;
    const auto found = std::find_if(all.begin(), all.end(), [&offer](const storage::Recoverable& candidate) {
        return candidate.journalFile == asPath(offer.journal);
    });
    if (found == all.end())
        return base::Refusal{"session.recovery-gone", offer.name.toStdString(), "the autosaved work is no longer there",
                             "another window may have recovered it"};
    auto loaded = storage::loadText(found->entry.planText);
    if (!loaded)
        return loaded.refusal();
    if (offer.planPath.isEmpty()) {
        startUntitled(loaded->plan, offer.name);
        m_untitledNumber = found->entry.untitledNumber;
    } else {
        close();
        adopt(found->entry.planPath, loaded->plan, found->entry.departsFrom);
        m_changeReported = found->savedFile == storage::FileState::changed;
    }
    setDiffersFromFile(true);
    journalEdit(); // the work is ours now, also if this process is killed in its turn
    flushJournal();
    if (!m_journalFailed)
        storage::discardJournal(found->journalFile);
    if (m_changeReported)
        Q_EMIT changedOnDisk(false);
    return std::nullopt;
}

void Session::discard(const RecoveryOffer& offer) { storage::discardJournal(asPath(offer.journal)); }

} // namespace sumpwright::ui::document

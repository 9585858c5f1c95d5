// Journal: the newest text of a plan being edited, kept in a state folder and never onto the person's own file, so
// that a killed program loses nothing. What is worth recovering is told by content, not by date.
#pragma once

#include <chrono>
#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/outcome.hpp"
#include "core/storage/file.hpp"
#include "core/storage/process.hpp"

namespace sumpwright::storage
{

using Moment = std::chrono::sys_seconds;

struct JournalEntry {
    std::filesystem::path planPath; // canonical; empty: an untitled plan
    int untitledNumber = 0;         // 1, 2, ... of an untitled plan
    ContentHash departsFrom;        // of the saved file it was opened from; zero for an untitled plan
    std::uint64_t revision = 0;
    Moment writtenAt{};
    ProcessMark owner;
    std::string planText;
};

// One per open plan. The state folder is made when missing. Discarded on a clean close only: a Journal that is
// destroyed leaves its file, as a killed program does.
class Journal
{
public:
    Journal(std::filesystem::path stateFolder, std::filesystem::path planPath); // a named plan
    Journal(std::filesystem::path stateFolder, int untitledNumber);

    std::optional<base::Refusal> write(std::string_view planText, std::uint64_t revision, ContentHash departsFrom,
                                       Moment now) const;
    void discard() const;
    const std::filesystem::path& file() const { return m_file; }

private:
    std::filesystem::path m_stateFolder;
    std::filesystem::path m_planPath;
    int m_untitledNumber = 0;
    std::filesystem::path m_file;
};

struct Recoverable {
    std::filesystem::path journalFile;
    JournalEntry entry;
    FileState savedFile = FileState::same; // against departsFrom: whether the saved file changed since
};
struct Recovery {
    std::vector<Recoverable> found;        // newest first; owner dead, text differs from the file on disk
    std::vector<base::Refusal> unreadable; // journals that are damaged; place is the file
};
Recovery recoverable(const std::filesystem::path& stateFolder);
// The lowest number no journal in the folder uses.
int freeUntitledNumber(const std::filesystem::path& stateFolder);
void discardJournal(const std::filesystem::path& journalFile);

} // namespace sumpwright::storage

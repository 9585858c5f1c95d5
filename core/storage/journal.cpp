#include "core/storage/journal.hpp"

#include <algorithm>
#include <charconv>
#include <tuple>

#include <sys/stat.h>

#include "core/storage/mark_text.hpp"
#include "core/storage/plan_text.hpp"

namespace sumpwright::storage
{

namespace
{

namespace fs = std::filesystem;

constexpr std::string_view journalFormat = "sumpwright-journal";
constexpr std::string_view ending = ".journal";
constexpr std::string_view untitledStart = "untitled-";
constexpr std::size_t largestHeader = 20'000;

std::string ownEnding()
{
    const ProcessMark mark = thisProcess();
    return "-" + std::to_string(mark.pid) + "-" + std::to_string(mark.start) + std::string(ending);
}

base::Refusal damaged(const fs::path& file, const std::string& what)
{
    return {"storage.damaged-journal", file.string(), what, "nothing can be recovered from it; it may be deleted"};
}

std::int64_t secondsIn(const std::string& text)
{
    std::int64_t seconds = 0;
    std::from_chars(text.data(), text.data() + text.size(), seconds);
    return seconds;
}

JournalEntry entryIn(std::string_view header, std::string_view planText)
{
    const auto root = readJson(header, {largestHeader, 2, 100});
    if (!root)
        throw Unreadable{root.refusal()};
    std::vector<std::string> unknown;
    ObjectReader reader(root.value(), {}, unknown);
    if (reader.text("format") != journalFormat)
        refuseAt(reader.node(), {}, "storage.damaged-journal", "no journal", {});
    JournalEntry entry;
    entry.planPath = decodedPath(reader.text("plan"));
    entry.untitledNumber = reader.count("untitled");
    entry.departsFrom = contentHashFrom(reader.text("departs_from")).value_or(ContentHash{});
    entry.revision = static_cast<std::uint64_t>(secondsIn(reader.text("revision")));
    entry.writtenAt = Moment(std::chrono::seconds(secondsIn(reader.text("written"))));
    entry.owner = markIn(reader);
    if (contentHashFrom(reader.text("text")) != contentHash(planText))
        refuseAt(reader.node(), {}, "storage.damaged-journal", "the plan text is not whole", {});
    entry.planText = planText;
    return entry;
}

base::Outcome<JournalEntry> readJournal(const fs::path& file)
{
    const auto bytes = readFile(file, largestPlanBytes + largestHeader);
    if (!bytes)
        return damaged(file, bytes.refusal().what);
    const std::string_view all = bytes.value();
    const std::size_t line = all.find('\n');
    if (line == std::string_view::npos)
        return damaged(file, "it ends before the plan begins");
    try {
        return entryIn(all.substr(0, line), all.substr(line + 1));
    } catch (const Unreadable& unreadable) {
        return damaged(file, unreadable.refusal.what);
    }
}

// What the saved file holds against the journal; nothing when it already holds the journal's text.
std::optional<FileState> against(const JournalEntry& entry)
{
    if (entry.planPath.empty())
        return FileState::missing;
    if (compareWithDisk({entry.planPath, contentHash(entry.planText)}) == FileState::same)
        return std::nullopt;
    return compareWithDisk({entry.planPath, entry.departsFrom});
}

std::optional<base::Refusal> makeFolder(const fs::path& folder)
{
    std::error_code error;
    if (fs::create_directories(folder, error))
        ::chmod(folder.c_str(), 0700);
    if (error)
        return base::Refusal{"storage.cannot-write", folder.string(), error.message(),
                             "a state folder that may be written to"};
    return std::nullopt;
}

template <class Each> void forEachJournal(const fs::path& folder, Each each)
{
    std::error_code error;
    for (fs::directory_iterator at(folder, error), end; !error && at != end; at.increment(error))
        if (at->path().extension() == ending && at->path().filename().native().front() != '.')
            each(at->path());
}

} // namespace

Journal::Journal(fs::path stateFolder, fs::path planPath)
    : m_stateFolder(std::move(stateFolder)), m_planPath(canonicalPlan(planPath)),
      m_file(m_stateFolder / ("plan-" + keyOf(m_planPath) + ownEnding()))
{
}

Journal::Journal(fs::path stateFolder, int untitledNumber)
    : m_stateFolder(std::move(stateFolder)), m_untitledNumber(untitledNumber),
      m_file(m_stateFolder / (std::string(untitledStart) + std::to_string(untitledNumber) + ownEnding()))
{
}

std::optional<base::Refusal> Journal::write(std::string_view planText, std::uint64_t revision, ContentHash departsFrom,
                                            Moment now) const
{
    if (auto refusal = makeFolder(m_stateFolder))
        return refusal;
    JsonNode header = JsonNode::object();
    header.add("format", JsonNode::ofText(journalFormat));
    header.add("plan", JsonNode::ofText(encodedPath(m_planPath)));
    header.add("untitled", JsonNode::ofNumber(static_cast<std::uint64_t>(m_untitledNumber)));
    header.add("departs_from", JsonNode::ofText(text(departsFrom)));
    header.add("revision", JsonNode::ofText(std::to_string(revision)));
    header.add("written", JsonNode::ofText(std::to_string(now.time_since_epoch().count())));
    addMark(header, thisProcess());
    header.add("text", JsonNode::ofText(text(contentHash(planText))));
    return writeFile(m_file, compact(header) + "\n" + std::string(planText), Durability::quick);
}

void Journal::discard() const { discardJournal(m_file); }

Recovery recoverable(const fs::path& stateFolder)
{
    Recovery recovery;
    forEachJournal(stateFolder, [&recovery](const fs::path& file) {
        auto entry = readJournal(file);
        if (!entry) {
            recovery.unreadable.push_back(entry.refusal());
            return;
        }
        if (alive(entry->owner))
            return;
        if (const auto state = against(entry.value()))
            recovery.found.push_back({file, std::move(entry).value(), *state});
    });
    std::sort(recovery.found.begin(), recovery.found.end(), [](const Recoverable& a, const Recoverable& b) {
        return std::tie(a.entry.writtenAt, a.entry.revision) > std::tie(b.entry.writtenAt, b.entry.revision);
    });
    return recovery;
}

int freeUntitledNumber(const fs::path& stateFolder)
{
    std::vector<int> used;
    forEachJournal(stateFolder, [&used](const fs::path& file) {
        const std::string name = file.filename().string();
        if (name.rfind(untitledStart, 0) != 0)
            return;
        int number = 0;
        std::from_chars(name.data() + untitledStart.size(), name.data() + name.size(), number);
        used.push_back(number);
    });
    int number = 1;
    while (std::find(used.begin(), used.end(), number) != used.end())
        ++number;
    return number;
}

void discardJournal(const fs::path& journalFile)
{
    std::error_code error;
    fs::remove(journalFile, error);
}

} // namespace sumpwright::storage

// JournalWriter: writes the newest plan to the journal on a thread of its own, so that the window never waits for a
// disk. Latest wins; at most four writes a second. What is written is at most a fraction of a second old.
#pragma once

#include <condition_variable>
#include <functional>
#include <mutex>
#include <optional>
#include <thread>

#include "core/base/outcome.hpp"
#include "core/plan/plan.hpp"
#include "core/storage/journal.hpp"

namespace sumpwright::ui::document
{

class JournalWriter
{
public:
    // `written` comes on the writer's thread after each attempt, with the reason when it failed.
    using Written = std::function<void(std::optional<base::Refusal>)>;

    JournalWriter(storage::Journal journal, Written written);
    ~JournalWriter(); // writes what waits; the file stays

    void write(plan::Plan plan, std::uint64_t revision, storage::ContentHash departsFrom);
    void flush();   // returns when nothing waits
    void discard(); // drops what waits and removes the file

private:
    struct Entry {
        plan::Plan plan;
        std::uint64_t revision = 0;
        storage::ContentHash departsFrom;
    };
    void work();

    storage::Journal m_journal;
    Written m_written;
    std::mutex m_lock;
    std::condition_variable m_wake;
    std::condition_variable m_idle;
    std::optional<Entry> m_waiting;
    bool m_writing = false;
    bool m_hurry = false; // somebody waits: no pause between writes
    bool m_ending = false;
    std::thread m_thread; // last: starts when all else is there
};

} // namespace sumpwright::ui::document

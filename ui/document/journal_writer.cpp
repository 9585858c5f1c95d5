#include "ui/document/journal_writer.hpp"

#include <chrono>

#include "core/storage/plan_text.hpp"

namespace sumpwright::ui::document
{

namespace
{

constexpr std::chrono::milliseconds pause{250};

storage::Moment now() { return std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now()); }

} // namespace

JournalWriter::JournalWriter(storage::Journal journal, Written written)
    : m_journal(std::move(journal)), m_written(std::move(written)), m_thread([this] { work(); })
{
}

JournalWriter::~JournalWriter()
{
    {
        const std::lock_guard guard(m_lock);
        m_ending = true;
    }
    m_wake.notify_all();
    m_thread.join();
}

void JournalWriter::write(plan::Plan plan, std::uint64_t revision, storage::ContentHash departsFrom)
{
    {
        const std::lock_guard guard(m_lock);
        m_waiting = Entry{std::move(plan), revision, departsFrom};
    }
    m_wake.notify_all();
}

void JournalWriter::flush()
{
    std::unique_lock guard(m_lock);
    m_hurry = true;
    m_wake.notify_all();
    m_idle.wait(guard, [this] { return !m_waiting && !m_writing; });
    m_hurry = false;
}

void JournalWriter::discard()
{
    std::unique_lock guard(m_lock);
    m_waiting.reset();
    m_idle.wait(guard, [this] { return !m_writing; });
    m_journal.discard();
}

void JournalWriter::work()
{
    std::unique_lock guard(m_lock);
    while (true) {
        m_wake.wait(guard, [this] { return m_waiting || m_ending; });
        if (!m_waiting)
            return;
        const Entry entry = std::move(*m_waiting);
        m_waiting.reset();
        m_writing = true;
        guard.unlock();
        const auto failure = m_journal.write(storage::saveText(entry.plan), entry.revision, entry.departsFrom, now());
        m_written(failure);
        guard.lock();
        m_writing = false;
        m_idle.notify_all();
        m_wake.wait_for(guard, pause, [this] { return m_ending || m_hurry; });
    }
}

} // namespace sumpwright::ui::document

#include "core/engine/engine.hpp"

#include <atomic>
#include <condition_variable>
#include <exception>
#include <mutex>
#include <optional>
#include <thread>
#include <utility>

#include "core/base/stop.hpp"
#include "core/engine/pipeline.hpp"

namespace sumpwright::engine
{
namespace
{

std::shared_ptr<const assessment::Assessment> faultOf(const plan::Plan& plan,
                                                      const std::shared_ptr<const catalogue::Catalogue>& catalogue,
                                                      std::uint64_t revision, const char* what)
{
    auto result = std::make_shared<assessment::Assessment>();
    result->plan = plan;
    result->catalogue = catalogue;
    result->revision = revision;
    assessment::Finding fault;
    fault.id = "program.fault";
    fault.severity = assessment::Severity::error;
    fault.subject = what;
    fault.source = "common-practice";
    fault.mend = "report-fault";
    result->findings = std::make_shared<const assessment::Findings>(assessment::Findings{{fault}});
    return result;
}

} // namespace

class Engine::Worker
{
public:
    Worker(std::shared_ptr<const catalogue::Catalogue> catalogue, Publish publish)
        : m_catalogue(std::move(catalogue)), m_publish(std::move(publish)), m_thread([this] { work(); })
    {
    }
    ~Worker()
    {
        {
            const std::lock_guard lock(m_mutex);
            m_ending = true;
            m_slot.reset();
            m_newerWaits->store(true, std::memory_order_relaxed);
        }
        m_wake.notify_all();
        m_thread.join();
    }

    void submit(plan::Plan plan, std::uint64_t revision)
    {
        {
            const std::lock_guard lock(m_mutex);
            if (m_newest && revision < *m_newest)
                return;
            m_newest = revision;
            m_slot.emplace(Waiting{std::move(plan), revision});
            m_newerWaits->store(true, std::memory_order_relaxed);
        }
        m_wake.notify_one();
    }

    void waitUntilIdle()
    {
        std::unique_lock lock(m_mutex);
        m_idle.wait(lock, [this] { return m_ending || (!m_slot && !m_working); });
    }

private:
    struct Waiting {
        plan::Plan plan;
        std::uint64_t revision;
    };

    void work()
    {
        Pipeline pipeline(m_catalogue);
        for (;;) {
            std::unique_lock lock(m_mutex);
            m_working = false;
            if (!m_slot)
                m_idle.notify_all();
            m_wake.wait(lock, [this] { return m_ending || m_slot; });
            if (m_ending)
                return;
            const Waiting waiting = std::move(*m_slot);
            m_slot.reset();
            m_working = true;
            m_newerWaits->store(false, std::memory_order_relaxed);
            lock.unlock();
            publish(pipeline, waiting);
        }
    }

    // The quick lane has no checkpoint; the slow lane will take `m_newerWaits` as its stop token.
    void publish(Pipeline& pipeline, const Waiting& waiting)
    {
        std::shared_ptr<const assessment::Assessment> result;
        try {
            result = pipeline.assess(waiting.plan, waiting.revision);
        } catch (const std::exception& fault) {
            pipeline = Pipeline(m_catalogue);
            result = faultOf(waiting.plan, m_catalogue, waiting.revision, fault.what());
        }
        {
            const std::lock_guard lock(m_mutex);
            if (m_ending)
                return;
        }
        m_publish(std::move(result), waiting.revision);
    }

    std::shared_ptr<const catalogue::Catalogue> m_catalogue;
    Publish m_publish;
    std::mutex m_mutex;
    std::condition_variable m_wake;
    std::condition_variable m_idle;
    std::optional<Waiting> m_slot;
    std::optional<std::uint64_t> m_newest;
    bool m_working = false;
    bool m_ending = false;
    std::shared_ptr<std::atomic<bool>> m_newerWaits = std::make_shared<std::atomic<bool>>(false);
    std::thread m_thread; // last: starts when all else is there
};

Engine::Engine(std::shared_ptr<const catalogue::Catalogue> catalogue, Publish publish)
    : m_worker(std::make_unique<Worker>(std::move(catalogue), std::move(publish)))
{
}

Engine::~Engine() = default;

void Engine::submit(plan::Plan plan, std::uint64_t revision) { m_worker->submit(std::move(plan), revision); }

void Engine::waitUntilIdle() const { m_worker->waitUntilIdle(); }

std::shared_ptr<const assessment::Assessment>
assess(const plan::Plan& plan, std::shared_ptr<const catalogue::Catalogue> catalogue, std::uint64_t revision)
{
    return Pipeline(std::move(catalogue)).assess(plan, revision);
}

} // namespace sumpwright::engine

#include "ui/document/engine_bridge.hpp"

#include <mutex>

#include <QTimer>

#include "core/engine/engine.hpp"
#include "ui/document/document.hpp"

namespace sumpwright::ui::document
{

struct EngineBridge::Worker {
    using Result = std::shared_ptr<const assessment::Assessment>;

    Worker(EngineBridge& bridge, std::shared_ptr<const catalogue::Catalogue> catalogue)
        : pause(&bridge),
          engine(std::move(catalogue), [this, &bridge](Result result, std::uint64_t at) { put(bridge, result, at); })
    {
        pause.setSingleShot(true);
        pause.setTimerType(Qt::PreciseTimer);
        pause.setInterval(frame);
        connect(&pause, &QTimer::timeout, &bridge, &EngineBridge::deliver);
    }

    // On the engine's thread. One event is under way at a time, however many results come.
    void put(EngineBridge& bridge, Result result, std::uint64_t at)
    {
        const std::lock_guard guard(lock);
        newest = std::move(result);
        revision = at;
        if (!std::exchange(announced, true))
            QMetaObject::invokeMethod(
                &bridge,
                [this, &bridge] {
                    if (!pause.isActive())
                        bridge.deliver();
                },
                Qt::QueuedConnection);
    }

    Result take(std::uint64_t& at)
    {
        const std::lock_guard guard(lock);
        announced = false;
        at = revision;
        return std::exchange(newest, nullptr);
    }

    QTimer pause; // runs for one frame after a delivery
    std::mutex lock;
    Result newest;
    std::uint64_t revision = 0;
    bool announced = false;
    engine::Engine engine; // last: stops before what its callback uses goes
};

EngineBridge::EngineBridge(Document& document, std::shared_ptr<const catalogue::Catalogue> catalogue)
    : m_document(document), m_worker(std::make_unique<Worker>(*this, std::move(catalogue)))
{
}

EngineBridge::~EngineBridge() = default;

void EngineBridge::submit(const plan::Plan& plan, quint64 revision) { m_worker->engine.submit(plan, revision); }

void EngineBridge::deliver()
{
    std::uint64_t revision = 0;
    auto result = m_worker->take(revision);
    if (!result)
        return;
    m_worker->pause.start();
    m_document.receive(std::move(result), revision);
}

} // namespace sumpwright::ui::document

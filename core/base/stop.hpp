// StopToken: asked at checkpoints of long computations. checkpoint() throws Stopped when a newer plan waits.
#pragma once

#include <atomic>
#include <memory>

namespace sumpwright::base {

struct Stopped {};

class StopToken {
public:
    StopToken() = default; // never stops
    explicit StopToken(std::shared_ptr<const std::atomic<bool>> flag) : m_flag(std::move(flag)) {}

    bool asked() const { return m_flag && m_flag->load(std::memory_order_relaxed); }
    void checkpoint() const
    {
        if (asked())
            throw Stopped{};
    }

private:
    std::shared_ptr<const std::atomic<bool>> m_flag;
};

} // namespace sumpwright::base

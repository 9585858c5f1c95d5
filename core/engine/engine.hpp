// Engine: assesses the newest plan on one worker thread; the window never waits for it.
//
// One slot: a plan submitted while another is worked on replaces the one that waits (latest wins). The quick lane
// runs to its end once begun, so that a long drag never starves. The callback comes on the worker thread, each
// revision at most once and never an older one after a newer. A fault of the program met on the way is told as an
// assessment without results and one finding, "program.fault".
#pragma once

#include <cstdint>
#include <functional>
#include <memory>

#include "core/assessment/assessment.hpp"

namespace sumpwright::engine
{

using Publish = std::function<void(std::shared_ptr<const assessment::Assessment>, std::uint64_t revision)>;

class Engine
{
public:
    Engine(std::shared_ptr<const catalogue::Catalogue> catalogue, Publish publish);
    ~Engine(); // stops the worker; no callback comes after
    Engine(const Engine&) = delete;
    Engine& operator=(const Engine&) = delete;

    void submit(plan::Plan plan, std::uint64_t revision); // returns at once; an older revision than the last is dropped
    // Blocks until everything submitted is published or replaced; not from the callback.
    void waitUntilIdle() const;

private:
    class Worker;
    std::unique_ptr<Worker> m_worker;
};

// The complete assessment of one plan, from nothing, on the calling thread.
std::shared_ptr<const assessment::Assessment>
assess(const plan::Plan& plan, std::shared_ptr<const catalogue::Catalogue> catalogue, std::uint64_t revision = 0);

} // namespace sumpwright::engine

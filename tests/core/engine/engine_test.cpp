// One slot, the latest wins, nothing older after something newer, nothing after the end.
#include "core/engine/engine.hpp"

#include <gtest/gtest.h>

#include <atomic>
#include <chrono>
#include <condition_variable>
#include <mutex>
#include <thread>

#include "core/engine/pipeline.hpp"
#include "tests/support/sound_plan.hpp"

namespace
{

using namespace sumpwright;

plan::Plan planWithSumpLevel(double metres)
{
    test::SoundPlan plan;
    plan.drawn.changeVessel(plan.sump,
                            [metres](plan::Vessel& sump) { sump.runningLevel = units::elevationMetres(metres); });
    return plan.drawn.plan;
}

// Keeps what was published; can hold the engine's thread inside the callback.
class Listener
{
public:
    engine::Publish publish()
    {
        return [this](std::shared_ptr<const assessment::Assessment> result, std::uint64_t revision) {
            std::unique_lock lock(m_mutex);
            m_revisions.push_back(revision);
            m_last = std::move(result);
            m_changed.notify_all();
            m_changed.wait(lock, [this] { return !m_held; });
        };
    }
    void hold() { set(true); }
    void letGo() { set(false); }
    void waitFor(std::size_t count)
    {
        std::unique_lock lock(m_mutex);
        m_changed.wait(lock, [this, count] { return m_revisions.size() >= count; });
    }
    std::vector<std::uint64_t> revisions() const
    {
        const std::lock_guard lock(m_mutex);
        return m_revisions;
    }
    std::shared_ptr<const assessment::Assessment> last() const
    {
        const std::lock_guard lock(m_mutex);
        return m_last;
    }

private:
    void set(bool held)
    {
        const std::lock_guard lock(m_mutex);
        m_held = held;
        m_changed.notify_all();
    }

    mutable std::mutex m_mutex;
    std::condition_variable m_changed;
    std::vector<std::uint64_t> m_revisions;
    std::shared_ptr<const assessment::Assessment> m_last;
    bool m_held = false;
};

TEST(Engine, PublishesWhatAFreshAssessmentGives)
{
    Listener listener;
    engine::Engine engine(catalogue::Catalogue::builtIn(), listener.publish());
    engine.submit(planWithSumpLevel(0.35), 7);
    engine.waitUntilIdle();
    ASSERT_EQ(listener.revisions(), std::vector<std::uint64_t>{7});
    EXPECT_EQ(listener.last()->revision, 7U);
    EXPECT_TRUE(assessment::sameResults(*listener.last(),
                                        *engine::assess(planWithSumpLevel(0.35), catalogue::Catalogue::builtIn())));
}

TEST(Engine, SkipsPlansThatANewerOneReplacesWhileItWorks)
{
    Listener listener;
    listener.hold();
    engine::Engine engine(catalogue::Catalogue::builtIn(), listener.publish());
    engine.submit(planWithSumpLevel(0.35), 1);
    listener.waitFor(1); // the worker is inside the callback now
    for (std::uint64_t revision = 2; revision <= 20; ++revision)
        engine.submit(planWithSumpLevel(0.30 + 0.005 * static_cast<double>(revision)), revision);
    listener.letGo();
    engine.waitUntilIdle();
    EXPECT_EQ(listener.revisions(), (std::vector<std::uint64_t>{1, 20}));
    EXPECT_NEAR(units::inMetres(*listener.last()->plan.vessels.find(test::SoundPlan().sump)->runningLevel), 0.40,
                1e-12);
}

TEST(Engine, DropsAnOlderRevision)
{
    Listener listener;
    engine::Engine engine(catalogue::Catalogue::builtIn(), listener.publish());
    engine.submit(planWithSumpLevel(0.35), 10);
    engine.waitUntilIdle();
    engine.submit(planWithSumpLevel(0.40), 9);
    engine.waitUntilIdle();
    EXPECT_EQ(listener.revisions(), std::vector<std::uint64_t>{10});
}

TEST(Engine, IsSilentAfterItsEnd)
{
    std::atomic<int> calls = 0;
    for (int i = 0; i < 20; ++i) {
        int before = 0;
        {
            engine::Engine engine(catalogue::Catalogue::builtIn(), [&calls](auto, auto) { ++calls; });
            for (std::uint64_t revision = 1; revision <= 5; ++revision)
                engine.submit(planWithSumpLevel(0.35), revision);
        }
        before = calls;
        std::this_thread::yield();
        EXPECT_EQ(calls, before);
    }
}

TEST(Engine, NeverGoesBackUnderManySubmittingThreads)
{
    Listener listener;
    engine::Engine engine(catalogue::Catalogue::builtIn(), listener.publish());
    const plan::Plan plan = planWithSumpLevel(0.35);
    std::atomic<std::uint64_t> next = 1;
    std::vector<std::thread> threads;
    for (int i = 0; i < 4; ++i)
        threads.emplace_back([&] {
            for (int j = 0; j < 50; ++j)
                engine.submit(plan, next.fetch_add(1));
        });
    for (std::thread& thread : threads)
        thread.join();
    engine.waitUntilIdle();
    const auto revisions = listener.revisions();
    EXPECT_TRUE(std::is_sorted(revisions.begin(), revisions.end()));
    EXPECT_EQ(std::adjacent_find(revisions.begin(), revisions.end()), revisions.end());
    EXPECT_EQ(revisions.back(), 200U);
}

// A broken table breaks a promise inside the core; the window is told, and the next plan is assessed again.
TEST(Engine, TellsAFaultOfTheProgramAndGoesOn)
{
    catalogue::Tables tables;
    catalogue::Medium broken;
    broken.id = broken.name = "broken";
    broken.porosity = {0.4, 0.4, 0.4};
    broken.retained = {0.5, 0.5, 0.5}; // more than there is room for
    tables.media.push_back(broken);
    test::DrawnPlan drawn;
    const base::Id bed = drawn.vessel(plan::VesselKind::mediaBed, {0, 0, 0}, 1.0, 1.0, 0.4);
    const plan::Plan empty = drawn.plan;
    drawn.medium(bed, "broken", 0.3);
    Listener listener;
    engine::Engine engine(std::make_shared<const catalogue::Catalogue>(tables), listener.publish());
    engine.submit(drawn.plan, 1);
    engine.waitUntilIdle();
    ASSERT_EQ(listener.last()->findings->list.size(), 1U);
    EXPECT_EQ(listener.last()->findings->list[0].id, "program.fault");
    engine.submit(empty, 2);
    engine.waitUntilIdle();
    EXPECT_EQ(listener.last()->revision, 2U);
    EXPECT_EQ(listener.last()->water->vessels.size(), 1U);
}

TEST(Pipeline, MakesFindingsOnlyWhenSomethingTheyReadChanged)
{
    engine::Pipeline pipeline(catalogue::Catalogue::builtIn());
    test::SoundPlan plan;
    const auto first = pipeline.assess(plan.drawn.plan, 1);
    plan.drawn.plan.notes = plan.drawn.plan.notes.with(plan::Note{base::Id{999}, {}, "paint it", {}});
    const auto second = pipeline.assess(plan.drawn.plan, 2);
    EXPECT_EQ(pipeline.findingsRuns(), 1U);
    EXPECT_EQ(first->findings, second->findings);
    EXPECT_EQ(second->plan.notes.size(), 1U);
    plan.drawn.changeSite([](plan::Site& site) { site.clearances.aisle = units::metres(5.0); });
    const auto third = pipeline.assess(plan.drawn.plan, 3);
    EXPECT_EQ(pipeline.findingsRuns(), 2U);
    EXPECT_GT(third->findings->list.size(), second->findings->list.size());
}

} // namespace

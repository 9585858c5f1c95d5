// A child that saves without pause is killed at random moments: the file is always wholly the one or wholly the other.
#include <gtest/gtest.h>

#include <csignal>
#include <random>

#include <sys/wait.h>
#include <unistd.h>

#include "core/storage/file.hpp"
#include "core/storage/journal.hpp"
#include "core/storage/plan_text.hpp"
#include "tests/support/edited_plan.hpp"
#include "tests/support/scratch_folder.hpp"

using namespace sumpwright;
using namespace sumpwright::storage;

namespace
{

// Kills a child that runs `work` over and over after a random time; the child never ends by itself.
template <class Work> void killedWhile(std::mt19937& random, Work work)
{
    int ready[2];
    ASSERT_EQ(::pipe(ready), 0);
    const pid_t child = ::fork();
    if (child == 0) {
        for (bool first = true;; first = false) {
            work();
            if (first && ::write(ready[1], "r", 1) != 1)
                ::_exit(1);
        }
    }
    char byte = 0;
    ASSERT_EQ(::read(ready[0], &byte, 1), 1);
    ::usleep(static_cast<useconds_t>(random() % 5000));
    ::kill(child, SIGKILL);
    ::waitpid(child, nullptr, 0);
    ::close(ready[0]);
    ::close(ready[1]);
}

} // namespace

TEST(Killed, WhileSavingLeavesTheOldOrTheNewFileWhole)
{
    const test::ScratchFolder folder;
    const auto path = folder / "plan.sumpwright";
    test::SmallSystem system;
    const std::string before = saveText(system.plan);
    system.apply(plan::setSiteName(std::string(5000, 'n')));
    const std::string after = saveText(system.plan);
    ASSERT_FALSE(writeFile(path, before));
    std::mt19937 random(7);
    for (int round = 0; round < 40; ++round) {
        killedWhile(random, [&] {
            static bool turn = false;
            turn = !turn;
            writeFile(path, turn ? after : before, Durability::quick);
        });
        const auto now = readFile(path, largestPlanBytes);
        ASSERT_TRUE(now.ok());
        ASSERT_TRUE(now.value() == before || now.value() == after) << now.value().size() << " bytes";
    }
    ASSERT_FALSE(writeFile(path, before)); // and sweeps up what the killed ones left
    EXPECT_EQ(std::distance(std::filesystem::directory_iterator(folder.path()), std::filesystem::directory_iterator()),
              1);
}

TEST(Killed, WhileJournalingLeavesSomethingToRecover)
{
    const test::ScratchFolder folder;
    const test::SmallSystem system;
    const std::string text = saveText(system.plan);
    std::mt19937 random(11);
    for (int round = 0; round < 10; ++round) {
        const int number = freeUntitledNumber(folder.path());
        killedWhile(random, [&] {
            const Journal journal(folder.path(), number);
            static std::uint64_t revision = 0;
            journal.write(text, ++revision, {}, Moment(std::chrono::seconds(1000)));
        });
        const Recovery recovery = recoverable(folder.path());
        ASSERT_TRUE(recovery.unreadable.empty()) << base::oneLine(recovery.unreadable.front());
        ASSERT_EQ(recovery.found.size(), static_cast<std::size_t>(round + 1));
        const auto plan = loadText(recovery.found.front().entry.planText);
        ASSERT_TRUE(plan.ok());
        ASSERT_TRUE(plan->plan == system.plan);
    }
}

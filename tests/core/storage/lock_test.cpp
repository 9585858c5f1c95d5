#include <gtest/gtest.h>

#include <csignal>

#include <sys/wait.h>
#include <unistd.h>

#include "core/storage/file.hpp"
#include "core/storage/lock.hpp"
#include "tests/support/scratch_folder.hpp"

using namespace sumpwright;
using namespace sumpwright::storage;
namespace fs = std::filesystem;

namespace
{

std::unique_ptr<PlanLock> taken(PlanLock::Answer answer)
{
    auto* lock = std::get_if<std::unique_ptr<PlanLock>>(&answer);
    return lock ? std::move(*lock) : nullptr;
}

} // namespace

TEST(PlanLock, IsHeldByOneAndNamesIt)
{
    const test::ScratchFolder folder;
    auto first = taken(PlanLock::take(folder / "state", folder / "plan.sumpwright"));
    ASSERT_TRUE(first);
    const auto second = PlanLock::take(folder / "state", folder / "plan.sumpwright");
    const auto* held = std::get_if<PlanLock::HeldBy>(&second);
    ASSERT_TRUE(held);
    EXPECT_EQ(held->owner, thisProcess());
    EXPECT_TRUE(taken(PlanLock::take(folder / "state", folder / "other.sumpwright")));
    first.reset();
    EXPECT_TRUE(taken(PlanLock::take(folder / "state", folder / "plan.sumpwright")));
    EXPECT_TRUE(fs::is_empty(folder / "state"));
}

TEST(PlanLock, KnowsAPlanByEverySpellingOfItsPath)
{
    const test::ScratchFolder folder;
    ASSERT_FALSE(writeFile(folder / "plan.sumpwright", "x"));
    fs::create_symlink("plan.sumpwright", folder / "link.sumpwright");
    fs::create_directory(folder / "sub");
    const auto first = taken(PlanLock::take(folder / "state", folder / "plan.sumpwright"));
    for (const char* other : {"link.sumpwright", "./plan.sumpwright", "sub/../plan.sumpwright"})
        EXPECT_TRUE(std::holds_alternative<PlanLock::HeldBy>(PlanLock::take(folder / "state", folder / other)))
            << other;
}

TEST(PlanLock, OfAKilledOwnerIsTakenOver)
{
    const test::ScratchFolder folder;
    int ready[2];
    ASSERT_EQ(::pipe(ready), 0);
    const pid_t child = ::fork();
    if (child == 0) {
        const auto lock = PlanLock::take(folder / "state", folder / "plan.sumpwright");
        if (::write(ready[1], "r", 1) == 1)
            ::pause();
        ::_exit(1);
    }
    char byte = 0;
    ASSERT_EQ(::read(ready[0], &byte, 1), 1);
    const auto held = PlanLock::take(folder / "state", folder / "plan.sumpwright");
    ASSERT_TRUE(std::holds_alternative<PlanLock::HeldBy>(held));
    EXPECT_EQ(std::get<PlanLock::HeldBy>(held).owner.pid, child);
    ::kill(child, SIGKILL);
    ::waitpid(child, nullptr, 0);
    ::close(ready[0]);
    ::close(ready[1]);
    EXPECT_TRUE(taken(PlanLock::take(folder / "state", folder / "plan.sumpwright")));
}

TEST(PlanLock, SaysWhenItCannotLock)
{
    const test::ScratchFolder folder;
    ASSERT_FALSE(writeFile(folder / "file", "not a folder"));
    const auto answer = PlanLock::take(folder / "file", folder / "plan.sumpwright");
    ASSERT_TRUE(std::holds_alternative<base::Refusal>(answer));
    EXPECT_EQ(std::get<base::Refusal>(answer).id, "storage.cannot-lock");
}

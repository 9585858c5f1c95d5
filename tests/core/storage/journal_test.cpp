#include <gtest/gtest.h>

#include <fstream>

#include <sys/wait.h>
#include <unistd.h>

#include "core/storage/journal.hpp"
#include "tests/support/scratch_folder.hpp"

using namespace sumpwright;
using namespace sumpwright::storage;
namespace fs = std::filesystem;

namespace
{

Moment at(int seconds) { return Moment(std::chrono::seconds(seconds)); }

// Does something in a process that is gone afterwards, as after a crash.
template <class Work> void inDeadProcess(Work work)
{
    const pid_t child = ::fork();
    if (child == 0) {
        work();
        ::_exit(0);
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    ASSERT_EQ(status, 0);
}

} // namespace

TEST(Journal, OfALiveOwnerIsNotOffered)
{
    const test::ScratchFolder folder;
    const Journal journal(folder / "state", 1);
    ASSERT_FALSE(journal.write("text", 1, {}, at(5)));
    EXPECT_TRUE(recoverable(folder / "state").found.empty());
    EXPECT_TRUE(fs::exists(journal.file()));
    journal.discard();
    EXPECT_FALSE(fs::exists(journal.file()));
}

TEST(Journal, OfADeadOwnerIsOfferedWithAllItSays)
{
    const test::ScratchFolder folder;
    const fs::path plan = folder / "B\xC3\xA4"
                                   "der 100%.sumpwright";
    ASSERT_FALSE(writeFile(plan, "saved"));
    inDeadProcess([&] {
        const Journal journal(folder / "state", plan);
        journal.write("first", 1, contentHash("saved"), at(100));
        journal.write("edited", 2, contentHash("saved"), at(200));
    });
    const Recovery recovery = recoverable(folder / "state");
    ASSERT_EQ(recovery.found.size(), 1u);
    const Recoverable& found = recovery.found.front();
    EXPECT_EQ(found.entry.planPath, fs::canonical(plan));
    EXPECT_EQ(found.entry.planText, "edited");
    EXPECT_EQ(found.entry.revision, 2u);
    EXPECT_EQ(found.entry.writtenAt, at(200));
    EXPECT_EQ(found.entry.departsFrom, contentHash("saved"));
    EXPECT_EQ(found.savedFile, FileState::same);
    discardJournal(found.journalFile);
    EXPECT_TRUE(recoverable(folder / "state").found.empty());
}

TEST(Journal, GoesByContentNotByDate)
{
    const test::ScratchFolder folder;
    const fs::path plan = folder / "plan.sumpwright";
    ASSERT_FALSE(writeFile(plan, "saved"));
    inDeadProcess([&] { Journal(folder / "state", plan).write("edited", 9, contentHash("saved"), at(1)); });
    ASSERT_EQ(recoverable(folder / "state").found.size(), 1u);
    ASSERT_FALSE(writeFile(plan, "edited")); // the file already holds the work
    EXPECT_TRUE(recoverable(folder / "state").found.empty());
    ASSERT_FALSE(writeFile(plan, "changed by another"));
    ASSERT_EQ(recoverable(folder / "state").found.size(), 1u);
    EXPECT_EQ(recoverable(folder / "state").found.front().savedFile, FileState::changed);
    fs::remove(plan);
    EXPECT_EQ(recoverable(folder / "state").found.front().savedFile, FileState::missing);
}

TEST(Journal, OfALaterProcessLeavesTheOlderOneBe)
{
    const test::ScratchFolder folder;
    const fs::path plan = folder / "plan.sumpwright";
    inDeadProcess([&] { Journal(folder / "state", plan).write("older", 1, {}, at(1)); });
    inDeadProcess([&] { Journal(folder / "state", plan).write("newer", 1, {}, at(2)); });
    const Recovery recovery = recoverable(folder / "state");
    ASSERT_EQ(recovery.found.size(), 2u);
    EXPECT_EQ(recovery.found[0].entry.planText, "newer");
    EXPECT_EQ(recovery.found[1].entry.planText, "older");
}

TEST(Journal, CountsUntitledPlans)
{
    const test::ScratchFolder folder;
    EXPECT_EQ(freeUntitledNumber(folder / "state"), 1);
    ASSERT_FALSE(Journal(folder / "state", 1).write("a", 1, {}, at(1)));
    ASSERT_FALSE(Journal(folder / "state", 3).write("b", 1, {}, at(1)));
    EXPECT_EQ(freeUntitledNumber(folder / "state"), 2);
}

TEST(Journal, DamagedIsReportedWithItsFile)
{
    const test::ScratchFolder folder;
    inDeadProcess([&] { Journal(folder.path(), 1).write("the whole plan", 1, {}, at(1)); });
    ASSERT_EQ(recoverable(folder.path()).found.size(), 1u);
    const fs::path whole = recoverable(folder.path()).found.front().journalFile;
    const std::string bytes = readFile(whole, 100'000).value();
    int made = 0;
    for (const std::string& broken :
         {std::string(), std::string("{"), std::string("{}\n"), bytes.substr(0, bytes.size() - 3),
          bytes.substr(0, bytes.find('\n')), std::string(bytes).replace(bytes.size() - 5, 1, "X"),
          std::string("\xff\xfe\n"), std::string(1000, '['), std::string("{\"format\":\"other\"}\nx")})
        std::ofstream(folder / ("broken" + std::to_string(++made) + ".journal")) << broken;
    const Recovery recovery = recoverable(folder.path());
    EXPECT_EQ(recovery.found.size(), 1u);
    ASSERT_EQ(recovery.unreadable.size(), 9u);
    for (const base::Refusal& refusal : recovery.unreadable) {
        EXPECT_EQ(refusal.id, "storage.damaged-journal");
        EXPECT_NE(refusal.place.find("broken"), std::string::npos);
    }
}

TEST(Journal, SaysWhenItCannotBeWritten)
{
    const test::ScratchFolder folder;
    std::ofstream(folder / "file") << "not a folder";
    const auto refusal = Journal(folder / "file", 1).write("x", 1, {}, at(1));
    ASSERT_TRUE(refusal);
    EXPECT_EQ(refusal->id, "storage.cannot-write");
}

TEST(Journal, IsForTheOwnersEyesOnly)
{
    const test::ScratchFolder folder;
    ASSERT_FALSE(Journal(folder / "state/journal", 1).write("x", 1, {}, at(1)));
    EXPECT_EQ(static_cast<unsigned>(fs::status(folder / "state/journal").permissions()), 0700u);
}

TEST(Process, TellsTheLivingFromTheDead)
{
    ProcessMark mark = thisProcess();
    EXPECT_TRUE(alive(mark));
    EXPECT_GT(mark.start, 0u);
    EXPECT_FALSE(mark.user.empty());
    ProcessMark reused = mark;
    reused.start += 1; // the same number given to another process
    EXPECT_FALSE(alive(reused));
    ProcessMark earlierBoot = mark;
    earlierBoot.boot = "another boot";
    EXPECT_FALSE(alive(earlierBoot));
    ProcessMark elsewhere = mark;
    elsewhere.host = "another-host";
    elsewhere.pid = 1;
    EXPECT_TRUE(alive(elsewhere)); // cannot be asked
}

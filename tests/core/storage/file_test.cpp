#include <gtest/gtest.h>

#include <csignal>
#include <fstream>

#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include "core/storage/file.hpp"
#include "tests/support/scratch_folder.hpp"

using namespace sumpwright;
using namespace sumpwright::storage;
namespace fs = std::filesystem;

namespace
{

std::string contentOf(const fs::path& path)
{
    const auto bytes = readFile(path, 100'000'000);
    return bytes.ok() ? bytes.value() : "unreadable: " + base::oneLine(bytes.refusal());
}

std::size_t filesIn(const fs::path& folder)
{
    return static_cast<std::size_t>(std::distance(fs::directory_iterator(folder), fs::directory_iterator()));
}

} // namespace

// Test vectors of the FNV authors' page (Fowler, Noll, Vo): "" and "a" and "foobar" in FNV-1a 64 bit; from memory.
TEST(ContentHash, IsFnv1aOf64Bits)
{
    EXPECT_EQ(contentHash("").hash, 0xcbf29ce484222325ULL);
    EXPECT_EQ(contentHash("a").hash, 0xaf63dc4c8601ec8cULL);
    EXPECT_EQ(contentHash("foobar").hash, 0x85944171f73967e8ULL);
}

TEST(ContentHash, IsReadBackFromItsText)
{
    const ContentHash hash = contentHash("foobar");
    EXPECT_EQ(text(hash), "85944171f73967e8-6");
    EXPECT_EQ(contentHashFrom(text(hash)), hash);
    for (const char* bad : {"", "85944171f73967e8", "85944171f73967e8-", "8594417zf73967e8-6", "85944171f73967e8-6x"})
        EXPECT_FALSE(contentHashFrom(bad)) << bad;
}

TEST(WriteFile, MakesAndReplacesWholeFilesWithoutLitter)
{
    const test::ScratchFolder folder;
    const fs::path path = folder / "plan.sumpwright";
    EXPECT_FALSE(writeFile(path, "first"));
    EXPECT_FALSE(writeFile(path, "second"));
    EXPECT_EQ(contentOf(path), "second");
    EXPECT_EQ(filesIn(folder.path()), 1u);
}

TEST(WriteFile, KeepsPermissionsAndFollowsLinks)
{
    const test::ScratchFolder folder;
    const fs::path path = folder / "plan.sumpwright";
    const fs::path link = folder / "link";
    ASSERT_FALSE(writeFile(path, "first"));
    ::chmod(path.c_str(), 0640);
    fs::create_symlink("plan.sumpwright", link);
    ASSERT_FALSE(writeFile(link, "second"));
    EXPECT_TRUE(fs::is_symlink(link));
    EXPECT_EQ(contentOf(path), "second");
    EXPECT_EQ(static_cast<unsigned>(fs::status(path).permissions()), 0640u);
}

TEST(WriteFile, SaysWhyItCannotAndLeavesNothing)
{
    const test::ScratchFolder folder;
    const auto noFolder = writeFile(folder / "missing/plan.sumpwright", "x");
    ASSERT_TRUE(noFolder);
    EXPECT_EQ(noFolder->id, "storage.cannot-write");
    EXPECT_NE(noFolder->place.find("missing"), std::string::npos);
    fs::create_directory(folder / "folder");
    EXPECT_EQ(writeFile(folder / "folder", "x")->id, "storage.cannot-write");
    EXPECT_EQ(filesIn(folder.path()), 1u);
}

TEST(WriteFile, KeepsTheOldFileWhenTheDiskIsFull)
{
    const test::ScratchFolder folder;
    const fs::path path = folder / "plan.sumpwright";
    ASSERT_FALSE(writeFile(path, "old"));
    const pid_t child = ::fork();
    if (child == 0) { // a limit on file size stands for a full disk; it holds for the child alone
        const rlimit small{1000, 1000};
        ::setrlimit(RLIMIT_FSIZE, &small);
        const auto refusal = writeFile(path, std::string(5000, 'n'));
        ::_exit(refusal && refusal->id == "storage.cannot-write" ? 0 : 1);
    }
    int status = -1;
    ::waitpid(child, &status, 0);
    EXPECT_TRUE(WIFEXITED(status));
    EXPECT_EQ(WEXITSTATUS(status), 0);
    EXPECT_EQ(contentOf(path), "old");
    EXPECT_EQ(filesIn(folder.path()), 1u);
}

TEST(WriteFile, SweepsUpAfterAKilledWriter)
{
    const test::ScratchFolder folder;
    const fs::path path = folder / "plan.sumpwright";
    char host[256] = {};
    ::gethostname(host, sizeof host - 1);
    const std::string prefix = ".plan.sumpwright.writing-" + std::string(host) + "-";
    const pid_t gone = ::fork();
    if (gone == 0)
        ::_exit(0);
    ::waitpid(gone, nullptr, 0);
    std::ofstream(folder / (prefix + std::to_string(gone) + "-1")) << "half";
    std::ofstream(folder / (prefix + std::to_string(::getppid()) + "-1")) << "another's, alive";
    std::ofstream(folder / ".plan.sumpwright.writing-elsewhere-1-1") << "another host's";
    ASSERT_FALSE(writeFile(path, "whole"));
    EXPECT_EQ(filesIn(folder.path()), 3u);
    EXPECT_FALSE(fs::exists(folder / (prefix + std::to_string(gone) + "-1")));
}

TEST(ReadFile, RefusesFoldersPipesMissingAndLargeFiles)
{
    const test::ScratchFolder folder;
    EXPECT_EQ(readFile(folder / "nothing", 10).refusal().id, "storage.cannot-read");
    EXPECT_EQ(readFile(folder.path(), 10).refusal().id, "storage.cannot-read");
    ASSERT_EQ(::mkfifo((folder / "pipe").c_str(), 0600), 0);
    EXPECT_EQ(readFile(folder / "pipe", 10).refusal().id, "storage.cannot-read");
    ASSERT_FALSE(writeFile(folder / "large", std::string(11, 'x')));
    EXPECT_EQ(readFile(folder / "large", 10).refusal().id, "storage.too-large");
    EXPECT_TRUE(readFile(folder / "large", 11).ok());
}

TEST(FileStamp, TellsSameChangedAndMissingByContent)
{
    const test::ScratchFolder folder;
    const fs::path path = folder / "plan.sumpwright";
    const FileStamp stamp{path, contentHash("same")};
    EXPECT_EQ(compareWithDisk(stamp), FileState::missing);
    ASSERT_FALSE(writeFile(path, "same"));
    EXPECT_EQ(compareWithDisk(stamp), FileState::same);
    ASSERT_FALSE(writeFile(path, "same")); // a newer date alone is no change
    EXPECT_EQ(compareWithDisk(stamp), FileState::same);
    ASSERT_FALSE(writeFile(path, "else"));
    EXPECT_EQ(compareWithDisk(stamp), FileState::changed);
    ASSERT_FALSE(writeFile(path, "same and more"));
    EXPECT_EQ(compareWithDisk(stamp), FileState::changed);
}

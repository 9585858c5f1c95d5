#include "core/storage/lock.hpp"

#include <cerrno>
#include <cstring>

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include "core/storage/descriptor.hpp"
#include "core/storage/file.hpp"
#include "core/storage/mark_text.hpp"

namespace sumpwright::storage
{

namespace
{

namespace fs = std::filesystem;

constexpr std::size_t largestLock = 20'000;

ProcessMark holderOf(const fs::path& file)
{
    const auto bytes = readFile(file, largestLock);
    const auto root = bytes ? readJson(bytes.value(), {largestLock, 2, 100}) : bytes.refusal();
    if (!root)
        return {};
    try {
        std::vector<std::string> unknown;
        ObjectReader reader(root.value(), {}, unknown);
        return markIn(reader);
    } catch (const Unreadable&) {
        return {}; // just being written
    }
}

// Whether the name still stands for the open file: the holder before may have taken it away meanwhile.
bool stillNamed(const fs::path& file, int descriptor)
{
    struct stat named {
    };
    struct stat opened {
    };
    return ::stat(file.c_str(), &named) == 0 && ::fstat(descriptor, &opened) == 0 && named.st_ino == opened.st_ino &&
           named.st_dev == opened.st_dev;
}

void writeHolder(int descriptor, const fs::path& plan)
{
    JsonNode holder = JsonNode::object();
    addMark(holder, thisProcess());
    holder.add("plan", JsonNode::ofText(encodedPath(plan)));
    const std::string bytes = compact(holder) + "\n";
    // Only told to people; the lock itself is the system's. A short write leaves the holder unnamed.
    if (::ftruncate(descriptor, 0) == 0)
        static_cast<void>(!::pwrite(descriptor, bytes.data(), bytes.size(), 0));
}

} // namespace

PlanLock::~PlanLock()
{
    ::unlink(m_file.c_str());
    ::close(m_descriptor);
}

PlanLock::Answer PlanLock::take(const fs::path& stateFolder, const fs::path& planPath)
{
    std::error_code error;
    if (fs::create_directories(stateFolder, error))
        ::chmod(stateFolder.c_str(), 0700);
    const fs::path plan = canonicalPlan(planPath);
    const fs::path file = stateFolder / ("plan-" + keyOf(plan) + ".lock");
    while (true) {
        Descriptor open(::open(file.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0600));
        if (!open.good())
            return base::Refusal{"storage.cannot-lock", file.string(), std::strerror(errno),
                                 "a state folder that may be written to"};
        if (::flock(open.number(), LOCK_EX | LOCK_NB) != 0) {
            if (errno == EWOULDBLOCK)
                return HeldBy{holderOf(file)};
            return base::Refusal{"storage.cannot-lock", file.string(), std::strerror(errno),
                                 "a state folder on a disk that can lock files"};
        }
        if (!stillNamed(file, open.number()))
            continue;
        writeHolder(open.number(), plan);
        return std::unique_ptr<PlanLock>(new PlanLock(file, open.release()));
    }
}

} // namespace sumpwright::storage

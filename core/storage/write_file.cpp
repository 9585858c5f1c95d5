// Atomic writing: a new file beside the old one, then one rename.
#include <atomic>
#include <cerrno>
#include <charconv>
#include <csignal>
#include <cstring>
#include <ctime>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include "core/storage/descriptor.hpp"
#include "core/storage/file.hpp"
#include "core/storage/process.hpp"

namespace sumpwright::storage
{

namespace
{

namespace fs = std::filesystem;

base::Refusal cannotWrite(const fs::path& path, int error)
{
    return {"storage.cannot-write", path.string(), std::strerror(error),
            "a folder that may be written to and has room; the file there is as it was"};
}

// A write beyond the size limit of the process raises a signal that would end the program. Held back here, the write
// fails with an error instead.
class HeldSizeSignal
{
public:
    HeldSizeSignal()
    {
        sigemptyset(&m_size);
        sigaddset(&m_size, SIGXFSZ);
        pthread_sigmask(SIG_BLOCK, &m_size, &m_before);
    }
    ~HeldSizeSignal()
    {
        const timespec now{};
        if (sigismember(&m_before, SIGXFSZ) == 0)
            while (sigtimedwait(&m_size, nullptr, &now) > 0) {
            }
        pthread_sigmask(SIG_SETMASK, &m_before, nullptr);
    }
    HeldSizeSignal(const HeldSizeSignal&) = delete;
    HeldSizeSignal& operator=(const HeldSizeSignal&) = delete;

private:
    sigset_t m_size{};
    sigset_t m_before{};
};

bool writeAll(int file, std::string_view bytes)
{
    while (!bytes.empty()) {
        const ssize_t count = ::write(file, bytes.data(), bytes.size());
        if (count < 0 && errno == EINTR)
            continue;
        if (count < 0)
            return false;
        bytes.remove_prefix(static_cast<std::size_t>(count));
    }
    return true;
}

// ".plan.sumpwright.writing-HOST-": what names of half-written files start with.
std::string prefixFor(const fs::path& target)
{
    return "." + target.filename().string() + ".writing-" + thisProcess().host + "-";
}

// Takes away half-written files of this target whose writer is gone.
void sweep(const fs::path& target, const std::string& prefix)
{
    std::error_code error;
    for (fs::directory_iterator at(target.parent_path(), error), end; !error && at != end; at.increment(error)) {
        const std::string name = at->path().filename().string();
        if (name.rfind(prefix, 0) != 0)
            continue;
        long pid = 0;
        const auto read = std::from_chars(name.data() + prefix.size(), name.data() + name.size(), pid);
        if (read.ec == std::errc{} && pid > 0 && ::kill(static_cast<pid_t>(pid), 0) != 0 && errno == ESRCH)
            ::unlink(at->path().c_str());
    }
}

class NewFile
{
public:
    NewFile(const fs::path& target, const std::string& prefix)
        : m_path(target.parent_path() / (prefix + std::to_string(::getpid()) + "-" + std::to_string(++s_count))),
          m_file(::open(m_path.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666))
    {
    }
    ~NewFile()
    {
        if (!m_inPlace && m_made)
            ::unlink(m_path.c_str());
    }
    NewFile(const NewFile&) = delete;
    NewFile& operator=(const NewFile&) = delete;

    bool made() const { return m_made; }
    // Mode and group of the file it replaces, as far as the system lets us.
    bool takeAfter(const struct stat& old)
    {
        if (old.st_gid != ::getegid() && ::fchown(m_file.number(), static_cast<uid_t>(-1), old.st_gid) != 0)
            return ::fchmod(m_file.number(), old.st_mode & 0707) == 0; // not for another group than before
        return ::fchmod(m_file.number(), old.st_mode & 07777) == 0;
    }
    bool fill(std::string_view bytes, Durability durability)
    {
        return writeAll(m_file.number(), bytes) && (durability == Durability::quick || ::fsync(m_file.number()) == 0) &&
               m_file.close();
    }
    bool moveTo(const fs::path& target)
    {
        m_inPlace = ::rename(m_path.c_str(), target.c_str()) == 0;
        return m_inPlace;
    }

private:
    static inline std::atomic<unsigned> s_count{0};
    fs::path m_path;
    Descriptor m_file;
    bool m_made = m_file.good();
    bool m_inPlace = false;
};

void syncFolder(const fs::path& folder)
{
    const Descriptor open(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    if (open.good())
        ::fsync(open.number());
}

} // namespace

std::optional<base::Refusal> writeFile(const fs::path& path, std::string_view bytes, Durability durability)
{
    std::error_code error;
    const fs::path target = fs::weakly_canonical(fs::absolute(path, error), error);
    if (error || !target.has_filename())
        return cannotWrite(path, error ? error.value() : EISDIR);
    struct stat old {
    };
    const bool replaces = ::stat(target.c_str(), &old) == 0;
    if (replaces && !S_ISREG(old.st_mode))
        return cannotWrite(path, S_ISDIR(old.st_mode) ? EISDIR : EINVAL);
    if (replaces && ::access(target.c_str(), W_OK) != 0)
        return base::Refusal{"storage.read-only", path.string(), "the file may not be written to",
                             "another name, or the permission to write"};
    const HeldSizeSignal held;
    const std::string prefix = prefixFor(target);
    sweep(target, prefix);
    NewFile made(target, prefix);
    if (!made.made())
        return cannotWrite(path, errno);
    if ((replaces && !made.takeAfter(old)) || !made.fill(bytes, durability) || !made.moveTo(target))
        return cannotWrite(path, errno);
    if (durability == Durability::synced)
        syncFolder(target.parent_path());
    return std::nullopt;
}

} // namespace sumpwright::storage

#include "core/storage/process.hpp"

#include <array>
#include <cerrno>
#include <csignal>
#include <fstream>
#include <sstream>

#include <pwd.h>
#include <unistd.h>

namespace sumpwright::storage
{

namespace
{

struct ProcessLine {
    char state = '?';
    std::uint64_t start = 0;
};

// State and start time out of /proc/PID/stat; nothing when there is no such process.
bool readProcess(std::int64_t pid, ProcessLine& line)
{
    std::ifstream file("/proc/" + std::to_string(pid) + "/stat");
    std::string all;
    if (!std::getline(file, all))
        return false;
    const auto afterName = all.rfind(')'); // the name may hold blanks and brackets
    if (afterName == std::string::npos)
        return false;
    std::istringstream fields(all.substr(afterName + 1));
    fields >> line.state;
    std::string skipped;
    for (int field = 4; field < 22; ++field)
        fields >> skipped;
    return static_cast<bool>(fields >> line.start);
}

std::string bootId()
{
    std::ifstream file("/proc/sys/kernel/random/boot_id");
    std::string id;
    std::getline(file, id);
    return id;
}

std::string hostName()
{
    std::array<char, 256> name{};
    return ::gethostname(name.data(), name.size() - 1) == 0 ? std::string(name.data()) : std::string();
}

std::string userName()
{
    std::array<char, 4096> space{};
    passwd entry{};
    passwd* found = nullptr;
    if (::getpwuid_r(::geteuid(), &entry, space.data(), space.size(), &found) == 0 && found)
        return found->pw_name;
    return "user " + std::to_string(::geteuid());
}

} // namespace

ProcessMark thisProcess()
{
    ProcessMark mark;
    mark.pid = ::getpid();
    ProcessLine line;
    if (readProcess(mark.pid, line))
        mark.start = line.start;
    mark.boot = bootId();
    mark.host = hostName();
    mark.user = userName();
    return mark;
}

bool alive(const ProcessMark& mark)
{
    if (mark.host != hostName())
        return true;
    if (mark.pid <= 0 || mark.boot != bootId())
        return false;
    ProcessLine line;
    if (readProcess(mark.pid, line))
        return line.start == mark.start && line.state != 'Z' && line.state != 'X';
    return mark.start == 0 && (::kill(static_cast<pid_t>(mark.pid), 0) == 0 || errno == EPERM);
}

} // namespace sumpwright::storage

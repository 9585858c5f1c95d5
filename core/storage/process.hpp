// ProcessMark: tells a live owner of a file from a dead one, also after the process number was given out again.
#pragma once

#include <cstdint>
#include <string>

namespace sumpwright::storage
{

struct ProcessMark {
    std::int64_t pid = 0;
    std::uint64_t start = 0; // start time in clock ticks since boot
    std::string boot;        // id of the boot the ticks count from; empty where the system does not tell
    std::string host;
    std::string user;

    friend bool operator==(const ProcessMark&, const ProcessMark&) = default;
};
ProcessMark thisProcess();
// Whether it runs now. A mark from another host counts as alive: it cannot be asked.
bool alive(const ProcessMark& mark);

} // namespace sumpwright::storage

// Running the program as a child and keeping what it wrote: runProgram({"work", "--list"}).
#pragma once

#include <array>
#include <cstdlib>
#include <string>
#include <vector>

#include <fcntl.h>
#include <poll.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include "core/base/ensure.hpp"

namespace sumpwright::tests
{

struct ChildResult {
    int exitCode = -1; // -1: ended by a signal
    std::string out;
    std::string errors;
};

// The environment of the test; the program is never looked for on the path.
inline ChildResult runProgram(const std::vector<std::string>& arguments,
                              const std::string& program = SUMPWRIGHT_PROGRAM)
{
    std::vector<char*> words = {const_cast<char*>(program.c_str())};
    for (const std::string& argument : arguments)
        words.push_back(const_cast<char*>(argument.c_str()));
    words.push_back(nullptr);

    std::array<std::array<int, 2>, 2> pipes{};
    for (auto& ends : pipes)
        base::ensure(pipe2(ends.data(), O_CLOEXEC) == 0, "a pipe can be opened");
    posix_spawn_file_actions_t actions;
    posix_spawn_file_actions_init(&actions);
    posix_spawn_file_actions_addopen(&actions, STDIN_FILENO, "/dev/null", O_RDONLY, 0);
    posix_spawn_file_actions_adddup2(&actions, pipes[0][1], STDOUT_FILENO);
    posix_spawn_file_actions_adddup2(&actions, pipes[1][1], STDERR_FILENO);
    pid_t child = 0;
    const int failed = posix_spawn(&child, program.c_str(), &actions, nullptr, words.data(), environ);
    posix_spawn_file_actions_destroy(&actions);
    for (auto& ends : pipes)
        close(ends[1]);
    base::ensure(failed == 0, "the program can be started");

    ChildResult result;
    std::array<std::string*, 2> texts = {&result.out, &result.errors};
    std::array<pollfd, 2> waiting = {pollfd{pipes[0][0], POLLIN, 0}, pollfd{pipes[1][0], POLLIN, 0}};
    for (int open = 2; open > 0;) {
        poll(waiting.data(), waiting.size(), -1);
        for (std::size_t i = 0; i < waiting.size(); ++i) {
            if (waiting[i].fd < 0 || waiting[i].revents == 0)
                continue;
            std::array<char, 4096> buffer{};
            const ssize_t count = read(waiting[i].fd, buffer.data(), buffer.size());
            if (count > 0) {
                texts[i]->append(buffer.data(), static_cast<std::size_t>(count));
            } else {
                close(waiting[i].fd);
                waiting[i].fd = -1;
                --open;
            }
        }
    }
    int status = 0;
    waitpid(child, &status, 0);
    result.exitCode = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    return result;
}

} // namespace sumpwright::tests

// Spread: the times of single repetitions on the CPU clock of this thread, which another program's load hardly moves:
// median and percentiles beside the mean of the benchmark. Milliseconds.
#pragma once

#include <ctime>

#include <algorithm>
#include <string>
#include <vector>

#include <benchmark/benchmark.h>

namespace sumpwright::performance
{

inline double threadMilliseconds()
{
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) * 1e3 + static_cast<double>(now.tv_nsec) / 1e6;
}

class Spread
{
public:
    template <class Work> void time(Work&& work)
    {
        const double start = threadMilliseconds();
        work();
        add(threadMilliseconds() - start);
    }
    void add(double milliseconds) { m_milliseconds.push_back(milliseconds); }
    void tell(benchmark::State& state, const std::string& name = {})
    {
        if (m_milliseconds.empty())
            return;
        std::sort(m_milliseconds.begin(), m_milliseconds.end());
        state.counters[name + "p50_ms"] = at(0.50);
        state.counters[name + "p95_ms"] = at(0.95);
        state.counters[name + "p99_ms"] = at(0.99);
    }

private:
    double at(double share) const
    {
        return m_milliseconds[static_cast<std::size_t>(share * static_cast<double>(m_milliseconds.size() - 1))];
    }

    std::vector<double> m_milliseconds;
};

} // namespace sumpwright::performance

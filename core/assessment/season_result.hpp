// Duty as a band: what each pump and each pressure run does at the two ends of the year - fouled pipes with the coldest
// water, and new pipes with the warmest - in the state of least flow. All are estimates: how rough pipes get is one.
// Flow of a run positive from `from` to `to`. Sources: as of the duty point; roughness by state, key
// roughness-in-service.
#pragma once

#include <algorithm>
#include <array>
#include <cstddef>
#include <vector>

#include "core/assessment/stage.hpp"
#include "core/units/measures.hpp"

namespace sumpwright::assessment
{

enum class YearEnd { fouledCold, newWarm };
inline constexpr std::array bothYearEnds{YearEnd::fouledCold, YearEnd::newWarm};

template <class T> struct PerYearEnd {
    std::array<T, 2> values{};
    const T& operator[](YearEnd end) const { return values[static_cast<std::size_t>(end)]; }
    T& operator[](YearEnd end) { return values[static_cast<std::size_t>(end)]; }
    friend bool operator==(const PerYearEnd&, const PerYearEnd&) = default;
};

struct YearDuty {
    units::Flow flow;
    units::Head head;
    friend bool operator==(const YearDuty&, const YearDuty&) = default;
};

struct PumpSeason {
    base::Id id;
    PerYearEnd<Stage<YearDuty>> duty;
    friend bool operator==(const PumpSeason&, const PumpSeason&) = default;
};

struct RunSeason { // of pressure runs
    base::Id id;
    PerYearEnd<units::Length> roughness;
    PerYearEnd<Stage<units::Flow>> flow;
    friend bool operator==(const RunSeason&, const RunSeason&) = default;
};

struct SeasonResult {
    PerYearEnd<units::Temperature> water;
    std::vector<PumpSeason> pumps; // by id, as the runs
    std::vector<RunSeason> runs;

    friend bool operator==(const SeasonResult&, const SeasonResult&) = default;
};

// The smaller and the greater of two flows that a season has, whatever end of the year they belong to: where a fouled
// main starves one branch another may get more.
struct FlowSpan {
    units::Flow least;
    units::Flow most;
};
inline FlowSpan spanOf(units::Flow a, units::Flow b) { return {std::min(a, b), std::max(a, b)}; }

} // namespace sumpwright::assessment

// The states of the water that are always told side by side, and the look-up of results by element.
//
// runningLeast: pump running, every bed at its flood level; the sump at its lowest. The drawing shows this one.
// runningMost:  pump running, every bed at its drain level; the sump at the level the person entered.
// pumpStopped:  the pump stopped at the worst moment and everything that can come down has come down.
// toRim:        every vessel brim full; no water is conserved here, it is a load case.
#pragma once

#include <algorithm>
#include <array>
#include <cstddef>
#include <vector>

#include "core/base/id.hpp"

namespace sumpwright::assessment
{

enum class WaterState { runningLeast, runningMost, pumpStopped, toRim };
inline constexpr std::array allWaterStates{WaterState::runningLeast, WaterState::runningMost, WaterState::pumpStopped,
                                           WaterState::toRim};

enum class RunningState { least, most };
inline constexpr std::array allRunningStates{RunningState::least, RunningState::most};

constexpr std::size_t indexOf(WaterState state) { return static_cast<std::size_t>(state); }
constexpr std::size_t indexOf(RunningState state) { return static_cast<std::size_t>(state); }

template <class T> struct PerWaterState {
    std::array<T, 4> values{};
    const T& operator[](WaterState state) const { return values[indexOf(state)]; }
    T& operator[](WaterState state) { return values[indexOf(state)]; }
    friend bool operator==(const PerWaterState&, const PerWaterState&) = default;
};

template <class T> struct PerRunningState {
    std::array<T, 2> values{};
    const T& operator[](RunningState state) const { return values[indexOf(state)]; }
    T& operator[](RunningState state) { return values[indexOf(state)]; }
    friend bool operator==(const PerRunningState&, const PerRunningState&) = default;
};

// Results by element are vectors sorted by `id`; null when the element has none.
template <class Result> const Result* find(const std::vector<Result>& results, base::Id id)
{
    const auto at =
        std::lower_bound(results.begin(), results.end(), id, [](const Result& r, base::Id key) { return r.id < key; });
    return at != results.end() && at->id == id ? &*at : nullptr;
}

} // namespace sumpwright::assessment

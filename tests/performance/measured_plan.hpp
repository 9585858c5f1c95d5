// MeasuredPlan: the plans the benchmarks measure - the shed that comes with the program, and the yard of 1 000 runs -
// and one edit of each kind a person makes while drawing.
#pragma once

#include <array>
#include <string>
#include <string_view>

#include "core/plan/plan.hpp"

namespace sumpwright::performance
{

enum class Size { typical, large };
enum class EditKind { moveBed, pipeSize, level, valve, rename };
inline constexpr std::array allEditKinds{EditKind::moveBed, EditKind::pipeSize, EditKind::level, EditKind::valve,
                                         EditKind::rename};
std::string_view nameOf(EditKind kind);
std::string_view nameOf(Size size);

struct MeasuredPlan {
    plan::Plan plan;
    base::Id bed;      // the one that is moved and raised
    base::Id run;      // the pressure run whose pipe is changed
    base::Id valveRun; // with the valve that is turned
    base::Id valve;
};

// Ends the program with the reason when the plan cannot be had.
MeasuredPlan measuredPlan(Size size);
// The plan after one small edit; ends the program when it is refused.
plan::Plan edited(const MeasuredPlan& from, EditKind kind);
std::string textOf(Size size); // as the file holds it

} // namespace sumpwright::performance

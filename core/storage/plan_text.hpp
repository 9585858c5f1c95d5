// A plan as text: JSON of format "sumpwright-plan", version 1. Quantities are texts with a unit ("2.4 m"), ratios
// numbers, keys in a fixed order, two spaces of indent: save(load(x)) == x for what this program wrote.
//
// Refused: text that is not UTF-8, over 20 MB, nested deeper than 64, over 20 000 elements, of a newer version, or
// failing plan::check; the refusal's place is "line 14, /vessels/2/wall_height". Unknown keys are kept and reported.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/outcome.hpp"
#include "core/plan/plan.hpp"

namespace sumpwright::storage
{

inline constexpr std::string_view planFormat = "sumpwright-plan";
inline constexpr int planVersion = 1;
inline constexpr std::size_t largestPlanBytes = 20'000'000;
inline constexpr std::size_t deepestNesting = 64;
inline constexpr std::size_t mostElements = 20'000;

struct LoadedPlan {
    plan::Plan plan;
    std::vector<std::string> unknownKeys; // "line 14, /vessels/2/colour"
    int fromVersion = planVersion;        // older than planVersion: migrated
};

std::string saveText(const plan::Plan& plan);
base::Outcome<LoadedPlan> loadText(std::string_view text);

} // namespace sumpwright::storage

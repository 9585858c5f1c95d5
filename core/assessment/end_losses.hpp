// The losses at the ends of runs: entry and exit at ports, and tees by their drawn geometry.
//
// At a tee the two legs that lie most nearly in line are its run, the others branches. Water comes in on one side and
// is divided (or comes in on several and is joined): each of the several legs bears the K of "straight through" when
// it lies in line with the single one, otherwise that of the branch; the single leg bears none. Which leg is the
// single one is told by the way from the pump; without a pump by the way the runs are drawn. A change of bore at the
// tee is added (Borda expansion or contraction). A K the person gave for a leg replaces all of it.
// Valid: constant K, never negative; pump outlets bear none. Sources: fitting-defaults, entry-exit.
#pragma once

#include <array>
#include <vector>

#include "core/assessment/run_result.hpp"
#include "core/catalogue/catalogue.hpp"
#include "core/plan/plan.hpp"
#include "core/units/measures.hpp"

namespace sumpwright::assessment
{

struct RunEnds {
    const plan::Run* run = nullptr;
    units::Length bore; // 0 where the pipe is not in the catalogue
};

// Losses of the start and of the end of every run, in the order given.
using EndLosses = std::array<std::vector<FittingLoss>, 2>;
std::vector<EndLosses> endLossesOf(const std::vector<RunEnds>& runs, const plan::Table<plan::Vessel>& vessels,
                                   const plan::Table<plan::Tee>& tees, const catalogue::Catalogue& catalogue);

} // namespace sumpwright::assessment

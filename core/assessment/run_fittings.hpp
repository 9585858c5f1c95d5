// The losses a run meets between its ends: bends by the drawn angle, valves by their opening, further fittings.
// Those at its ends (tees, ports) are in end_losses.hpp. K on the velocity head in the run's own bore.
// Sources: fitting-defaults, weisbach-valves, flow-factor.
#pragma once

#include <vector>

#include "core/assessment/run_result.hpp"
#include "core/catalogue/catalogue.hpp"
#include "core/plan/run.hpp"
#include "core/units/measures.hpp"

namespace sumpwright::assessment
{

struct InnerLosses {
    std::vector<FittingLoss> list; // bends and valves from start to end, then what has no place
    units::Head openingHead;       // of spring-loaded non-return valves
};

// `bore` is the run's own, 0 where it is not known.
InnerLosses innerLossesOf(const plan::Run& run, const catalogue::Catalogue& catalogue, units::Length bore);

// The default K of a catalogue row, or the K that its flow factor is in this bore; where there is no such row, a loss
// of 0 with basis none, which is a finding.
FittingLoss lossFromRow(const catalogue::Catalogue& catalogue, const std::string& fittingId, FittingRole role,
                        FittingPlace place, units::Length bore = {});

} // namespace sumpwright::assessment

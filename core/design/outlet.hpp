// Outlet: where a pressure run brings water into a vessel, and the flow the person wants there.
#pragma once

#include <optional>
#include <vector>

#include "core/assessment/assessment.hpp"
#include "core/plan/edits/port.hpp"
#include "core/plan/plan.hpp"
#include "core/plan/run_ends.hpp"

namespace sumpwright::design
{

struct Outlet {
    plan::PortRef port;
    base::Id run;
    plan::RunSide side = plan::RunSide::to; // the end of the run that is here
    std::optional<units::Flow> target;      // 0: shut
    bool intoSump = false;                  // a bypass: its water goes straight back
};

// In the order of the runs.
std::vector<Outlet> outletsOf(const plan::Plan& plan);
// The sum of all targets.
units::Flow wantedFlow(const std::vector<Outlet>& outlets);

// What the outlet brings in, below 0 where water leaves by it; nothing where that is not known.
std::optional<units::Flow> flowOf(const Outlet& outlet, const assessment::FlowResult& flow,
                                  assessment::RunningState state);

} // namespace sumpwright::design

// One circuit's valves, set for given levels of its water: one step of valve_setting.hpp, which settles the levels.
#pragma once

#include <optional>
#include <vector>

#include "core/design/share_out.hpp"
#include "core/design/valve_setting.hpp"

namespace sumpwright::design
{

// What can be set in a circuit, told once from the plan with every throttle open.
struct CircuitTask {
    std::size_t circuit = 0; // index into the bench's circuits
    std::vector<CircuitOutlet> outlets;
    std::vector<CommandingRun> commands; // those that are moved; their other valves stay as drawn
    std::vector<OutletPart> parts;
    std::vector<bool> noValve;    // of outlets: a target of 0 and nothing to shut it with
    std::optional<base::Id> pump; // the only one that runs
    double speed = 1.0;           // as drawn
};

std::vector<CircuitTask> tasksOf(const plan::Plan& plan, const CataloguePointer& catalogue);
// The plan with every valve that is moved wide open.
plan::Plan opened(const plan::Plan& plan, const std::vector<CircuitTask>& tasks);
plan::Plan withOpening(const plan::Plan& plan, plan::ValveRef valve, double opening);
plan::Plan withSpeed(const plan::Plan& plan, base::Id pump, double speed);

struct CircuitSetting {
    std::vector<OutletSetting> outlets; // without their flows
    std::vector<ValveOpening> valves;   // every one of the task's commands
    double share = 1.0;
    double restShare = 1.0;
    units::Head missing;
    std::optional<SpeedChange> speed;
    bool any = false; // a target is met, at least in part
};

// `bench`: of the opened plan. Nothing: its network has no solution.
std::optional<CircuitSetting> settingFor(const CircuitTask& task, const Bench& bench,
                                         std::vector<units::Elevation> levels, const ValveQuestion& question,
                                         const base::StopToken& stop);

} // namespace sumpwright::design

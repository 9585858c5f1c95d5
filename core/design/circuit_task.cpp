#include <algorithm>

#include "core/design/circuit_setting.hpp"

namespace sumpwright::design
{
namespace
{

bool isTarget(const CircuitOutlet& at) { return at.outlet.target.has_value(); }
bool isShutTarget(const CircuitOutlet& at) { return isTarget(at) && *at.outlet.target <= units::Flow(); }
bool isRest(const CircuitOutlet& at) { return !isTarget(at) && !at.outlet.intoSump; }

// A run that serves a target is moved; one that serves only the rest too, unless a valve there was shut on purpose.
bool isMoved(const CommandingRun& command, const std::vector<CircuitOutlet>& outlets)
{
    const auto serves = [&](auto&& which) {
        return std::any_of(command.outlets.begin(), command.outlets.end(),
                           [&](std::size_t i) { return which(outlets[i]); });
    };
    const bool shut = std::any_of(command.throttles.begin(), command.throttles.end(), [](const Throttle& throttle) {
        return hydraulics::throttlingLoss(throttle.kind, throttle.opening)->closed;
    });
    return serves(isTarget) || (serves(isRest) && !shut);
}

bool commandsOnly(const CommandingRun& command, std::size_t outlet, const std::vector<CircuitOutlet>& outlets,
                  bool (*alike)(const CircuitOutlet&))
{
    const auto& served = command.outlets;
    return std::find(served.begin(), served.end(), outlet) != served.end() &&
           std::all_of(served.begin(), served.end(), [&](std::size_t i) { return alike(outlets[i]); });
}

void takeParts(CircuitTask& task)
{
    for (std::size_t i = 0; i < task.outlets.size(); ++i) {
        const auto heldBack = [&](bool (*alike)(const CircuitOutlet&)) {
            return std::any_of(task.commands.begin(), task.commands.end(), [&](const CommandingRun& command) {
                return commandsOnly(command, i, task.outlets, alike);
            });
        };
        const CircuitOutlet& at = task.outlets[i];
        OutletPart part = OutletPart::bystander;
        if (isShutTarget(at))
            part = heldBack(isShutTarget) ? OutletPart::shut : OutletPart::bystander;
        else if (isTarget(at))
            part = OutletPart::target;
        else if (isRest(at) && heldBack(isRest))
            part = OutletPart::rest;
        task.parts.push_back(part);
        task.noValve.push_back(isShutTarget(at) && part == OutletPart::bystander);
    }
}

void takePump(CircuitTask& task, const assessment::Circuit& circuit, const assessment::Pipework& pipework)
{
    std::size_t running = 0;
    for (const std::size_t pump : circuit.pumps)
        if (pipework.pumps[pump].running && !pipework.pumps[pump].fault) {
            task.pump = pipework.pumps[pump].id;
            task.speed = pipework.pumps[pump].speed;
            ++running;
        }
    if (running != 1)
        task.pump.reset();
}

plan::Plan allOpen(plan::Plan plan)
{
    for (const auto& run : plan::Table(plan.runs))
        for (const Throttle& throttle : throttlesOf(*run))
            plan = withOpening(plan, throttle.valve, 1.0);
    return plan;
}

} // namespace

plan::Plan withOpening(const plan::Plan& plan, plan::ValveRef valve, double opening)
{
    plan::Plan changed = plan;
    if (const plan::Run* found = plan.runs.find(valve.run)) {
        plan::Run run = *found;
        for (plan::Valve& each : run.valves)
            if (each.id == valve.valve)
                each.opening = opening;
        changed.runs.put(std::move(run));
    }
    return changed;
}

plan::Plan withSpeed(const plan::Plan& plan, base::Id pump, double speed)
{
    plan::Plan changed = plan;
    if (const plan::Pump* found = plan.pumps.find(pump)) {
        plan::Pump other = *found;
        other.speed = speed;
        changed.pumps.put(std::move(other));
    }
    return changed;
}

plan::Plan opened(const plan::Plan& plan, const std::vector<CircuitTask>& tasks)
{
    plan::Plan changed = plan;
    for (const CircuitTask& task : tasks)
        for (const CommandingRun& command : task.commands)
            for (const Throttle& throttle : command.throttles)
                changed = withOpening(changed, throttle.valve, 1.0);
    return changed;
}

std::vector<CircuitTask> tasksOf(const plan::Plan& plan, const CataloguePointer& catalogue)
{
    const std::vector<Outlet> outlets = outletsOf(plan);
    const Bench bench = benchOf(allOpen(plan), catalogue);
    std::vector<CircuitTask> tasks;
    for (std::size_t index = 0; index < bench.circuits.all.size(); ++index) {
        const assessment::Circuit& circuit = bench.circuits.all[index].circuit;
        CircuitTask task;
        task.circuit = index;
        task.outlets = outletsIn(circuit, *bench.pipework, outlets);
        if (std::none_of(task.outlets.begin(), task.outlets.end(), isTarget) || !bench.site.viscosity)
            continue;
        const assessment::CircuitNetwork network(*bench.pipework, bench.basins, circuit, *bench.site.viscosity);
        task.commands = commandingRuns(plan, *bench.pipework, circuit, network, task.outlets);
        std::erase_if(task.commands, [&](const CommandingRun& command) { return !isMoved(command, task.outlets); });
        takeParts(task);
        takePump(task, circuit, *bench.pipework);
        tasks.push_back(std::move(task));
    }
    return tasks;
}

} // namespace sumpwright::design

#include "core/plan/level_ref.hpp"

#include <algorithm>

#include "core/plan/run_ends.hpp"

namespace sumpwright::plan
{

namespace
{

LevelKind kindOfLevel(PortKind kind)
{
    switch (kind) {
    case PortKind::inlet:
        return LevelKind::inlet;
    case PortKind::lip:
        return LevelKind::lip;
    case PortKind::sideOutlet:
        return LevelKind::sideOutlet;
    }
    return LevelKind::inlet;
}

std::optional<units::Elevation> portLevel(const Plan& plan, const LevelRef& level)
{
    const Vessel* vessel = plan.vessels.find(level.element);
    const Port* port = vessel ? findPort(*vessel, level.port) : nullptr;
    if (!port)
        return std::nullopt;
    if (level.kind == LevelKind::drain)
        return port->drainLevel;
    if (level.kind == LevelKind::vent)
        return port->ventLevel;
    return kindOfLevel(port->kind) == level.kind ? std::optional(port->level) : std::nullopt;
}

std::vector<LevelRef> levelsOfVessel(const Plan& plan, const Vessel& vessel)
{
    std::vector<LevelRef> levels{{LevelKind::base, vessel.id}, {LevelKind::rim, vessel.id}};
    if (vessel.runningLevel)
        levels.push_back({LevelKind::running, vessel.id});
    for (const Port& port : vessel.ports) {
        levels.push_back({kindOfLevel(port.kind), vessel.id, port.id});
        if (port.drainLevel)
            levels.push_back({LevelKind::drain, vessel.id, port.id});
        if (port.ventLevel)
            levels.push_back({LevelKind::vent, vessel.id, port.id});
    }
    std::stable_sort(levels.begin(), levels.end(),
                     [&](const LevelRef& a, const LevelRef& b) { return *levelOf(plan, a) < *levelOf(plan, b); });
    return levels;
}

} // namespace

bool isHeld(const Run& run, std::size_t vertex)
{
    return (vertex == 0 && !std::holds_alternative<OpenEnd>(run.from)) ||
           (vertex + 1 == run.vertices.size() && !std::holds_alternative<OpenEnd>(run.to));
}

std::vector<LevelRef> levelsOf(const Plan& plan, base::Id element)
{
    if (const Vessel* vessel = plan.vessels.find(element))
        return levelsOfVessel(plan, *vessel);
    if (plan.pumps.find(element))
        return {{LevelKind::pumpOutlet, element}};
    if (plan.tees.find(element))
        return {{LevelKind::tee, element}};
    std::vector<LevelRef> levels;
    if (const Run* run = plan.runs.find(element))
        for (std::size_t i = 0; i < run->vertices.size(); ++i)
            if (!isHeld(*run, i))
                levels.push_back({LevelKind::vertex, element, {}, i});
    return levels;
}

std::optional<units::Elevation> levelOf(const Plan& plan, const LevelRef& level)
{
    const Vessel* vessel = plan.vessels.find(level.element);
    const Pump* pump = plan.pumps.find(level.element);
    const Tee* tee = plan.tees.find(level.element);
    const Run* run = plan.runs.find(level.element);
    switch (level.kind) {
    case LevelKind::base:
        return vessel ? std::optional(vessel->baseLevel) : std::nullopt;
    case LevelKind::rim:
        return vessel ? std::optional(rimLevel(*vessel)) : std::nullopt;
    case LevelKind::running:
        return vessel ? vessel->runningLevel : std::nullopt;
    case LevelKind::lip:
    case LevelKind::inlet:
    case LevelKind::sideOutlet:
    case LevelKind::drain:
    case LevelKind::vent:
        return portLevel(plan, level);
    case LevelKind::pumpOutlet:
        return pump ? std::optional(pump->outletLevel) : std::nullopt;
    case LevelKind::tee:
        return tee ? std::optional(tee->level) : std::nullopt;
    case LevelKind::vertex:
        return run && level.vertex < run->vertices.size() ? std::optional(run->vertices[level.vertex].level)
                                                          : std::nullopt;
    }
    return std::nullopt;
}

std::optional<Point> placeOf(const Plan& plan, const LevelRef& level)
{
    if (!levelOf(plan, level))
        return std::nullopt;
    if (const Vessel* vessel = plan.vessels.find(level.element)) {
        const Port* port = findPort(*vessel, level.port);
        return port ? placeOf(*vessel, *port) : vessel->centre;
    }
    if (const Pump* pump = plan.pumps.find(level.element)) {
        const Vessel* home = plan.vessels.find(pump->vessel);
        return home ? std::optional(placeOf(*home, *pump)) : std::nullopt;
    }
    if (const Tee* tee = plan.tees.find(level.element))
        return tee->at;
    return plan.runs.find(level.element)->vertices[level.vertex].at;
}

} // namespace sumpwright::plan

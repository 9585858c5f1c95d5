#include "core/report/profile.hpp"

#include <algorithm>

namespace sumpwright::report
{

WaterLevels waterLevelsOf(const assessment::Assessment* results, base::Id vessel)
{
    using assessment::WaterState;
    WaterLevels levels;
    const auto* result = results ? assessment::find(results->water->vessels, vessel) : nullptr;
    if (!result)
        return levels;
    const auto read = [&](WaterState state, std::optional<units::Elevation>& level) {
        const auto& water = result->water[state];
        if (!water)
            return;
        level = water->level;
        if (state != WaterState::pumpStopped)
            levels.freeBoard = levels.freeBoard ? std::min(*levels.freeBoard, water->freeBoard) : water->freeBoard;
    };
    read(WaterState::runningLeast, levels.least);
    read(WaterState::runningMost, levels.most);
    read(WaterState::pumpStopped, levels.stopped);
    return levels;
}

const PipeSize& PipeSizes::of(const plan::Run& run)
{
    const auto known = m_known.find(run.pipeId);
    if (known != m_known.end())
        return known->second;
    PipeSize size{units::millimetres(32.0), units::Length()};
    if (m_catalogue)
        if (const auto pipe = m_catalogue->pipe(run.pipeId))
            size = {(*pipe)->outsideDiameter, (*pipe)->bore};
    return m_known.emplace(run.pipeId, size).first->second;
}

BoresAtPorts boresAtPorts(const plan::Plan& plan, PipeSizes& sizes)
{
    BoresAtPorts bores;
    for (const auto& run : plan.runs)
        for (const plan::RunEnd* end : {&run->from, &run->to})
            if (const auto* at = std::get_if<plan::PortEnd>(end))
                bores.emplace(at->port, sizes.of(*run).bore);
    return bores;
}

VesselProfile profileOf(const plan::Plan& plan, const plan::Vessel& vessel, const assessment::Assessment* results,
                        const BoresAtPorts& bores)
{
    VesselProfile profile;
    profile.id = vessel.id;
    profile.tag = vessel.tag;
    profile.kind = vessel.kind;
    profile.caged = std::holds_alternative<plan::CagedShape>(vessel.shape);
    profile.wall = vessel.wallThickness;
    profile.base = vessel.baseLevel;
    profile.bottom = plan::insideBottom(vessel);
    profile.rim = plan::rimLevel(vessel);
    profile.floor = plan::levelAt(*plan.floor, vessel.centre);
    if (vessel.medium)
        profile.mediumTop = profile.bottom + vessel.medium->depth;
    if (vessel.stand) {
        profile.stand = vessel.stand->kind;
        profile.padSide = vessel.stand->padSide;
    }
    for (const plan::Port& port : vessel.ports) {
        const auto met = bores.find(port.id);
        profile.ports.push_back({port.id, port.tag, port.kind, units::Length(), port.level,
                                 port.bore.value_or(met != bores.end() ? met->second : units::Length()),
                                 port.drainLevel, port.ventLevel});
    }
    profile.water = waterLevelsOf(results, vessel.id);
    return profile;
}

} // namespace sumpwright::report

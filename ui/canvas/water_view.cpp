#include "ui/canvas/water_view.hpp"

namespace sumpwright::ui::canvas
{

namespace
{
std::optional<units::Flow> lookUp(const std::unordered_map<base::Id, units::Flow>& flows, base::Id id)
{
    const auto found = flows.find(id);
    return found == flows.end() ? std::nullopt : std::optional(found->second);
}
} // namespace

const VesselWater* WaterView::vessel(base::Id id) const
{
    const auto found = vessels.find(id);
    return found == vessels.end() ? nullptr : &found->second;
}

std::optional<units::Flow> WaterView::run(base::Id id) const { return lookUp(runs, id); }
std::optional<units::Flow> WaterView::pump(base::Id id) const { return lookUp(pumps, id); }

WaterView waterViewOf(const assessment::Assessment& assessment, bool stale)
{
    WaterView view;
    view.stale = stale;
    for (const auto& vessel : assessment.water->vessels) {
        const auto& water = vessel.water[assessment::WaterState::runningLeast];
        if (water)
            view.vessels.emplace(vessel.id, VesselWater{water->level, water->volume});
    }
    for (const auto& run : assessment.flow->runs) {
        const auto& flow = run.flow[assessment::RunningState::least];
        if (!flow)
            continue;
        view.runs.emplace(run.id, flow->flow);
        view.tidal.emplace(run.id, flow->meanOfTide);
    }
    for (const auto& pump : assessment.pumps->pumps) {
        const auto& duty = pump.duty[assessment::RunningState::least];
        if (duty)
            view.pumps.emplace(pump.id, duty->flow);
    }
    return view;
}

} // namespace sumpwright::ui::canvas

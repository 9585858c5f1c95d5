// Workings of the floor and the site: masses, their total, the live load, the air.
#include "core/assessment/working_parts.hpp"

namespace sumpwright::assessment
{
namespace
{

void addShape(Working& working, const plan::Vessel& vessel)
{
    const plan::RectangleShape frame = plan::frameOf(vessel.shape);
    const units::Length walls = 2.0 * vessel.wallThickness;
    if (std::holds_alternative<plan::RoundShape>(vessel.shape)) {
        working.inputs = {{"shape", "round"}, input("diameter", frame.length - walls)};
        return;
    }
    working.inputs = {
        {"shape", "rectangle"}, input("length", frame.length - walls), input("width", frame.width - walls)};
}

void addContents(Working& working, const plan::Vessel& vessel, units::Length depth)
{
    if (!vessel.medium) {
        working.inputs.push_back(input("water_depth", depth));
        return;
    }
    const units::Length height = plan::rimLevel(vessel) - plan::insideBottom(vessel);
    working.inputs.push_back({"medium", vessel.medium->mediumId});
    working.inputs.push_back(input("medium_depth", std::min(vessel.medium->depth, height)));
    working.inputs.push_back(input("flood_depth", depth));
}

} // namespace

std::optional<Working> workingOfMass(const Assessment& assessment, base::Id vessel, LoadCase loadCase)
{
    const VesselLoad* result = find(assessment.floor->vessels, vessel);
    const plan::Vessel* drawn = assessment.plan.vessels.find(vessel);
    const VesselWater* water =
        waterOf(assessment, vessel, loadCase == LoadCase::toRim ? WaterState::toRim : WaterState::runningLeast);
    if (!result || !drawn || !water || !result->in(loadCase))
        return std::nullopt;
    const Load& load = *result->in(loadCase);
    Working working{"vessel-mass", "weight", {}, {}};
    addShape(working, *drawn);
    addContents(working, *drawn, water->depth);
    working.inputs.push_back(input("tare", load.tare + load.stand));
    working.inputs.push_back(input("footprint", result->footprint));
    if (load.perLeg)
        working.inputs.push_back(ratioInput("legs", drawn->stand->legCount));
    return working;
}

std::optional<Working> workingOfLoadTotal(const Assessment& assessment, LoadCase loadCase)
{
    if (!assessment.floor->in(loadCase) || assessment.floor->vessels.empty())
        return std::nullopt;
    ListText loads;
    for (const VesselLoad& vessel : assessment.floor->vessels)
        loads.put(plan::tagOf(assessment.plan, vessel.id),
                  units::exactText(vessel.in(loadCase)->total) + " on " + input("", vessel.footprint).value);
    Working working{"load-total", "weight", {{"loads", loads.text()}}, {}};
    if (assessment.floor->in(loadCase)->meanOverFloor)
        working.inputs.push_back(input("floor_area", plan::areaOf(*assessment.plan.floor)));
    return working;
}

std::optional<Working> workingOfLiveLoad(const Assessment& assessment)
{
    const auto& comparison = assessment.floor->comparison;
    const Stage<FloorTotal>& total = assessment.floor->in(LoadCase::toRim);
    if (!comparison || !total)
        return std::nullopt;
    Working working{
        "live-load", "ratio", {input("pressure", total->worstFootprint), input("live_load", comparison->liveLoad)}, {}};
    if (total->meanOverFloor)
        working.inputs.push_back(input("mean_pressure", *total->meanOverFloor));
    return working;
}

std::optional<Working> workingOfAirPressure(const Assessment& assessment)
{
    if (!assessment.site->airPressure || !assessment.plan.site->altitude)
        return std::nullopt;
    return Working{"air-pressure", "pressure", {input("altitude", *assessment.plan.site->altitude)}, {}};
}

} // namespace sumpwright::assessment

#include "core/assessment/working_parts.hpp"

#include "core/assessment/rows.hpp"

namespace sumpwright::assessment
{

const RunFlow* flowOf(const Assessment& assessment, base::Id run, RunningState state)
{
    const RunResult* result = find(assessment.flow->runs, run);
    return result && result->flow[state] ? &*result->flow[state] : nullptr;
}

const DutyPoint* dutyOf(const Assessment& assessment, base::Id pump, RunningState state)
{
    const PumpResult* result = find(assessment.pumps->pumps, pump);
    return result && result->duty[state] && result->duty[state]->flow > units::Flow() ? &*result->duty[state] : nullptr;
}

const VesselWater* waterOf(const Assessment& assessment, base::Id vessel, WaterState state)
{
    const VesselResult* result = find(assessment.water->vessels, vessel);
    return result && result->water[state] ? &*result->water[state] : nullptr;
}

void addVessel(Working& working, const Assessment& assessment, const plan::Vessel& vessel)
{
    working.inputs.push_back(input("bottom", plan::insideBottom(vessel)));
    working.inputs.push_back(input("area", plan::insideArea(vessel)));
    if (!vessel.medium)
        return;
    if (const auto* row = rowOf(assessment.catalogue->media(), vessel.medium->mediumId)) {
        working.inputs.push_back(input("medium_depth", vessel.medium->depth));
        working.inputs.push_back(ratioInput("porosity", row->porosity.typical));
    }
}

} // namespace sumpwright::assessment

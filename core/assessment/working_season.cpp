// Workings of what the year brings: a pump's duty with fouled pipes and cold water, or new pipes and warm water.
#include <cmath>

#include "core/assessment/working_parts.hpp"
#include "core/hydraulics/fittings.hpp"
#include "core/hydraulics/friction.hpp"
#include "core/nature/water.hpp"

namespace sumpwright::assessment
{

// The levels are today's: what the year changes of them goes into the K of the network.
std::optional<Working> workingOfSeason(const Assessment& assessment, base::Id pump, YearEnd end)
{
    const PumpSeason* season = find(assessment.season->pumps, pump);
    const PumpHeadPath* path = find(assessment.headPaths->pumps, pump);
    const plan::Pump* drawn = assessment.plan.pumps.find(pump);
    const auto water = nature::waterAt(assessment.season->water[end]);
    if (!season || !season->duty[end] || !path || !path->path || !drawn || !water)
        return std::nullopt;
    const YearDuty& duty = *season->duty[end];
    const base::Id first = path->path->runs.front();
    const RunResult* run = find(assessment.flow->runs, first);
    const RunSeason* then = find(assessment.season->runs, first);
    const auto lift = liftOf(assessment, *drawn, *path->path, RunningState::least);
    if (!lift || !run || !then || !then->flow[end] || !(duty.flow > units::Flow()) ||
        sizeOf(*then->flow[end]) < 0.999 * duty.flow)
        return std::nullopt;
    const units::Head statics = units::liftBetween(lift->from, lift->to);
    const units::Head friction =
        hydraulics::frictionLoss({run->bore, run->length, then->roughness[end]}, duty.flow, water->kinematicViscosity);
    const units::Head velocityHead = hydraulics::fittingLoss(1.0, hydraulics::meanVelocity(duty.flow, run->bore));
    const double k = (duty.head - statics - friction) / velocityHead;
    if (!(k >= 0.0) || !std::isfinite(k))
        return std::nullopt;
    Working working{"pump-duty", "flow", {}, "network-as-one-pipe"};
    addPump(working, assessment, *drawn);
    working.inputs.push_back(input("static_head", statics));
    working.inputs.push_back(input("bore", run->bore));
    working.inputs.push_back(input("length", run->length));
    working.inputs.push_back(input("roughness", then->roughness[end]));
    working.inputs.push_back(ratioInput("sum_k", k));
    working.inputs.push_back(input("temperature", assessment.season->water[end]));
    return working;
}

} // namespace sumpwright::assessment

#include "core/assessment/working.hpp"

#include <cmath>

#include "core/hydraulics/fittings.hpp"
#include "core/units/format.hpp"

namespace sumpwright::assessment
{
namespace
{

template <class Kind> WorkingInput input(const char* name, const Kind& value)
{
    return {name, units::exactText(value)};
}
WorkingInput ratio(const char* name, double value) { return {name, units::exactRatioText(value)}; }

units::Flow sizeOf(units::Flow flow) { return flow < units::Flow() ? -flow : flow; }

const RunFlow* flowOf(const Assessment& assessment, base::Id run, RunningState state)
{
    const RunResult* result = find(assessment.flow->runs, run);
    return result && result->flow[state] ? &*result->flow[state] : nullptr;
}

std::string curveText(const std::vector<plan::CurvePoint>& points)
{
    std::string text;
    for (const plan::CurvePoint& point : points)
        text += (text.empty() ? "" : "; ") + units::exactText(point.flow) + ": " + units::exactText(point.head);
    return text;
}

const DutyPoint* dutyOf(const Assessment& assessment, base::Id pump, RunningState state)
{
    const PumpResult* result = find(assessment.pumps->pumps, pump);
    return result && result->duty[state] && result->duty[state]->flow > units::Flow() ? &*result->duty[state] : nullptr;
}

units::Length boreOf(const Assessment& assessment, const plan::Port& lip)
{
    if (lip.bore)
        return *lip.bore;
    for (const auto& run : assessment.plan.runs)
        for (const plan::RunEnd* end : {&run->from, &run->to})
            if (const auto* at = std::get_if<plan::PortEnd>(end); at && at->port == lip.id)
                if (const RunResult* result = find(assessment.flow->runs, run->id))
                    return result->bore;
    return {};
}

// 1 of anything but a valve.
double openingOf(const Assessment& assessment, base::Id run, base::Id valve)
{
    if (const plan::Run* drawn = assessment.plan.runs.find(run))
        for (const plan::Valve& each : drawn->valves)
            if (each.id == valve)
                return each.opening;
    return 1.0;
}

} // namespace

std::optional<Working> workingOfRunLoss(const Assessment& assessment, base::Id run, RunningState state)
{
    const RunResult* result = find(assessment.flow->runs, run);
    const RunFlow* flow = flowOf(assessment, run, state);
    if (!flow || !flow->losses || flow->flow == units::Flow())
        return std::nullopt;
    return Working{"pipe-friction",
                   {input("flow", sizeOf(flow->flow)), input("bore", result->bore), input("length", result->length),
                    input("roughness", result->roughness), input("temperature", assessment.site->water),
                    ratio("sum_k", result->sumK)},
                   {}};
}

std::optional<Working> workingOfFitting(const Assessment& assessment, base::Id run, const FittingLoss& loss,
                                        RunningState state)
{
    const RunResult* result = find(assessment.flow->runs, run);
    const RunFlow* flow = flowOf(assessment, run, state);
    const auto kind = hydraulics::fittingFromId(loss.fittingId);
    if (!kind || loss.basis == LossBasis::overridden || loss.shut || !flow || !flow->losses ||
        flow->flow == units::Flow())
        return std::nullopt;
    Working working{"fitting-loss",
                    {{"fitting", loss.fittingId},
                     input("bore", result->bore),
                     input("flow", sizeOf(flow->flow)),
                     input("temperature", assessment.site->water)},
                    {}};
    const double opening = openingOf(assessment, run, loss.element);
    if (opening < 1.0)
        working.inputs.push_back(ratio("opening", opening));
    else if (std::abs(loss.k - hydraulics::defaultCoefficient(*kind)) > 1e-9)
        return std::nullopt;
    return working;
}

std::optional<Working> workingOfDutyPoint(const Assessment& assessment, base::Id pump, RunningState state)
{
    const DutyPoint* duty = dutyOf(assessment, pump, state);
    const PumpHeadPath* path = find(assessment.headPaths->pumps, pump);
    const plan::Pump* drawn = assessment.plan.pumps.find(pump);
    if (!duty || !path || !path->path || !drawn)
        return std::nullopt;
    const base::Id first = path->path->runs.front();
    const RunResult* run = find(assessment.flow->runs, first);
    const RunFlow* flow = flowOf(assessment, first, state);
    const VesselResult* sump = find(assessment.water->vessels, drawn->vessel);
    const VesselResult* end = find(assessment.water->vessels, path->path->vessel);
    if (!flow || !flow->losses || sizeOf(flow->flow) < 0.999 * duty->flow || !sump || !end)
        return std::nullopt;
    const WaterState water = state == RunningState::least ? WaterState::runningLeast : WaterState::runningMost;
    const plan::Vessel* vessel = assessment.plan.vessels.find(path->path->vessel);
    const plan::Port* port = vessel ? plan::findPort(*vessel, path->path->port) : nullptr;
    if (!port || !sump->water[water])
        return std::nullopt;
    units::Elevation reached = port->level;
    if (end->water[water] && end->water[water]->level > reached)
        reached = end->water[water]->level;
    const units::Head lift = units::liftBetween(sump->water[water]->level, reached);
    const units::Head rest = duty->head - lift - flow->losses->friction;
    const double k = rest / flow->losses->velocityHead;
    if (!(k >= 0.0) || !std::isfinite(k))
        return std::nullopt;
    Working working{"pump-duty", {}, "network-as-one-pipe"};
    working.inputs.push_back(drawn->modelId.empty() ? WorkingInput{"points", curveText(drawn->ownCurve)}
                                                    : WorkingInput{"pump", drawn->modelId});
    working.inputs.push_back(ratio("speed", drawn->speed));
    working.inputs.push_back(input("static_head", lift));
    working.inputs.push_back(input("bore", run->bore));
    working.inputs.push_back(input("length", run->length));
    working.inputs.push_back(input("roughness", run->roughness));
    working.inputs.push_back(ratio("sum_k", k));
    working.inputs.push_back(input("temperature", assessment.site->water));
    return working;
}

std::optional<Working> workingOfEnergy(const Assessment& assessment, base::Id pump)
{
    const DutyPoint* duty = dutyOf(assessment, pump, RunningState::least);
    if (!duty || !duty->power || duty->power->wireToWater <= 0.0)
        return std::nullopt;
    Working working{
        "pump-energy",
        {input("flow", duty->flow), input("head", duty->head), ratio("wire_to_water", duty->power->wireToWater)},
        {}};
    if (assessment.plan.site->powerPrice)
        working.inputs.push_back(
            {"price", units::exactRatioText(units::inCurrencyPerKilowattHour(*assessment.plan.site->powerPrice)) + " " +
                          assessment.plan.site->currency + "/kWh"});
    return working;
}

std::optional<Working> workingOfOverflow(const Assessment& assessment, base::Id vessel, RunningState state)
{
    const VesselResult* result = find(assessment.water->vessels, vessel);
    const plan::Vessel* drawn = assessment.plan.vessels.find(vessel);
    const plan::Port* lip = drawn ? plan::mainLip(*drawn) : nullptr;
    if (!result || !lip || !result->inflow[state] || *result->inflow[state] <= units::Flow())
        return std::nullopt;
    const units::Length bore = boreOf(assessment, *lip);
    if (bore <= units::Length())
        return std::nullopt;
    return Working{"overflow-level", {input("flow", *result->inflow[state]), input("bore", bore)}, {}};
}

std::optional<Working> workingOfMass(const Assessment& assessment, base::Id vessel, LoadCase loadCase)
{
    const VesselLoad* result = find(assessment.floor->vessels, vessel);
    const VesselResult* water = find(assessment.water->vessels, vessel);
    const plan::Vessel* drawn = assessment.plan.vessels.find(vessel);
    const WaterState state = loadCase == LoadCase::toRim ? WaterState::toRim : WaterState::runningLeast;
    if (!result || !drawn || !water || !result->in(loadCase) || !water->water[state])
        return std::nullopt;
    const Load& load = *result->in(loadCase);
    const plan::RectangleShape frame = plan::frameOf(drawn->shape);
    const units::Length walls = 2.0 * drawn->wallThickness;
    Working working{"vessel-mass", {}, {}};
    if (std::holds_alternative<plan::RoundShape>(drawn->shape)) {
        working.inputs = {{"shape", "round"}, input("diameter", frame.length - walls)};
    } else {
        working.inputs = {
            {"shape", "rectangle"}, input("length", frame.length - walls), input("width", frame.width - walls)};
    }
    const units::Length depth = water->water[state]->depth;
    if (drawn->medium) {
        working.inputs.push_back({"medium", drawn->medium->mediumId});
        working.inputs.push_back(input("medium_depth", drawn->medium->depth));
        working.inputs.push_back(input("flood_depth", depth));
    } else if (depth > units::Length()) {
        working.inputs.push_back(input("water_depth", depth));
    } else {
        return std::nullopt;
    }
    working.inputs.push_back(input("tare", load.tare + load.stand));
    return working;
}

} // namespace sumpwright::assessment

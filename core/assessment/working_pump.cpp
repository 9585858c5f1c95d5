// Workings of pumps: duty point, power, lift, head at a flow.
#include <cmath>
#include <vector>

#include "core/assessment/rows.hpp"
#include "core/assessment/working_parts.hpp"

namespace sumpwright::assessment
{
namespace
{

std::string curveText(const std::vector<plan::CurvePoint>& points)
{
    std::string text;
    for (const plan::CurvePoint& point : points)
        text += (text.empty() ? "" : "; ") + units::exactText(point.flow) + ": " + units::exactText(point.head);
    return text;
}

void addCurve(Working& working, const std::vector<plan::CurvePoint>& curve, bool twoNumbers)
{
    if (twoNumbers && curve.size() == 2) {
        working.inputs.push_back(input("shut_off_head", curve.front().head));
        working.inputs.push_back(input("greatest_flow", curve.back().flow));
    } else {
        working.inputs.push_back({"points", curveText(curve)});
    }
}

} // namespace

// An own part is told by its numbers, so that the working holds without the plan.
void addPump(Working& working, const Assessment& assessment, const plan::Pump& pump)
{
    const auto& own = assessment.plan.ownParts->pumps;
    if (const plan::OwnPump* part = rowOf(own, pump.modelId))
        addCurve(working, part->curve, part->twoNumbers);
    else if (pump.modelId.empty())
        addCurve(working, pump.ownCurve, pump.twoNumbers);
    else
        working.inputs.push_back({"pump", pump.modelId});
    working.inputs.push_back(ratioInput("speed", pump.speed));
    if (pump.arrangement != plan::PumpArrangement::one)
        working.inputs.push_back(
            {"arrangement", pump.arrangement == plan::PumpArrangement::twoParallel ? "two-parallel" : "two-in-series"});
}

std::optional<Lift> liftOf(const Assessment& assessment, const plan::Pump& pump, const HeadPath& path,
                           RunningState state)
{
    const VesselWater* sump = waterOf(assessment, pump.vessel, waterStateOf(state));
    const VesselWater* end = waterOf(assessment, path.vessel, waterStateOf(state));
    const plan::Vessel* vessel = assessment.plan.vessels.find(path.vessel);
    const plan::Port* port = vessel ? plan::findPort(*vessel, path.port) : nullptr;
    if (!port || !sump)
        return std::nullopt;
    return Lift{sump->level, end && end->level > port->level ? end->level : port->level};
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
    const auto lift = liftOf(assessment, *drawn, *path->path, state);
    if (!lift || !flow || !flow->losses || sizeOf(flow->flow) < 0.999 * duty->flow)
        return std::nullopt;
    const units::Head statics = units::liftBetween(lift->from, lift->to);
    const double k = (duty->head - statics - flow->losses->friction) / flow->losses->velocityHead;
    if (!(k >= 0.0) || !std::isfinite(k))
        return std::nullopt;
    Working working{"pump-duty", "flow", {}, "network-as-one-pipe"};
    addPump(working, assessment, *drawn);
    working.inputs.push_back(input("static_head", statics));
    working.inputs.push_back(input("bore", run->bore));
    working.inputs.push_back(input("length", run->length));
    working.inputs.push_back(input("roughness", run->roughness));
    if (run->corrugatedFactor > 0.0)
        working.inputs.push_back(ratioInput("corrugated_factor", run->corrugatedFactor));
    working.inputs.push_back(ratioInput("sum_k", k));
    working.inputs.push_back(input("temperature", assessment.site->water));
    return working;
}

std::optional<Working> workingOfEnergy(const Assessment& assessment, base::Id pump)
{
    const DutyPoint* duty = dutyOf(assessment, pump, RunningState::least);
    if (!duty || !duty->power || duty->power->wireToWater <= 0.0)
        return std::nullopt;
    Working working{"pump-energy",
                    "electrical_power",
                    {input("flow", duty->flow), input("head", duty->head),
                     ratioInput("wire_to_water", duty->power->wireToWater),
                     input("temperature", assessment.site->water)},
                    {}};
    if (assessment.plan.site->powerPrice)
        working.inputs.push_back(
            {"price", units::exactRatioText(units::inCurrencyPerKilowattHour(*assessment.plan.site->powerPrice)) + " " +
                          assessment.plan.site->currency + "/kWh"});
    return working;
}

std::optional<Working> workingOfLift(const Assessment& assessment, base::Id pump)
{
    const PumpHeadPath* path = find(assessment.headPaths->pumps, pump);
    const plan::Pump* drawn = assessment.plan.pumps.find(pump);
    const auto lift =
        path && path->path && drawn ? liftOf(assessment, *drawn, *path->path, RunningState::least) : std::nullopt;
    if (!lift)
        return std::nullopt;
    return Working{"static-lift", "lift", {input("from", lift->from), input("to", lift->to)}, {}};
}

std::optional<Working> workingOfPumpHead(const Assessment& assessment, base::Id pump, units::Flow flow)
{
    const plan::Pump* drawn = assessment.plan.pumps.find(pump);
    const PumpResult* result = find(assessment.pumps->pumps, pump);
    if (!drawn || !result || result->pumpCurve.empty())
        return std::nullopt;
    Working working{"pump-head", "head", {}, {}};
    addPump(working, assessment, *drawn);
    working.inputs.push_back(input("flow", flow));
    return working;
}

} // namespace sumpwright::assessment

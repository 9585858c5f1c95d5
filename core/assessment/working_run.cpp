// Workings of runs and what is on them: flow, loss, content, coefficients, the grade at a tee.
#include <algorithm>
#include <cmath>

#include "core/assessment/rows.hpp"
#include "core/assessment/tee_legs.hpp"
#include "core/assessment/working_parts.hpp"
#include "core/hydraulics/fittings.hpp"

namespace sumpwright::assessment
{
namespace
{

bool flows(const RunFlow* flow) { return flow && flow->flow != units::Flow(); }

// What springs of non-return valves on a run hold it shut with.
units::Head openingHeadOf(const Assessment& assessment, const RunResult& run)
{
    units::Head sum;
    for (const FittingLoss& loss : run.fittings)
        if (const auto* row = loss.oneWay ? rowOf(assessment.catalogue->fittings(), loss.fittingId) : nullptr)
            sum += static_cast<double>(loss.count) * row->cracking.value_or(units::Head());
    return sum;
}

void addPipe(Working& working, const Assessment& assessment, const RunResult& run)
{
    working.inputs.push_back(input("bore", run.bore));
    working.inputs.push_back(input("length", run.length));
    working.inputs.push_back(input("roughness", run.roughness));
    if (run.corrugatedFactor > 0.0)
        working.inputs.push_back(ratioInput("corrugated_factor", run.corrugatedFactor));
    working.inputs.push_back(input("temperature", assessment.site->water));
    working.inputs.push_back(ratioInput("sum_k", run.sumK));
    if (const units::Head opening = openingHeadOf(assessment, run); opening > units::Head())
        working.inputs.push_back(input("opening_head", opening));
}

// The hydraulic grade at an end of a pressure run.
std::optional<units::Elevation> gradeAt(const Assessment& assessment, const plan::RunEnd& end, RunningState state)
{
    if (const auto* tee = std::get_if<plan::TeeEnd>(&end)) {
        const TeeResult* result = find(assessment.flow->tees, tee->tee);
        return result && result->grade[state] ? std::optional(*result->grade[state]) : std::nullopt;
    }
    if (const auto* pump = std::get_if<plan::PumpEnd>(&end)) {
        const plan::Pump* drawn = assessment.plan.pumps.find(pump->pump);
        const DutyPoint* duty = dutyOf(assessment, pump->pump, state);
        const VesselWater* sump = drawn ? waterOf(assessment, drawn->vessel, waterStateOf(state)) : nullptr;
        return duty && sump ? std::optional(units::raisedBy(sump->level, duty->head)) : std::nullopt;
    }
    const auto* at = std::get_if<plan::PortEnd>(&end);
    const plan::Vessel* vessel = at ? assessment.plan.vessels.find(at->vessel) : nullptr;
    const plan::Port* port = vessel ? plan::findPort(*vessel, at->port) : nullptr;
    const VesselWater* water = vessel ? waterOf(assessment, vessel->id, waterStateOf(state)) : nullptr;
    return port && water ? std::optional(std::max(port->level, water->level)) : std::nullopt;
}

bool isTee(const plan::RunEnd& end, base::Id tee)
{
    const auto* at = std::get_if<plan::TeeEnd>(&end);
    return at && at->tee == tee;
}

// What the gravity runs bring to a tee, which sends it on by this run alone.
std::optional<Working> fromTee(const Assessment& assessment, base::Id tee, const RunFlow& flow, RunningState state)
{
    ListText in;
    units::Flow arrives;
    for (const auto& run : assessment.plan.runs) {
        const RunFlow* other = flowOf(assessment, run->id, state);
        if (!flows(other) || !isTee(other->flow > units::Flow() ? run->to : run->from, tee))
            continue;
        in.add(plan::tagOf(assessment.plan, run->id), sizeOf(other->flow));
        arrives += sizeOf(other->flow);
    }
    const double off = units::inCubicMetresPerSecond(arrives - sizeOf(flow.flow));
    if (in.empty() || std::abs(off) > 1e-9 * units::inCubicMetresPerSecond(arrives))
        return std::nullopt;
    return Working{"flow-balance", "balance", {{"coming_in", in.text()}}, {}};
}

// A gravity run carries what its vessel receives when it alone leads that on, or what comes together at its tee.
std::optional<Working> ofGravityFlow(const Assessment& assessment, const plan::Run& run, RunningState state)
{
    const RunFlow& flow = *flowOf(assessment, run.id, state);
    const plan::RunEnd& source = flow.flow > units::Flow() ? run.from : run.to;
    if (const auto* tee = std::get_if<plan::TeeEnd>(&source))
        return fromTee(assessment, tee->tee, flow, state);
    const auto* port = std::get_if<plan::PortEnd>(&source);
    const VesselResult* vessel = port ? find(assessment.water->vessels, port->vessel) : nullptr;
    if (!vessel || !vessel->inflow[state] || *vessel->inflow[state] != sizeOf(flow.flow))
        return std::nullopt;
    return workingOfInflow(assessment, vessel->id, state);
}

// Of a change of bore: the bore on the other side is that of the tee's single leg.
std::optional<Working> ofBoreChange(const Assessment& assessment, const RunResult& run, const FittingLoss& loss)
{
    std::vector<RunEnds> ends;
    std::size_t own = 0;
    for (const auto& drawn : assessment.plan.runs) {
        const RunResult* result = find(assessment.flow->runs, drawn->id);
        if (drawn->id == run.id)
            own = ends.size();
        ends.push_back({drawn.get(), result ? result->bore : units::Length()});
    }
    const std::size_t end = loss.place == FittingPlace::end ? 1 : 0;
    for (const TeeLegs& tee : teeLegsOf(ends)) {
        if (tee.tee != loss.element)
            continue;
        const std::vector<LegPart> parts = partsOf(tee.legs);
        const auto single = std::find(parts.begin(), parts.end(), LegPart::single);
        const auto leg = std::find_if(tee.legs.begin(), tee.legs.end(),
                                      [&](const TeeLeg& each) { return each.run == own && each.end == end; });
        if (single == parts.end() || leg == tee.legs.end())
            return std::nullopt;
        const units::Length other = tee.legs[static_cast<std::size_t>(single - parts.begin())].bore;
        return Working{"bore-change",
                       leg->incoming ? "k_upstream" : "k_downstream",
                       {input("upstream_bore", leg->incoming ? leg->bore : other),
                        input("downstream_bore", leg->incoming ? other : leg->bore)},
                       {}};
    }
    return std::nullopt;
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

std::string labelOf(const FittingLoss& loss)
{
    std::string name = loss.fittingId.empty() ? "change of bore" : loss.fittingId;
    if (loss.fittingId.empty() && loss.basis == LossBasis::overridden)
        name = "K by hand";
    return name;
}

// The run that brings a tee most of its water; null when none does.
const plan::Run* feederOf(const Assessment& assessment, base::Id tee, RunningState state)
{
    const plan::Run* feeder = nullptr;
    units::Flow most;
    for (const auto& run : assessment.plan.runs) {
        const RunFlow* flow = flowOf(assessment, run->id, state);
        if (run->service != plan::Service::pressure || !flow || sizeOf(flow->flow) <= most)
            continue;
        const auto* end = std::get_if<plan::TeeEnd>(flow->flow > units::Flow() ? &run->to : &run->from);
        if (end && end->tee == tee) {
            feeder = run.get();
            most = sizeOf(flow->flow);
        }
    }
    return feeder;
}

} // namespace

std::optional<Working> workingOfRunFlow(const Assessment& assessment, base::Id run, RunningState state)
{
    const RunResult* result = find(assessment.flow->runs, run);
    const RunFlow* flow = flowOf(assessment, run, state);
    const plan::Run* drawn = assessment.plan.runs.find(run);
    if (!result || !drawn || !flows(flow))
        return std::nullopt;
    if (!flow->losses)
        return ofGravityFlow(assessment, *drawn, state);
    const auto start = gradeAt(assessment, drawn->from, state);
    const auto end = gradeAt(assessment, drawn->to, state);
    if (!start || !end)
        return std::nullopt;
    const bool forward = flow->flow > units::Flow();
    const units::Head head = units::liftBetween(forward ? *end : *start, forward ? *start : *end);
    if (head <= units::Head())
        return std::nullopt;
    Working working{"pipe-flow", "flow", {input("head", head)}, {}};
    addPipe(working, assessment, *result);
    return working;
}

std::optional<Working> workingOfRunLoss(const Assessment& assessment, base::Id run, RunningState state)
{
    const RunResult* result = find(assessment.flow->runs, run);
    const RunFlow* flow = flowOf(assessment, run, state);
    if (!result || !flows(flow) || !flow->losses)
        return std::nullopt;
    Working working{"pipe-friction", "head_loss", {input("flow", sizeOf(flow->flow))}, {}};
    addPipe(working, assessment, *result);
    return working;
}

std::optional<Working> workingOfDrain(const Assessment& assessment, base::Id run, RunningState state)
{
    const RunFlow* flow = flowOf(assessment, run, state);
    const RunResult* result = find(assessment.flow->runs, run);
    if (!flow || !result || !flow->open || !flow->open->flattest)
        return std::nullopt;
    const FlattestStretch& flattest = *flow->open->flattest;
    Working working{"sloping-drain", "full_flow", {}, {}};
    working.inputs = {input("bore", result->bore), input("fall", flattest.fall),
                      ratioInput("manning_n", flattest.manningN)};
    if (flattest.depth && flow->flow != units::Flow())
        working.inputs.push_back(input("flow", sizeOf(flow->flow)));
    else
        working.inputs.push_back(ratioInput("fill", 1.0));
    return working;
}

std::optional<Working> workingOfContent(const Assessment& assessment, base::Id run)
{
    const RunResult* result = find(assessment.flow->runs, run);
    if (!result || result->bore <= units::Length())
        return std::nullopt;
    return Working{"pipe-content", "volume", {input("bore", result->bore), input("length", result->length)}, {}};
}

std::optional<Working> workingOfSumK(const Assessment& assessment, base::Id run)
{
    const RunResult* result = find(assessment.flow->runs, run);
    if (!result || result->fittings.empty())
        return std::nullopt;
    ListText list;
    for (const FittingLoss& loss : result->fittings) {
        const std::string k = units::exactRatioText(loss.k);
        if (loss.count == 1)
            list.put(labelOf(loss), k);
        else if (loss.count > 1)
            list.put(labelOf(loss), std::to_string(loss.count) + "*" + k);
    }
    if (list.empty())
        return std::nullopt;
    return Working{"sum-k", "sum_k", {{"coefficients", list.text()}}, {}};
}

std::optional<Working> workingOfFitting(const Assessment& assessment, base::Id run, const FittingLoss& loss,
                                        RunningState state)
{
    const RunResult* result = find(assessment.flow->runs, run);
    const RunFlow* flow = flowOf(assessment, run, state);
    if (!result || loss.basis == LossBasis::overridden || loss.basis == LossBasis::none || loss.shut)
        return std::nullopt;
    if (loss.role == FittingRole::boreChange)
        return ofBoreChange(assessment, *result, loss);
    const auto kind = hydraulics::fittingFromId(loss.fittingId);
    if (!kind || result->bore <= units::Length())
        return std::nullopt;
    const bool byAngle = loss.basis == LossBasis::formula;
    const bool chosen = *kind == hydraulics::FittingKind::Elbow45; // by its angle: a part of the 90 degree elbow's K
    const auto elbow = byAngle && chosen ? hydraulics::FittingKind::Elbow90 : *kind;
    Working working{
        "fitting-loss", "k", {{"fitting", std::string(hydraulics::idOf(elbow))}, input("bore", result->bore)}, {}};
    if (flows(flow) && flow->losses)
        working.inputs.push_back(input("flow", sizeOf(flow->flow)));
    working.inputs.push_back(input("temperature", assessment.site->water));
    if (const double opening = openingOf(assessment, run, loss.element); opening < 1.0)
        working.inputs.push_back(ratioInput("opening", opening));
    if (byAngle)
        working.inputs.push_back(input("angle", loss.angle));
    if (loss.count > 1)
        working.inputs.push_back(ratioInput("count", loss.count));
    return working;
}

std::optional<Working> workingOfGrade(const Assessment& assessment, base::Id tee, RunningState state)
{
    const TeeResult* result = find(assessment.flow->tees, tee);
    if (!result || !result->grade[state])
        return std::nullopt;
    std::vector<const plan::Run*> way;
    std::optional<units::Elevation> start;
    units::Head gained;
    for (base::Id at = tee; !start;) {
        const plan::Run* feeder = feederOf(assessment, at, state);
        if (!feeder || way.size() > assessment.plan.runs.size())
            return std::nullopt;
        way.push_back(feeder);
        const bool forward = flowOf(assessment, feeder->id, state)->flow > units::Flow();
        const plan::RunEnd& source = forward ? feeder->from : feeder->to;
        if (const auto* next = std::get_if<plan::TeeEnd>(&source)) {
            at = next->tee;
            continue;
        }
        start = gradeAt(assessment, source, state);
        if (!start)
            return std::nullopt;
        if (const auto* pump = std::get_if<plan::PumpEnd>(&source)) {
            const plan::Pump* drawn = assessment.plan.pumps.find(pump->pump);
            gained = dutyOf(assessment, pump->pump, state)->head;
            start = waterOf(assessment, drawn->vessel, waterStateOf(state))->level;
        }
    }
    Working working{"grade-line", "grade", {input("start", *start), input("head_gained", gained)}, {}};
    ListText losses;
    for (auto run = way.rbegin(); run != way.rend(); ++run) {
        const RunFlow* flow = flowOf(assessment, (*run)->id, state);
        if (!flow->losses)
            return std::nullopt;
        losses.add(plan::tagOf(assessment.plan, (*run)->id), flow->losses->friction + flow->losses->fittings);
    }
    losses.into(working, "losses");
    return working;
}

} // namespace sumpwright::assessment

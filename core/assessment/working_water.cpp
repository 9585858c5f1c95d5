// Workings of water: levels, what comes in, what comes down, totals.
#include <cmath>

#include "core/assessment/working_parts.hpp"
#include "core/hydraulics/overflow.hpp"

namespace sumpwright::assessment
{
namespace
{

bool meets(const plan::RunEnd& end, base::Id vessel)
{
    const auto* port = std::get_if<plan::PortEnd>(&end);
    return port && port->vessel == vessel;
}

// The bore of a lip: its own, else that of the run that meets it; 0 where neither is known.
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

// Lip, flow and bore, where they alone give the level; otherwise the level as it is.
void addSurface(Working& working, const Assessment& assessment, const plan::Vessel& vessel, const VesselWater& water,
                const Stage<units::Flow>& over)
{
    const plan::Port* lip = plan::mainLip(vessel);
    const units::Length bore = lip ? boreOf(assessment, *lip) : units::Length();
    if (lip && water.heldBy == HeldBy::lip && over && *over > units::Flow()) {
        const auto head = hydraulics::overflowLevel({bore, lip->openFraction.value_or(1.0)}, *over);
        if (head.ok() && !lip->openFraction && lip->level + head->predicted == water.level) {
            working.inputs.push_back(input("lip", lip->level));
            working.inputs.push_back(input("flow", *over));
            working.inputs.push_back(input("bore", bore));
            return;
        }
    }
    working.inputs.push_back(input("level", water.level));
}

// The sump with every bed flooded, by the water that is left.
std::optional<Working> byBalance(const Assessment& assessment, const plan::Vessel& sump)
{
    const VesselResult* own = find(assessment.water->vessels, sump.id);
    const VesselWater* most = waterOf(assessment, sump.id, WaterState::runningMost);
    if (!own || !most)
        return std::nullopt;
    ListText drained, flooded;
    for (const VesselResult& vessel : assessment.water->vessels) {
        if (vessel.circuit != own->circuit || vessel.id == sump.id)
            continue;
        const std::string tag = plan::tagOf(assessment.plan, vessel.id);
        if (vessel.water[WaterState::runningMost])
            drained.add(tag, vessel.water[WaterState::runningMost]->volume);
        if (vessel.water[WaterState::runningLeast])
            flooded.add(tag, vessel.water[WaterState::runningLeast]->volume);
    }
    if (drained.empty() || flooded.empty())
        return std::nullopt;
    Working working{"sump-level", "level", {input("running_level", most->level)}, {}};
    addVessel(working, assessment, sump);
    working.inputs.push_back(input("rim", plan::rimLevel(sump)));
    drained.into(working, "drained");
    flooded.into(working, "flooded");
    return working;
}

std::string nameOf(const plan::Plan& plan, const Contribution& part)
{
    const std::string tag = plan::tagOf(plan, part.element);
    switch (part.kind) {
    case ComesDown::overLip:
        return tag + " over its lip";
    case ComesDown::pipe:
        return tag + " in the pipe";
    case ComesDown::gravityRun:
        return tag + " on its way";
    case ComesDown::siphonBack:
        return tag + " siphoned back";
    }
    return tag;
}

// What a run brings into a vessel; a gravity run that leaves it is no part of its inflow.
units::Flow broughtBy(const Assessment& assessment, const plan::Run& run, base::Id vessel, RunningState state)
{
    const RunFlow* flow = flowOf(assessment, run.id, state);
    if (!flow)
        return {};
    units::Flow brought;
    if (meets(run.to, vessel))
        brought += flow->flow;
    if (meets(run.from, vessel))
        brought -= flow->flow;
    const bool leaves = run.service == plan::Service::gravity && brought < units::Flow();
    return leaves ? units::Flow() : brought;
}

void addPipes(ListText& list, const Assessment& assessment, const WaterTotal& total)
{
    for (const RunContent& content : total.pipes)
        list.add(plan::tagOf(assessment.plan, content.run), content.volume);
}

} // namespace

std::optional<Working> workingOfWater(const Assessment& assessment, base::Id vessel, RunningState state)
{
    const VesselResult* result = find(assessment.water->vessels, vessel);
    const VesselWater* water = waterOf(assessment, vessel, waterStateOf(state));
    const plan::Vessel* drawn = assessment.plan.vessels.find(vessel);
    if (!result || !water || !drawn)
        return std::nullopt;
    if (water->heldBy == HeldBy::balance)
        return byBalance(assessment, *drawn);
    Working working{"vessel-water", "level", {}, {}};
    addVessel(working, assessment, *drawn);
    working.inputs.push_back(input("rim", plan::rimLevel(*drawn)));
    addSurface(working, assessment, *drawn, *water, result->leftOver(state));
    return working;
}

std::optional<Working> workingOfOverflow(const Assessment& assessment, base::Id vessel, RunningState state)
{
    const VesselResult* result = find(assessment.water->vessels, vessel);
    const plan::Vessel* drawn = assessment.plan.vessels.find(vessel);
    const plan::Port* lip = drawn ? plan::mainLip(*drawn) : nullptr;
    const auto over = result ? result->leftOver(state) : Stage<units::Flow>();
    if (!lip || !over || *over <= units::Flow())
        return std::nullopt;
    const units::Length bore = boreOf(assessment, *lip);
    if (bore <= units::Length())
        return std::nullopt;
    Working working{"overflow-level", "level_over_lip", {input("flow", *over), input("bore", bore)}, {}};
    if (lip->openFraction)
        working.inputs.push_back(ratioInput("open_fraction", *lip->openFraction));
    return working;
}

std::optional<Working> workingOfInflow(const Assessment& assessment, base::Id vessel, RunningState state)
{
    const VesselResult* result = find(assessment.water->vessels, vessel);
    if (!result || !result->inflow[state] || !result->pumpedOut[state])
        return std::nullopt;
    ListText in, out;
    units::Flow arrives, leaves;
    for (const auto& run : assessment.plan.runs) {
        const units::Flow brought = broughtBy(assessment, *run, vessel, state);
        if (brought > units::Flow()) {
            in.add(plan::tagOf(assessment.plan, run->id), brought);
            arrives += brought;
        } else if (brought < units::Flow()) {
            out.add(plan::tagOf(assessment.plan, run->id), -brought);
            leaves -= brought;
        }
    }
    for (const auto& pump : assessment.plan.pumps)
        if (const DutyPoint* duty = dutyOf(assessment, pump->id, state); duty && pump->vessel == vessel) {
            out.add(plan::tagOf(assessment.plan, pump->id), duty->flow);
            leaves += duty->flow;
        }
    const auto apart = [](units::Flow a, units::Flow b) { return std::abs(units::inCubicMetresPerSecond(a - b)); };
    const double off = apart(arrives, *result->inflow[state]) + apart(leaves, *result->pumpedOut[state]);
    if ((in.empty() && out.empty()) || off > 1e-9 * units::inCubicMetresPerSecond(arrives + leaves))
        return std::nullopt;
    Working working{"flow-balance", "comes_in", {}, {}};
    in.into(working, "coming_in");
    out.into(working, "going_out");
    return working;
}

std::optional<Working> workingOfPumpStop(const Assessment& assessment, base::Id sump)
{
    const SumpResult* result = find(assessment.sumps->sumps, sump);
    const plan::Vessel* drawn = assessment.plan.vessels.find(sump);
    if (!result || !result->pumpStop || !drawn)
        return std::nullopt;
    const PumpStop& stop = *result->pumpStop;
    ListText down;
    for (const Contribution& part : stop.contributions)
        down.add(nameOf(assessment.plan, part), part.volume);
    Working working{"pump-stop", "room_left", {input("running_level", stop.startLevel)}, {}};
    addVessel(working, assessment, *drawn);
    working.inputs.push_back(input("spill_level", stop.spillLevel));
    down.into(working, "coming_down");
    return working;
}

std::optional<Working> workingOfWaterTotal(const Assessment& assessment, WaterState state)
{
    const Stage<WaterTotal>& total = assessment.water->totals[state];
    if (!total)
        return std::nullopt;
    ListText vessels, pipes;
    for (const VesselResult& vessel : assessment.water->vessels)
        if (vessel.water[state])
            vessels.add(plan::tagOf(assessment.plan, vessel.id), vessel.water[state]->volume);
    addPipes(pipes, assessment, *total);
    if (vessels.empty() && pipes.empty())
        return std::nullopt;
    Working working{"water-total", "total", {}, {}};
    vessels.into(working, "vessels");
    pipes.into(working, "pipes");
    if (total->spilled > units::Volume())
        working.inputs.push_back(input("spilled", total->spilled));
    return working;
}

std::optional<Working> workingOfWaterIn(const Assessment& assessment, const std::vector<base::Id>& vessels,
                                        WaterState state)
{
    ListText list;
    for (const base::Id vessel : vessels)
        if (const VesselWater* water = waterOf(assessment, vessel, state))
            list.add(plan::tagOf(assessment.plan, vessel), water->volume);
    if (list.empty())
        return std::nullopt;
    return Working{"water-total", "in_vessels", {{"vessels", list.text()}}, {}};
}

std::optional<Working> workingOfWaterInPipes(const Assessment& assessment, WaterState state)
{
    const Stage<WaterTotal>& total = assessment.water->totals[state];
    ListText list;
    if (total)
        addPipes(list, assessment, *total);
    if (list.empty())
        return std::nullopt;
    return Working{"water-total", "in_pipes", {{"pipes", list.text()}}, {}};
}

} // namespace sumpwright::assessment

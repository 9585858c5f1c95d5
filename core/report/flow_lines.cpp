#include "core/report/line_parts.hpp"
#include "core/report/text_table.hpp"

namespace sumpwright::report
{
namespace
{

using namespace assessment;

std::string fittingName(const FittingLoss& fitting)
{
    switch (fitting.role) {
    case FittingRole::entry:
        return "entry";
    case FittingRole::exit:
        return "exit";
    case FittingRole::bend:
        return "bend";
    case FittingRole::teeRun:
        return "tee, straight through";
    case FittingRole::teeBranch:
        return "tee, branch";
    case FittingRole::boreChange:
        return "change of bore";
    case FittingRole::valve:
    case FittingRole::extra:
        return fitting.fittingId;
    }
    return {};
}

std::string stepName(const HeadStep& step, const Assessment& assessment)
{
    const std::string where = nameOf(assessment.plan, step.element);
    const RunResult* run = find(assessment.flow->runs, step.element);
    switch (step.kind) {
    case HeadStepKind::lift:
        return "lift to " + where;
    case HeadStepKind::friction:
        return where + ": friction";
    case HeadStepKind::fitting:
        return where + ": " + (run ? fittingName(run->fittings[step.fitting]) : std::string());
    case HeadStepKind::exit:
        return where + ": exit";
    }
    return {};
}

std::string dutyText(const DutyPoint& duty)
{
    std::string text = shown(duty.flow) + " at " + shown(duty.head) + ", " +
                       units::formatPercent(duty.shareOfBoxFigure) + " of the flow at no head";
    if (duty.beyondCurve)
        text += ", beyond its curve";
    if (!duty.power)
        return text + "; power " + whyMissing(duty.power);
    text += "; " + shown(duty.power->hydraulic) + " in the water of " + shown(duty.power->electrical) + " drawn (" +
            units::formatPercent(duty.power->wireToWater) + "), " +
            units::formatRatio(inLitresPerHourPerWatt(duty.power->flowPerPower)) + " L/h per W, " +
            shown(duty.power->energyPerYear) + " a year";
    return text;
}

std::string fillText(const OpenFlow& open)
{
    if (open.surcharged)
        return "full, under pressure";
    return units::formatPercent(open.fullest) + (open.backedUp ? ", mouth under water" : "");
}

std::string seasonLines(const PumpSeason& season, const SeasonResult& year, const std::string& name)
{
    const auto line = [&](YearEnd end, const char* walls) {
        const auto duty = [](const YearDuty& then) {
            return shown(then.flow) + " at " + shown(then.head) + ", estimate";
        };
        return name + ", " + walls + " pipes and water of " + shown(year.water[end]) + ": " +
               told(season.duty[end], duty) + "\n";
    };
    return line(YearEnd::fouledCold, "fouled") + line(YearEnd::newWarm, "new");
}

std::string pathLines(const Stage<HeadPath>& path, const Assessment& assessment)
{
    if (!path)
        return "  where the head goes: " + whyMissing(path) + "\n";
    TextTable table({"  where the head goes, to " + nameOf(assessment.plan, path->vessel), "head"});
    for (const HeadStep& step : path->steps)
        table.add({"  " + stepName(step, assessment), shown(step.head)});
    table.add({"  pump head", shown(path->pumpHead)});
    return table.lines();
}

} // namespace

std::string runLines(const Assessment& assessment)
{
    TextTable table(
        {"", "bore", "length", "sum K", "least flow", "most flow", "velocity", "fill", "friction", "fittings"});
    for (const RunResult& run : assessment.flow->runs) {
        const Stage<RunFlow>& least = run.flow[RunningState::least];
        const auto flow = [](const RunFlow& f) { return shown(f.flow) + (f.meanOfTide ? " mean" : ""); };
        const RunLosses* losses = least && least->losses ? &*least->losses : nullptr;
        const OpenFlow* open = least && least->open ? &*least->open : nullptr;
        const std::string velocity = losses                  ? shown(losses->velocity)
                                     : open && open->slowest ? shown(*open->slowest)
                                                             : "-";
        table.add({nameOf(assessment.plan, run.id),
                   units::format(run.bore, units::UnitSystem::metric, {}, {.unit = "mm"}), shown(run.length),
                   units::formatRatio(run.sumK), cell(least, flow), cell(run.flow[RunningState::most], flow), velocity,
                   open ? fillText(*open) : "-", losses ? shown(losses->friction) : "-",
                   losses ? shown(losses->fittings) : "-"});
    }
    return "Runs\n" + (table.empty() ? std::string("  none\n") : table.lines());
}

std::string pumpLines(const Assessment& assessment)
{
    std::string text = "Pumps\n";
    for (const PumpResult& pump : assessment.pumps->pumps) {
        const std::string name = "  " + nameOf(assessment.plan, pump.id);
        text += name + ", least flow: " + told(pump.duty[RunningState::least], dutyText) + "\n";
        text += name + ", most flow: " +
                told(pump.duty[RunningState::most],
                     [](const DutyPoint& duty) { return shown(duty.flow) + " at " + shown(duty.head); }) +
                "\n";
        const Stage<DutyPoint>& duty = pump.duty[RunningState::least];
        if (const PumpSeason* season = find(assessment.season->pumps, pump.id))
            text += seasonLines(*season, *assessment.season, name);
        if (duty && duty->power && duty->power->costPerYear)
            text += name + ", cost: " + units::formatRatio(units::inCurrency(*duty->power->costPerYear)) + " " +
                    assessment.plan.site->currency + " a year\n";
        if (const PumpHeadPath* path = find(assessment.headPaths->pumps, pump.id))
            text += pathLines(path->path, assessment);
    }
    return assessment.pumps->pumps.empty() ? text + "  none\n" : text;
}

std::string sumpLines(const Assessment& assessment)
{
    std::string text = "When the pump stops\n";
    for (const SumpResult& sump : assessment.sumps->sumps) {
        const std::string name = nameOf(assessment.plan, sump.id);
        if (!sump.pumpStop) {
            text += "  " + name + ": " + whyMissing(sump.pumpStop) + "\n";
            continue;
        }
        const PumpStop& stop = *sump.pumpStop;
        TextTable table({name, "volume"});
        table.add({"running, beds drained, at " + shown(stop.startLevel), shown(stop.startVolume)});
        for (const Contribution& part : stop.contributions) {
            const std::string from = nameOf(assessment.plan, part.element);
            const char* how = part.kind == ComesDown::overLip      ? "over the lip of "
                              : part.kind == ComesDown::siphonBack ? "siphoned back from "
                              : part.kind == ComesDown::pipe       ? "out of "
                                                                   : "half of ";
            table.add({how + from, shown(part.volume)});
        }
        table.add({"in the sump, at " + shown(stop.level), shown(stop.volume)});
        const bool spills = stop.spilled > units::Volume();
        table.add({spills ? "spills" : "room left", shown(spills ? stop.spilled : stop.roomLeft)});
        text += table.lines();
        if (stop.course)
            text += "  95 % of it is down after " + shown(stop.course->nearlyAll) +
                    (stop.course->spillsAfter ? "; it spills after " + shown(*stop.course->spillsAfter) : "") +
                    " (estimate)\n";
    }
    return assessment.sumps->sumps.empty() ? text + "  no sump\n" : text;
}

std::string floorLines(const Assessment& assessment)
{
    TextTable table({"", "beds flooded", "to the rim", "to the rim", "per leg", "under a pad"});
    for (const VesselLoad& vessel : assessment.floor->vessels) {
        const Stage<Load>& rim = vessel.in(LoadCase::toRim);
        table.add({nameOf(assessment.plan, vessel.id),
                   cell(vessel.in(LoadCase::bedsFlooded), [](const Load& l) { return shown(l.weight); }),
                   cell(rim, [](const Load& l) { return shown(l.weight); }),
                   cell(rim, [](const Load& l) { return shown(l.underFootprint); }),
                   rim && rim->perLeg ? shown(*rim->perLeg) : "-", rim && rim->underPad ? shown(*rim->underPad) : "-"});
    }
    const Stage<FloorTotal>& rim = assessment.floor->in(LoadCase::toRim);
    std::string text = "Floor (estimates; the slab is not counted)\n" + (table.empty() ? std::string() : table.lines());
    text +=
        "  all, to the rim: " +
        told(rim,
             [](const FloorTotal& total) {
                 return shown(total.weight) +
                        (total.meanOverFloor ? ", " + shown(*total.meanOverFloor) + " as a mean over the floor" : "");
             }) +
        "\n";
    if (const auto& comparison = assessment.floor->comparison)
        text += "  live load of " + comparison->use + " (" + comparison->code + "): " + shown(comparison->liveLoad) +
                "; the worst footprint is " + units::formatRatio(comparison->worstFootprintRatio, {}, 2) +
                " times that; " + shown(comparison->waterDepth) + " of water alone weigh as much\n";
    return text;
}

} // namespace sumpwright::report

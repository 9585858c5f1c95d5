#include "core/report/json_parts.hpp"

namespace sumpwright::report
{
namespace
{

using namespace assessment;

const char* wordFor(ComesDown kind)
{
    switch (kind) {
    case ComesDown::overLip:
        return "over_lip";
    case ComesDown::pipe:
        return "pipe";
    case ComesDown::gravityRun:
        return "gravity_run";
    case ComesDown::siphonBack:
        return "siphon_back";
    }
    return "";
}

const char* wordFor(HeadStepKind kind)
{
    switch (kind) {
    case HeadStepKind::lift:
        return "lift";
    case HeadStepKind::friction:
        return "friction";
    case HeadStepKind::fitting:
        return "fitting";
    case HeadStepKind::exit:
        return "exit";
    }
    return "";
}

void putCurve(JsonText& json, const std::vector<CurveSample>& samples)
{
    std::vector<JsonNumber> flows, heads;
    for (const CurveSample& sample : samples) {
        flows.push_back(jsonNumber(Amount(sample.flow)));
        heads.push_back(jsonNumber(Amount(sample.head)));
    }
    putSeries(json, "flow", flows);
    putSeries(json, "head", heads);
}

void putPower(JsonText& json, const PumpPower& power, const Assessment& assessment)
{
    put(json, "hydraulic_power", power.hydraulic);
    put(json, "electrical_power", power.electrical);
    put(json, "wire_to_water", power.wireToWater);
    put(json, "flow_per_power", power.flowPerPower);
    put(json, "energy_per_year", power.energyPerYear);
    if (power.costPerYear)
        put(json, "cost_per_year", jsonNumber(*power.costPerYear, assessment.plan.site->currency));
}

// Nothing where one unit stands.
void putUnits(JsonText& json, const plan::Pump& pump)
{
    switch (pump.arrangement) {
    case plan::PumpArrangement::one:
        return;
    case plan::PumpArrangement::twoParallel:
        json.word("arrangement", "two-parallel");
        return;
    case plan::PumpArrangement::twoInSeries:
        json.word("arrangement", "two-in-series");
        return;
    }
}

void putDuty(JsonText& json, const PumpResult& pump, RunningState state, const Assessment& assessment)
{
    putStage(json, keyOf(state), pump.duty[state], assessment.plan, [&](const DutyPoint& duty) {
        put(json, "flow", duty.flow);
        put(json, "head", duty.head);
        put(json, "share_of_box_figure", duty.shareOfBoxFigure);
        json.flag("beyond_curve", duty.beyondCurve);
        putStage(json, "power", duty.power, assessment.plan, [&](const PumpPower& power) {
            putPower(json, power, assessment);
            if (state == RunningState::least)
                putWorking(json, workingOfEnergy(assessment, pump.id));
        });
        putWorking(json, workingOfDutyPoint(assessment, pump.id, state));
    });
}

void putSeason(JsonText& json, const PumpSeason& season, const Assessment& assessment)
{
    json.beginObject("season");
    for (const YearEnd end : bothYearEnds)
        putStage(json, keyOf(end), season.duty[end], assessment.plan, [&](const YearDuty& duty) {
            put(json, "water_temperature", assessment.season->water[end]);
            put(json, "flow", duty.flow);
            put(json, "head", duty.head);
            putWorking(json, workingOfSeason(assessment, season.id, end));
        });
    json.endObject();
}

void putPath(JsonText& json, const Stage<HeadPath>& stage, const Assessment& assessment)
{
    putStage(json, "head_path", stage, assessment.plan, [&](const HeadPath& path) {
        put(json, "pump_head", path.pumpHead);
        put(json, "to_spare", path.toSpare);
        json.beginObject("ends_at");
        putElement(json, path.vessel, assessment.plan);
        json.endObject();
        json.beginList("steps");
        for (const HeadStep& step : path.steps) {
            json.beginObject();
            json.word("kind", wordFor(step.kind));
            putElement(json, step.element, assessment.plan);
            if (step.kind == HeadStepKind::fitting || step.kind == HeadStepKind::exit)
                json.number("fitting", static_cast<double>(step.fitting));
            put(json, "head", step.head);
            json.endObject();
        }
        json.endList();
    });
}

void putCourse(JsonText& json, const StopCourse& course)
{
    json.beginObject("course");
    put(json, "nearly_all", course.nearlyAll);
    if (course.spillsAfter)
        put(json, "spills_after", *course.spillsAfter);
    std::vector<JsonNumber> times, levels;
    for (const CoursePoint& point : course.sump) {
        times.push_back(jsonNumber(point.time));
        levels.push_back(jsonNumber(Amount(point.level)));
    }
    putSeries(json, "time", times);
    putSeries(json, "level", levels);
    json.endObject();
}

void putStop(JsonText& json, const PumpStop& stop, const plan::Plan& plan)
{
    put(json, "start_level", stop.startLevel);
    put(json, "start_volume", stop.startVolume);
    json.beginList("contributions");
    for (const Contribution& part : stop.contributions) {
        json.beginObject();
        json.word("kind", wordFor(part.kind));
        putElement(json, part.element, plan);
        put(json, "volume", part.volume);
        json.endObject();
    }
    json.endList();
    put(json, "level", stop.level);
    put(json, "volume", stop.volume);
    put(json, "spill_level", stop.spillLevel);
    put(json, "room_left", stop.roomLeft);
    put(json, "spilled", stop.spilled);
    if (stop.course)
        putCourse(json, *stop.course);
}

} // namespace

void putPumps(JsonText& json, const Assessment& assessment)
{
    json.beginList("pumps");
    for (const PumpResult& pump : assessment.pumps->pumps) {
        json.beginObject();
        json.number("id", static_cast<double>(pump.id.number));
        json.word("tag", plan::tagOf(assessment.plan, pump.id));
        if (const plan::Pump* drawn = assessment.plan.pumps.find(pump.id))
            putUnits(json, *drawn);
        json.beginObject("duty");
        for (const RunningState state : allRunningStates)
            putDuty(json, pump, state, assessment);
        json.endObject();
        if (!pump.pumpCurve.empty()) {
            put(json, "box_figure", pump.boxFigure);
            put(json, "shut_off", pump.shutOff);
            json.beginObject("pump_curve");
            putCurve(json, pump.pumpCurve);
            json.endObject();
        }
        putStage(json, "system_curve", pump.systemCurve, assessment.plan,
                 [&json](const std::vector<CurveSample>& samples) { putCurve(json, samples); });
        if (const PumpSeason* season = find(assessment.season->pumps, pump.id))
            putSeason(json, *season, assessment);
        if (const PumpHeadPath* path = find(assessment.headPaths->pumps, pump.id))
            putPath(json, path->path, assessment);
        json.endObject();
    }
    json.endList();
}

void putSumps(JsonText& json, const Assessment& assessment)
{
    json.beginList("sumps");
    for (const SumpResult& sump : assessment.sumps->sumps) {
        json.beginObject();
        json.number("id", static_cast<double>(sump.id.number));
        json.word("tag", plan::tagOf(assessment.plan, sump.id));
        putStage(json, "cover", sump.cover, assessment.plan, [&](const std::vector<PumpCover>& covers) {
            json.beginList("pumps");
            for (const PumpCover& cover : covers) {
                json.beginObject();
                putElement(json, cover.pump, assessment.plan);
                put(json, "depth", cover.depth);
                if (cover.needed)
                    put(json, "needed", *cover.needed);
                json.endObject();
            }
            json.endList();
        });
        putStage(json, "pump_stop", sump.pumpStop, assessment.plan,
                 [&](const PumpStop& stop) { putStop(json, stop, assessment.plan); });
        json.endObject();
    }
    json.endList();
}

} // namespace sumpwright::report

#include "core/report/json_parts.hpp"

namespace sumpwright::report
{
namespace
{

using namespace assessment;

const char* wordFor(FittingRole role)
{
    switch (role) {
    case FittingRole::entry:
        return "entry";
    case FittingRole::exit:
        return "exit";
    case FittingRole::bend:
        return "bend";
    case FittingRole::teeRun:
        return "tee_run";
    case FittingRole::teeBranch:
        return "tee_branch";
    case FittingRole::boreChange:
        return "bore_change";
    case FittingRole::valve:
        return "valve";
    case FittingRole::extra:
        return "extra";
    }
    return "";
}

const char* wordFor(FittingPlace place)
{
    switch (place) {
    case FittingPlace::start:
        return "start";
    case FittingPlace::vertex:
        return "vertex";
    case FittingPlace::station:
        return "station";
    case FittingPlace::end:
        return "end";
    case FittingPlace::alongRun:
        return "along_run";
    }
    return "";
}

const char* wordFor(LossBasis basis)
{
    switch (basis) {
    case LossBasis::catalogue:
        return "catalogue";
    case LossBasis::formula:
        return "formula";
    case LossBasis::overridden:
        return "overridden";
    case LossBasis::none:
        return "none";
    }
    return "";
}

const char* wordFor(FlowRegime regime)
{
    switch (regime) {
    case FlowRegime::still:
        return "still";
    case FlowRegime::laminar:
        return "laminar";
    case FlowRegime::transition:
        return "transition";
    case FlowRegime::turbulent:
        return "turbulent";
    }
    return "";
}

void putFitting(JsonText& json, const FittingLoss& fitting)
{
    json.beginObject();
    json.word("role", wordFor(fitting.role));
    json.word("place", wordFor(fitting.place));
    if (fitting.place == FittingPlace::vertex)
        json.number("vertex", static_cast<double>(fitting.vertex));
    if (fitting.place == FittingPlace::station)
        json.number("station", fitting.station);
    if (fitting.element.valid())
        json.number("element", static_cast<double>(fitting.element.number));
    if (!fitting.fittingId.empty())
        json.word("fitting", fitting.fittingId);
    if (fitting.role == FittingRole::bend)
        put(json, "angle", fitting.angle);
    json.number("k", fitting.k);
    json.number("count", fitting.count);
    json.word("basis", wordFor(fitting.basis));
    if (!fitting.source.empty())
        json.word("source", fitting.source);
    if (fitting.shut)
        json.flag("shut", true);
    if (fitting.oneWay)
        json.flag("one_way", true);
    json.endObject();
}

void putLosses(JsonText& json, const RunLosses& losses)
{
    put(json, "velocity", losses.velocity);
    put(json, "reynolds", losses.reynolds);
    put(json, "friction_factor", losses.frictionFactor);
    json.word("regime", wordFor(losses.regime));
    put(json, "velocity_head", losses.velocityHead);
    put(json, "friction_loss", losses.friction);
    put(json, "fitting_loss", losses.fittings);
}

void putOpen(JsonText& json, const OpenFlow& open, const Assessment& assessment, base::Id run, RunningState state)
{
    json.beginObject("open");
    put(json, "level_needed", open.levelNeeded);
    json.number("fullest", open.fullest);
    json.flag("surcharged", open.surcharged);
    json.flag("backed_up", open.backedUp);
    if (open.slowest)
        put(json, "slowest", *open.slowest);
    if (open.flattest) {
        json.beginObject("flattest");
        json.number("stretch", static_cast<double>(open.flattest->stretch));
        put(json, "fall", open.flattest->fall);
        json.number("manning_n", open.flattest->manningN);
        put(json, "full_flow", open.flattest->fullFlow);
        if (open.flattest->depth)
            put(json, "depth", *open.flattest->depth);
        json.endObject();
    }
    json.beginList("stretches");
    for (const hydraulics::ReachWater& water : open.stretches) {
        json.beginObject();
        put(json, "start_depth", water.startDepth);
        put(json, "end_depth", water.endDepth);
        put(json, "start_grade", water.startGrade);
        put(json, "end_grade", water.endGrade);
        json.endObject();
    }
    json.endList();
    putWorking(json, workingOfDrain(assessment, run, state));
    json.endObject();
}

void putRun(JsonText& json, const RunResult& run, const Assessment& assessment)
{
    const plan::Run* drawn = assessment.plan.runs.find(run.id);
    json.beginObject();
    json.number("id", static_cast<double>(run.id.number));
    json.word("tag", drawn ? drawn->tag : std::string());
    json.word("service", run.service == plan::Service::pressure ? "pressure" : "gravity");
    put(json, "length", run.length);
    put(json, "bore", run.bore);
    put(json, "roughness", run.roughness);
    if (run.corrugatedFactor > 0.0)
        put(json, "corrugated_factor", run.corrugatedFactor);
    put(json, "content", run.content);
    put(json, "sum_k", run.sumK);
    json.beginList("fittings");
    for (const FittingLoss& fitting : run.fittings)
        putFitting(json, fitting);
    json.endList();
    json.beginObject("flow");
    for (const RunningState state : allRunningStates)
        putStage(json, keyOf(state), run.flow[state], assessment.plan, [&](const RunFlow& flow) {
            put(json, "flow", flow.flow);
            if (flow.meanOfTide)
                json.flag("mean_of_tide", true);
            if (flow.losses)
                putLosses(json, *flow.losses);
            if (flow.open)
                putOpen(json, *flow.open, assessment, run.id, state);
            putWorking(json, workingOfRunLoss(assessment, run.id, state));
        });
    json.endObject();
    if (const RunSeason* season = find(assessment.season->runs, run.id)) {
        json.beginObject("season");
        for (const YearEnd end : bothYearEnds)
            putValueStage(json, keyOf(end), season->flow[end], assessment.plan);
        json.endObject();
    }
    json.endObject();
}

} // namespace

void putRuns(JsonText& json, const Assessment& assessment)
{
    json.beginList("runs");
    for (const RunResult& run : assessment.flow->runs)
        putRun(json, run, assessment);
    json.endList();
    json.beginList("tees");
    for (const TeeResult& tee : assessment.flow->tees) {
        json.beginObject();
        json.number("id", static_cast<double>(tee.id.number));
        json.word("tag", plan::tagOf(assessment.plan, tee.id));
        json.beginObject("grade");
        for (const RunningState state : allRunningStates)
            putValueStage(json, keyOf(state), tee.grade[state], assessment.plan);
        json.endObject();
        json.endObject();
    }
    json.endList();
}

} // namespace sumpwright::report

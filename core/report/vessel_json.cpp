#include "core/report/json_parts.hpp"

namespace sumpwright::report
{
namespace
{

using namespace assessment;

const char* wordFor(HeldBy heldBy)
{
    switch (heldBy) {
    case HeldBy::lip:
        return "lip";
    case HeldBy::sideOutlet:
        return "side_outlet";
    case HeldBy::drainLevel:
        return "drain_level";
    case HeldBy::entry:
        return "entry";
    case HeldBy::balance:
        return "balance";
    case HeldBy::siphonBack:
        return "siphon_back";
    case HeldBy::rim:
        return "rim";
    }
    return "";
}

const char* wordFor(Trust trust)
{
    switch (trust) {
    case Trust::measured:
        return "measured";
    case Trust::catalogue:
        return "catalogue";
    case Trust::assumed:
        return "assumed";
    }
    return "";
}

const char* wordFor(plan::VesselKind kind)
{
    switch (kind) {
    case plan::VesselKind::fishTank:
        return "fish_tank";
    case plan::VesselKind::sump:
        return "sump";
    case plan::VesselKind::mediaBed:
        return "media_bed";
    case plan::VesselKind::raftBed:
        return "raft_bed";
    case plan::VesselKind::settler:
        return "settler";
    }
    return "";
}

void putWater(JsonText& json, const VesselResult& vessel, const plan::Plan& plan)
{
    json.beginObject("water");
    for (const WaterState state : allWaterStates)
        putStage(json, keyOf(state), vessel.water[state], plan, [&json](const VesselWater& water) {
            put(json, "level", water.level);
            put(json, "volume", water.volume);
            put(json, "depth", water.depth);
            put(json, "free_board", water.freeBoard);
            put(json, "over_lip", water.overLip);
            json.word("held_by", wordFor(water.heldBy));
        });
    json.endObject();
}

void putLoads(JsonText& json, const VesselLoad& vessel, const Assessment& assessment)
{
    json.beginObject("load");
    put(json, "footprint", vessel.footprint);
    json.word("tare_from", wordFor(vessel.tareFrom));
    if (vessel.mediumFrom)
        json.word("medium_from", wordFor(*vessel.mediumFrom));
    if (vessel.standFrom)
        json.word("stand_from", wordFor(*vessel.standFrom));
    for (const LoadCase which : allLoadCases)
        putStage(json, keyOf(which), vessel.in(which), assessment.plan, [&](const Load& load) {
            put(json, "water", load.water);
            put(json, "medium", load.medium);
            put(json, "tare", load.tare);
            put(json, "stand", load.stand);
            put(json, "total", load.total);
            put(json, "weight", load.weight);
            put(json, "under_footprint", load.underFootprint);
            if (load.perLeg)
                put(json, "per_leg", *load.perLeg);
            if (load.underPad)
                put(json, "under_pad", *load.underPad);
            putWorking(json, workingOfMass(assessment, vessel.id, which));
        });
    json.endObject();
}

} // namespace

void putVessels(JsonText& json, const Assessment& assessment)
{
    json.beginList("vessels");
    for (const VesselResult& vessel : assessment.water->vessels) {
        const plan::Vessel* drawn = assessment.plan.vessels.find(vessel.id);
        if (!drawn)
            continue;
        json.beginObject();
        json.number("id", static_cast<double>(vessel.id.number));
        json.word("tag", drawn->tag);
        json.word("kind", wordFor(drawn->kind));
        putWater(json, vessel, assessment.plan);
        json.beginObject("inflow");
        for (const RunningState state : allRunningStates)
            putValueStage(json, keyOf(state), vessel.inflow[state], assessment.plan);
        json.endObject();
        json.beginObject("pumped_out");
        for (const RunningState state : allRunningStates)
            putValueStage(json, keyOf(state), vessel.pumpedOut[state], assessment.plan);
        json.endObject();
        if (const auto working = workingOfOverflow(assessment, vessel.id, RunningState::most)) {
            json.beginObject("overflow");
            putWorking(json, working);
            json.endObject();
        }
        if (const VesselLoad* load = find(assessment.floor->vessels, vessel.id))
            putLoads(json, *load, assessment);
        json.endObject();
    }
    json.endList();
}

void putFloor(JsonText& json, const Assessment& assessment)
{
    json.beginObject("floor");
    for (const LoadCase which : allLoadCases)
        putStage(json, keyOf(which), assessment.floor->in(which), assessment.plan, [&](const FloorTotal& total) {
            put(json, "mass", total.mass);
            put(json, "weight", total.weight);
            if (total.meanOverFloor)
                put(json, "mean_over_floor", *total.meanOverFloor);
            put(json, "worst_footprint", total.worstFootprint);
            if (total.worstVessel.valid()) {
                json.beginObject("worst_vessel");
                putElement(json, total.worstVessel, assessment.plan);
                json.endObject();
            }
        });
    if (const auto& comparison = assessment.floor->comparison) {
        json.beginObject("comparison");
        json.word("use_id", comparison->useId);
        json.word("use", comparison->use);
        json.word("code", comparison->code);
        json.word("source", comparison->source);
        put(json, "live_load", comparison->liveLoad);
        put(json, "worst_footprint_ratio", comparison->worstFootprintRatio);
        if (comparison->meanRatio)
            put(json, "mean_ratio", *comparison->meanRatio);
        put(json, "water_depth", comparison->waterDepth);
        json.endObject();
    }
    json.endObject();
}

} // namespace sumpwright::report

#include "core/assessment/loads.hpp"

#include <algorithm>
#include <cmath>

#include "core/assessment/rows.hpp"
#include "core/floor/load_total.hpp"
#include "core/floor/masses.hpp"
#include "core/water/vessel_volume.hpp"

namespace sumpwright::assessment
{
namespace
{

// Assumptions of our own, nothing published behind them; a weighed mass replaces them.
constexpr units::Length blockHeight = units::millimetres(190.0); // hollow concrete block 390 x 190 x 190 mm
constexpr units::Mass blockMass = units::kilograms(17.0);        // 16 to 18 kg, from memory
constexpr double legStandShare = 0.05;                           // of the brim-full mass it carries
constexpr const char* cagedRow = "caged-1000";

struct Parts { // of one vessel, whatever its water
    units::Area inside;
    units::Mass tare;
    Trust tareFrom = Trust::assumed;
    std::optional<floor::MediumFilling> filling;
    units::Length mediumDepth;
    Trust mediumFrom = Trust::catalogue;
};

units::Length insideHeight(const plan::Vessel& vessel) { return plan::rimLevel(vessel) - plan::insideBottom(vessel); }

void takeTare(Parts& parts, const plan::Vessel& vessel, const catalogue::Catalogue& tables)
{
    const auto* caged = rowOf(tables.vessels(), cagedRow);
    if (vessel.measuredTare) {
        parts.tare = *vessel.measuredTare;
        parts.tareFrom = Trust::measured;
    } else if (std::holds_alternative<plan::CagedShape>(vessel.shape) && caged) {
        parts.tare = caged->emptyMass.typical;
        parts.tareFrom = Trust::catalogue;
    } else {
        parts.tare = floor::estimatedTare(parts.inside * insideHeight(vessel));
    }
}

Parts partsOf(const plan::Vessel& vessel, const catalogue::Catalogue& tables)
{
    Parts parts;
    parts.inside = plan::insideArea(vessel);
    takeTare(parts, vessel, tables);
    if (!vessel.medium)
        return parts;
    parts.mediumDepth = std::min(vessel.medium->depth, insideHeight(vessel));
    if (const auto* row = rowOf(tables.media(), vessel.medium->mediumId))
        parts.filling =
            floor::MediumFilling{row->dryDensity.high, row->absorption.high, row->porosity.high, row->retained.high};
    return parts;
}

void takeWater(Load& load, const Parts& parts, units::Length depth)
{
    if (!parts.filling) {
        load.water = floor::waterMass(parts.inside * depth);
        return;
    }
    const units::Length flooded = std::min(depth, parts.mediumDepth);
    load.water = floor::waterMass(parts.inside * (depth - flooded)) +
                 parts.filling->porosity * floor::waterMass(parts.inside * flooded);
    load.medium = floor::bedMass(parts.inside, parts.mediumDepth, depth, *parts.filling) - load.water;
}

units::Mass assumedStand(const plan::Stand& stand, units::Length height, units::Mass carried)
{
    switch (stand.kind) {
    case plan::StandKind::flat:
        return {};
    case plan::StandKind::legs:
        return legStandShare * carried;
    case plan::StandKind::blocks:
        return blockMass * static_cast<double>(stand.legCount) * std::ceil(std::max(height / blockHeight - 1e-9, 0.0));
    }
    return {};
}

units::Mass standMass(const plan::Vessel& vessel, const Parts& parts, const plan::Floor& floor)
{
    if (!vessel.stand)
        return {};
    if (vessel.stand->mass)
        return *vessel.stand->mass;
    Load full;
    takeWater(full, parts, insideHeight(vessel));
    const units::Length height = vessel.baseLevel - plan::levelAt(floor, vessel.centre);
    return assumedStand(*vessel.stand, height, full.water + full.medium + parts.tare);
}

Load loadOf(const plan::Vessel& vessel, const Parts& parts, units::Length depth, units::Mass stand)
{
    Load load;
    takeWater(load, parts, depth);
    load.tare = parts.tare;
    load.stand = stand;
    load.total = load.water + load.medium + load.tare + load.stand;
    load.weight = units::weightOf(load.total);
    load.underFootprint = floor::pressureUnder(load.total, plan::outsideArea(vessel));
    if (vessel.stand && vessel.stand->kind != plan::StandKind::flat && vessel.stand->legCount > 0) {
        load.perLeg = load.weight / static_cast<double>(vessel.stand->legCount);
        const units::Length side = vessel.stand->padSide;
        if (side > units::Length())
            load.underPad = units::spreadOver(*load.perLeg, side * side);
    }
    return load;
}

VesselLoad vesselLoadOf(const plan::Vessel& vessel, const LoadInput& input)
{
    const Parts parts = partsOf(vessel, *input.catalogue);
    VesselLoad result;
    result.id = vessel.id;
    result.footprint = plan::outsideArea(vessel);
    result.tareFrom = parts.tareFrom;
    if (vessel.medium)
        result.mediumFrom = parts.mediumFrom;
    if (vessel.stand && vessel.stand->kind != plan::StandKind::flat)
        result.standFrom = vessel.stand->mass ? Trust::measured : Trust::assumed;
    const units::Mass stand = standMass(vessel, parts, *input.floor);
    for (const LoadCase which : allLoadCases) {
        const WaterState state = which == LoadCase::toRim ? WaterState::toRim : WaterState::runningLeast;
        const VesselResult* water = find(input.water->vessels, vessel.id);
        Stage<Load>& load = result.load[static_cast<std::size_t>(which)];
        if (water && water->water[state])
            load = loadOf(vessel, parts, water->water[state]->depth, stand);
        else if (water)
            load = Stage<Load>::missingAs(water->water[state]);
    }
    return result;
}

Stage<FloorTotal> totalOf(const std::vector<VesselLoad>& vessels, LoadCase which, units::Area floorArea)
{
    std::vector<floor::StandingMass> masses;
    for (const VesselLoad& vessel : vessels) {
        const Stage<Load>& load = vessel.in(which);
        if (!load)
            return Stage<FloorTotal>::missingAs(load);
        masses.push_back({load->total, vessel.footprint});
    }
    const floor::LoadTotal total = floor::totalLoad(masses, floorArea);
    return FloorTotal{total.mass, total.weight, total.meanOverFloor, total.worst,
                      vessels.empty() ? base::Id{} : vessels[total.worstAt].id};
}

std::optional<LiveLoadComparison> comparisonOf(const FloorResult& result, const LoadInput& input)
{
    const auto* row = rowOf(input.catalogue->liveLoads(), input.floorUse);
    const Stage<FloorTotal>& total = result.in(LoadCase::toRim);
    if (!row || !total)
        return std::nullopt;
    LiveLoadComparison comparison;
    comparison.useId = row->id;
    comparison.use = row->use;
    comparison.code = row->code;
    comparison.source = row->provenance.source;
    comparison.liveLoad = row->uniform;
    const auto ratios = floor::compareWithLiveLoad(total->worstFootprint, total->meanOverFloor, row->uniform);
    comparison.worstFootprintRatio = ratios.worst;
    comparison.meanRatio = ratios.mean;
    comparison.waterDepth = ratios.waterDepth;
    return comparison;
}

} // namespace

bool operator==(const LoadInput& a, const LoadInput& b)
{
    return a.vessels == b.vessels && (a.floor == b.floor || *a.floor == *b.floor) && a.floorUse == b.floorUse &&
           a.catalogue == b.catalogue && a.water == b.water;
}

FloorResult floorResultOf(const LoadInput& input)
{
    FloorResult result;
    for (const auto& vessel : input.vessels)
        if (plan::insideArea(*vessel) > units::Area())
            result.vessels.push_back(vesselLoadOf(*vessel, input));
    const units::Area area = input.floor->outline.empty() ? units::Area() : plan::areaOf(*input.floor);
    for (const LoadCase which : allLoadCases)
        result.total[static_cast<std::size_t>(which)] = totalOf(result.vessels, which, area);
    result.comparison = comparisonOf(result, input);
    return result;
}

} // namespace sumpwright::assessment

// Water levels and volumes of every vessel in every state, and the totals of the plan.
// Levels m above datum; volumes of free water: pores of the medium count, water inside its grains does not.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/assessment/stage.hpp"
#include "core/assessment/states.hpp"
#include "core/units/measures.hpp"

namespace sumpwright::assessment
{

// What holds the water at its level.
enum class HeldBy {
    lip,        // overflow or standpipe, with the head that its flow needs
    sideOutlet, // outlet through the wall, with the depth that its flow needs
    drainLevel, // bell siphon, emptied
    entry,      // sump: the level the person entered
    balance,    // sump: what is left when the water is conserved
    siphonBack, // emptied down to a submerged inlet or its vent hole
    rim,        // brim full, or spilling
};

struct VesselWater {
    units::Elevation level;
    units::Volume volume;
    units::Length depth;     // over the inside bottom
    units::Length freeBoard; // rim minus level
    units::Length overLip;   // height of the water over the lip or invert that holds it; 0 where none does
    HeldBy heldBy = HeldBy::lip;

    friend bool operator==(const VesselWater&, const VesselWater&) = default;
};

struct VesselResult {
    base::Id id;
    std::size_t circuit = 0; // number of the body of water it belongs to: runs and pumps join its vessels
    PerWaterState<Stage<VesselWater>> water;
    PerRunningState<Stage<units::Flow>> inflow;    // all that comes in, pumped and by gravity
    PerRunningState<Stage<units::Flow>> pumpedOut; // what its pumps, and pressure runs that start in it, take out
    // What is left of the two and has to leave by lips and outlets; in a sump nothing, save for what rounding makes.
    Stage<units::Flow> leftOver(RunningState state) const;

    friend bool operator==(const VesselResult&, const VesselResult&) = default;
};

struct RunContent {
    base::Id run;
    units::Volume volume; // what stands or flows in it
    friend bool operator==(const RunContent&, const RunContent&) = default;
};

struct WaterTotal {
    units::Volume inVessels;
    units::Volume inPipes;
    std::vector<RunContent> pipes; // those that hold water; they sum to inPipes
    units::Volume spilled;         // lost over a rim or an overflow that leads nowhere
    std::vector<base::Id> leftOut; // vessels whose level is not known, not counted
    units::Volume all() const { return inVessels + inPipes + spilled; }

    friend bool operator==(const WaterTotal&, const WaterTotal&) = default;
};

struct WaterResult {
    std::vector<VesselResult> vessels; // by id
    PerWaterState<Stage<WaterTotal>> totals;

    friend bool operator==(const WaterResult&, const WaterResult&) = default;
};

} // namespace sumpwright::assessment

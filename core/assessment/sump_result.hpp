// What a sump must hold and keep: what comes down when the pump stops, and the least depth over the pump.
// Starts at the highest running level with all beds drained. A non-return valve alone is no guard: it counts as
// stuck open. Pressure runs are full and empty down to that level; gravity runs count half full (estimate, design
// fill of en-12056-2). A submerged inlet empties its vessel to its mouth or vent, or until levels meet.
#pragma once

#include <optional>
#include <vector>

#include "core/assessment/stage.hpp"
#include "core/assessment/stop_course.hpp"
#include "core/units/measures.hpp"

namespace sumpwright::assessment
{

enum class ComesDown {
    overLip,    // what stands above a lip or invert because water flows over it
    pipe,       // content of a pressure run above the sump's water
    gravityRun, // on its way in a gravity run
    siphonBack, // a vessel emptied through its submerged inlet
};

struct Contribution {
    ComesDown kind = ComesDown::overLip;
    base::Id element; // vessel or run
    base::Id port;    // lip, or submerged inlet; none for runs
    units::Volume volume;

    friend bool operator==(const Contribution&, const Contribution&) = default;
};

struct PumpStop {
    units::Elevation startLevel;
    units::Volume startVolume;
    std::vector<Contribution> contributions; // start volume + all contributions = volume + spilled
    units::Elevation level;
    units::Volume volume;
    units::Elevation spillLevel;      // rim, or the sump's own overflow where that is lower
    units::Volume roomLeft;           // up to the spill level; negative: that much spills
    units::Volume spilled;            // 0 or more, at this sump
    std::optional<StopCourse> course; // absent while no pump runs

    friend bool operator==(const PumpStop&, const PumpStop&) = default;
};

struct PumpCover {
    base::Id pump;
    units::Length depth;                 // water over the sump's inside bottom, least-flow state
    std::optional<units::Length> needed; // least depth the pump asks for
    friend bool operator==(const PumpCover&, const PumpCover&) = default;
};

struct SumpResult {
    base::Id id; // the sump
    Stage<std::vector<PumpCover>> cover;
    Stage<PumpStop> pumpStop;

    friend bool operator==(const SumpResult&, const SumpResult&) = default;
};

struct SumpResults {
    std::vector<SumpResult> sumps; // by id
    friend bool operator==(const SumpResults&, const SumpResults&) = default;
};

} // namespace sumpwright::assessment

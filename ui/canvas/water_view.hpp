// WaterView: the results the drawing shows - water levels, volumes and flows by element - and whether they are current.
// What is absent is not drawn; nothing is guessed here.
#pragma once

#include <optional>
#include <unordered_map>

#include "core/assessment/assessment.hpp"
#include "core/base/id.hpp"
#include "core/units/measures.hpp"
#include "ui/canvas/run_colours.hpp"

namespace sumpwright::ui::canvas
{

struct VesselWater {
    units::Elevation level;
    units::Volume volume;
    friend bool operator==(const VesselWater&, const VesselWater&) = default;
};

struct WaterView {
    std::unordered_map<base::Id, VesselWater> vessels; // while running, least flow
    std::unordered_map<base::Id, units::Flow> runs;    // positive: from `from` to `to`
    std::unordered_map<base::Id, units::Flow> pumps;
    std::unordered_map<base::Id, bool> tidal;         // runs led on by a bell siphon: the flow is a mean
    std::unordered_map<base::Id, RunFigures> figures; // runs that carry water or have a grade
    bool stale = false;                               // computed from an older plan than the one drawn

    const VesselWater* vessel(base::Id id) const;
    std::optional<units::Flow> run(base::Id id) const;
    std::optional<units::Flow> pump(base::Id id) const;
    const RunFigures* figuresOf(base::Id run) const; // null: nothing known
};

// The least-flow state: the one the drawing shows. Stages without a value are left out.
WaterView waterViewOf(const assessment::Assessment& assessment, bool stale);

} // namespace sumpwright::ui::canvas

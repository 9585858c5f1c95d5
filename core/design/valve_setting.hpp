// Setting the valves: openings of the throttling valves that give each outlet its target flow with the least head
// burned, in the state the drawing shows (least flow).
//
// Every valve on the way is opened wide; what head is then to spare at an outlet is burned in one valve on its way,
// as far upstream as it serves every outlet behind. So the way to the neediest outlet stays wide open where an
// outlet without a target takes the rest, where the targets are the most the pump gives, or where its speed may be
// turned down; else the smallest surplus is burned once. The setting is found on the real network, levels re-solved,
// and offered only when a fresh assessment of the plan shows each flow within 0.5 % of its aim. A bypass back into
// the sump, a ring, a valve with a typed K and a shut valve on a branch without a target are left as drawn.
// Valid: as the valve tables (weisbach-valves); plastic ball valves differ by 30 % either way, told as a band.
#pragma once

#include <optional>
#include <vector>

#include "core/assessment/states.hpp"
#include "core/base/outcome.hpp"
#include "core/base/stop.hpp"
#include "core/design/bench.hpp"
#include "core/design/outlet.hpp"
#include "core/design/throttles.hpp"
#include "core/plan/edits/edit.hpp"

namespace sumpwright::design
{

struct ValveQuestion {
    bool mayChangeSpeed = false; // of the pump, where one pump feeds the circuit
};

enum class Aim {
    target,      // gets its target
    share,       // gets the share all others get too
    rest,        // no target: takes what is left
    shut,        // target 0, its valve shut
    noValve,     // takes more than its target: no valve on its way can hold it back
    unreachable, // no water comes to it
    leftAlone,   // a bypass into the sump without a target
};

struct OutletSetting {
    Outlet outlet;
    Aim aim = Aim::rest;
    units::Flow wanted; // what the setting aims at: target or share of it; 0 for the rest
    assessment::PerRunningState<std::optional<units::Flow>> before;
    assessment::PerRunningState<std::optional<units::Flow>> after;
    bool wideOpen = false; // no valve on its way is throttled
    units::Head spare;     // noValve: the head a valve would have to burn
};

// A valve the setting moves or throttles.
struct ValveOpening {
    plan::ValveRef valve;
    hydraulics::ThrottleKind kind = hydraulics::ThrottleKind::Ball;
    double before = 1.0; // opening, 1 open ... 0 shut
    double after = 1.0;
    double added = 0.0; // K on top of the open valve's
    units::Head burned;
    units::Flow flow;
    double leastAfter = 1.0; // the opening should the valve's K lie 30 % lower or higher: ball valves; else as after
    double mostAfter = 1.0;
};

struct SpeedChange {
    base::Id pump;
    double before = 1.0;
    double after = 1.0;
};

struct ValveSetting {
    assessment::RunningState state = assessment::RunningState::least; // in which the flows are aimed at
    std::vector<OutletSetting> outlets;
    std::vector<ValveOpening> valves;
    units::Flow asked;   // sum of all targets
    units::Flow reached; // of those, with this setting
    double share = 1.0;  // of the targets that can be met, the least of all circuits
    double restShare = 1.0;
    units::Head missing;              // at the neediest outlet for all targets in full
    std::optional<SpeedChange> speed; // that would give all targets: part of the edit only if leave was given
    double largestMiss = 0.0;         // |flow - aim| / aim, of all that are aimed at
    int rounds = 0;
    std::optional<plan::Edit> edit; // none: nothing to change
};

constexpr double valveTolerance = 0.005; // of each flow aimed at

// Refusals: "design.no-pressure-outlet", "design.no-target", "design.not-solved" (place: the reason's element),
// "design.no-target-reached", "design.not-settled". Throws base::Stopped when asked to stop.
base::Outcome<ValveSetting> setValves(const plan::Plan& plan, const CataloguePointer& catalogue,
                                      const ValveQuestion& question = {}, const base::StopToken& stop = {});

// The angle of a quarter-turn valve's handle from open; of a gate, 1 - opening is the part of its turns.
units::Angle handleFromOpen(double opening);

} // namespace sumpwright::design

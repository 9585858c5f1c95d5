// What each pipe run carries and loses. Flow positive from `from` to `to`; losses positive in the direction of flow.
// Pressure runs: from the network, both states. Gravity runs: what their vessel receives when one outlet leads it
// on; a bell siphon's run shows the mean of its tide. Sources: colebrook-1939, per fitting in the list.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/assessment/open_flow.hpp"
#include "core/assessment/stage.hpp"
#include "core/assessment/states.hpp"
#include "core/plan/run.hpp"
#include "core/units/measures.hpp"

namespace sumpwright::assessment
{

enum class FittingRole { entry, exit, bend, teeRun, teeBranch, boreChange, valve, extra };
enum class FittingPlace { start, vertex, station, end, alongRun };
enum class LossBasis { catalogue, formula, overridden, none };

// One fitting met by the water of a run. K refers to the velocity head in this run's bore.
struct FittingLoss {
    FittingRole role = FittingRole::bend;
    FittingPlace place = FittingPlace::vertex;
    std::size_t vertex = 0;                   // place vertex: index into the run's vertices
    double station = 0.0;                     // fraction of the run's length from its start
    base::Id element;                         // the valve or tee; none for bends, entries and exits
    std::string fittingId;                    // catalogue; empty where a formula or nothing stands behind it
    units::Angle angle = units::radians(0.0); // bends: the turn
    double k = 0.0;                           // of one, opening counted
    int count = 1;
    LossBasis basis = LossBasis::catalogue;
    std::string source;  // key in the table of sources; empty when overridden
    bool shut = false;   // a closed valve: the run carries nothing
    bool oneWay = false; // a non-return valve

    friend bool operator==(const FittingLoss&, const FittingLoss&) = default;
};

enum class FlowRegime { still, laminar, transition, turbulent };

// Losses of a bore running full. Absent for gravity runs, which run part full.
struct RunLosses {
    units::Velocity velocity; // magnitude
    double reynolds = 0.0;
    double frictionFactor = 0.0; // Darcy; 0 when the water stands still
    FlowRegime regime = FlowRegime::still;
    units::Head velocityHead;
    units::Head friction;
    units::Head fittings;

    friend bool operator==(const RunLosses&, const RunLosses&) = default;
};

struct RunFlow {
    units::Flow flow;
    std::optional<RunLosses> losses; // pressure runs
    std::optional<OpenFlow> open;    // gravity runs; absent where the pipe is not known
    bool meanOfTide = false; // led on by a bell siphon: comes in gushes, this is the mean

    friend bool operator==(const RunFlow&, const RunFlow&) = default;
};

struct RunResult {
    base::Id id;
    plan::Service service = plan::Service::pressure;
    units::Length length;
    units::Length bore;
    units::Length roughness;
    double corrugatedFactor = 0.0;     // least friction factor of corrugated hose, an estimate; 0: a plain wall
    units::Volume content;             // of the full bore
    std::vector<FittingLoss> fittings; // in order from start to end, those along the run last
    double sumK = 0.0;
    PerRunningState<Stage<RunFlow>> flow;

    friend bool operator==(const RunResult&, const RunResult&) = default;
};

// The hydraulic grade at a tee: the level water would stand at in an open pipe there.
struct TeeResult {
    base::Id id;
    PerRunningState<Stage<units::Elevation>> grade;

    friend bool operator==(const TeeResult&, const TeeResult&) = default;
};

struct FlowResult {
    std::vector<RunResult> runs; // by id
    std::vector<TeeResult> tees; // by id

    friend bool operator==(const FlowResult&, const FlowResult&) = default;
};

} // namespace sumpwright::assessment

// Choosing a pump: every pump of the catalogue, and every curve of the client's own in the plan, put in the place of
// one pump of the plan, the pipework solved anew, and ranked.
//
// With target flows each is judged with the valves set for them (valve_setting.hpp) and the edit sets them too;
// otherwise with the valves as drawn, against a wanted flow. Those that do it come first, by energy a year; then those
// that do it with a reservation; then those that cannot, by what is missing. State: least flow. Energy: 8 760 hours.
// Valid as the pump curves and the network are; the affinity laws for speeds below 1.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/base/outcome.hpp"
#include "core/base/stop.hpp"
#include "core/design/bench.hpp"
#include "core/plan/edits/edit.hpp"

namespace sumpwright::design
{

struct PumpQuestion {
    base::Id pump;                     // to be replaced; none: the first that runs
    std::optional<units::Flow> wanted; // absent: the targets; without targets: what flows now
    bool mayChangeSpeed = false;       // down to what is wanted
};

enum class PumpVerdict {
    does,
    lowOnCurve,  // does, but near shut-off, where small pumps waste most of their power
    beyondCurve, // does, but past the end of its curve
    uncovered,   // does, but the sump's water is too shallow for it
    tooWeak,
    faulty, // no curve
};

struct PumpChoice {
    std::string modelId; // catalogue; empty: the own curve of `owner`
    base::Id owner;
    bool present = false; // the one in the plan now, as drawn
    PumpVerdict verdict = PumpVerdict::tooWeak;
    double speed = 1.0;
    units::Flow flow; // at the duty point, as the two below
    units::Head head;
    double shareOfBoxFigure = 0.0; // position on its curve: 0 shut-off, 1 run-out
    units::Head toShutOff;         // head it has above the duty point, at no flow
    units::Flow toRunOut;          // flow it has beyond the duty point, at no head
    std::optional<units::Power> power;
    std::optional<double> wireToWater;
    std::optional<units::Energy> energyPerYear;
    std::optional<units::Money> costPerYear;
    std::optional<units::Length> depth; // of water over the sump's bottom, and what the pump asks for
    std::optional<units::Length> neededDepth;
    units::Flow missingFlow;        // tooWeak: of the wanted flow
    units::Head missingHead;        // tooWeak: at the wanted flow
    double share = 1.0;             // of the targets it meets
    std::optional<plan::Edit> edit; // none: present, or faulty
};

struct PumpRanking {
    base::Id pump;
    units::Flow wanted;
    bool byTargets = false;
    std::vector<PumpChoice> choices; // best first
};

constexpr double lowestGoodShare = 0.30; // of the flow at no head; common practice, no source

// Refusals: "design.no-pump", "design.no-pressure-outlet", "design.not-solved", "design.wanted-out-of-range".
base::Outcome<PumpRanking> choosePump(const plan::Plan& plan, const CataloguePointer& catalogue,
                                      const PumpQuestion& question = {}, const base::StopToken& stop = {});

} // namespace sumpwright::design

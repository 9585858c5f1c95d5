// Pipework: the runs, tees and pumps of a plan as hydraulics sees them - bores, true lengths, roughness, losses, ends -
// without their places on the sheet. Moving everything together changes nothing here.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/assessment/pump_result.hpp"
#include "core/assessment/run_result.hpp"
#include "core/assessment/stage.hpp"
#include "core/catalogue/catalogue.hpp"
#include "core/plan/plan.hpp"

namespace sumpwright::assessment
{

enum class EndKind { open, vessel, pump, tee };

struct DrawnEnd {
    EndKind kind = EndKind::open;
    base::Id element; // vessel, pump or tee
    base::Id port;
    plan::PortKind portKind = plan::PortKind::inlet;
    units::Elevation level; // vessel: of the port; otherwise of the run's end

    friend bool operator==(const DrawnEnd&, const DrawnEnd&) = default;
};

// A straight piece of a run with the levels of its ends.
struct Stretch {
    units::Length length;
    units::Elevation start;
    units::Elevation end;

    friend bool operator==(const Stretch&, const Stretch&) = default;
};

struct Walls {
    units::Length roughness;
    double manningN = 0.0;
    friend bool operator==(const Walls&, const Walls&) = default;
};

struct DrawnRun {
    base::Id id;
    plan::Service service = plan::Service::pressure;
    DrawnEnd from;
    DrawnEnd to;
    std::vector<Stretch> stretches;
    units::Length length;
    units::Length bore;
    units::Length roughness;
    double manningN = 0.0; // of the bore where it runs part full
    Walls whenNew;         // the same walls at the two ends of their life
    Walls whenFouled;
    double corrugatedFactor = 0.0; // least friction factor of corrugated hose; 0: a plain wall
    std::vector<FittingLoss> fittings;
    double sumK = 0.0;
    bool shut = false;           // a closed valve
    bool oneWay = false;         // a non-return valve, letting water through from `from` to `to`
    units::Head openingHead;     // that a spring asks for
    std::optional<Reason> fault; // the run cannot be computed

    friend bool operator==(const DrawnRun&, const DrawnRun&) = default;
};

struct PowerSample {
    units::Flow flow;
    units::Power input;
    friend bool operator==(const PowerSample&, const PowerSample&) = default;
};

struct DrawnPump {
    base::Id id;
    base::Id vessel;
    units::Elevation outletLevel;
    std::vector<CurveSample> points; // of one unit at full speed
    bool twoNumbers = false;         // they are the two numbers of a box
    std::vector<PowerSample> power;  // of one unit; empty: unknown; one: the same at every flow
    plan::PumpArrangement arrangement = plan::PumpArrangement::one;
    double speed = 1.0;
    bool running = true;
    std::optional<units::Length> leastDepth;
    std::optional<Reason> fault;

    friend bool operator==(const DrawnPump&, const DrawnPump&) = default;
};

struct DrawnTee {
    base::Id id;
    units::Elevation level;
    friend bool operator==(const DrawnTee&, const DrawnTee&) = default;
};

struct Pipework {
    std::vector<DrawnRun> runs; // by id, as the two below
    std::vector<DrawnPump> pumps;
    std::vector<DrawnTee> tees;

    friend bool operator==(const Pipework&, const Pipework&) = default;
};

struct PipeworkInput {
    plan::Table<plan::Run> runs;
    plan::Table<plan::Tee> tees;
    plan::Table<plan::Pump> pumps;
    plan::Table<plan::Vessel> vessels;
    plan::PipeCondition condition = plan::PipeCondition::inService;
    std::shared_ptr<const catalogue::Catalogue> catalogue;

    friend bool operator==(const PipeworkInput&, const PipeworkInput&) = default;
};

Pipework pipeworkOf(const PipeworkInput& input);

units::Volume contentOf(const DrawnRun& run);
// The part of the content that stands above a level.
units::Volume contentAbove(const DrawnRun& run, units::Elevation level);
units::Elevation highestCentre(const DrawnRun& run);

} // namespace sumpwright::assessment

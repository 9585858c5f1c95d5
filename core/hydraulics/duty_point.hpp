// Where one pump and one pipe line meet: the flow at which the pump's head equals lift plus losses.
// Static head is the lift from the suction level to the outlet (up positive; below 0 the water also runs by itself).
// The exit loss belongs into sumK once. Valid as far as the pump curve and the friction law are.
#pragma once

#include <optional>

#include "core/base/outcome.hpp"
#include "core/hydraulics/friction.hpp"
#include "core/hydraulics/pump_curve.hpp"
#include "core/nature/water.hpp"

namespace sumpwright::hydraulics
{

struct PipeSystem {
    units::Head staticHead;
    StraightPipe pipe;
    double sumK = 0.0; // on the velocity in the pipe
};

// Lift plus losses at a flow: the system curve.
units::Head systemHead(const PipeSystem& system, units::Flow flow, units::KinematicViscosity viscosity);

struct DutyPoint {
    units::Flow flow;
    units::Head head; // of the pump
    units::Head frictionLoss;
    units::Head fittingLoss;
    units::Velocity velocity;
    double reynolds = 0.0;
    FlowRegime regime = FlowRegime::Still;
    units::Power hydraulicPower;
    std::optional<units::Power> electricalPower; // where the pump's input power is known, these three
    std::optional<double> wireToWater;
    std::optional<units::Energy> energyPerYear;
    bool runOut = false; // past the last point of the pump curve
};

// Refusals: "hydraulics.pump-cannot-lift" (place "static_head"), "hydraulics.not-positive" (place "bore", "speed"),
// "hydraulics.negative" (place "length", "roughness", "sum_k", "corrugated_factor"), "hydraulics.too-rough" (place
// "roughness"), "hydraulics.not-a-number" (place "static_head").
base::Outcome<DutyPoint> dutyPoint(const PumpCurve& pump, double speed, const PipeSystem& system,
                                   const nature::WaterProperties& water);

} // namespace sumpwright::hydraulics

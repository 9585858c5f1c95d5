// Darcy-Weisbach friction in a full round pipe: Reynolds number, friction factor, head loss.
// Flow and loss carry a sign: along the pipe positive; loss(-flow) = -loss(flow).
// Laminar to Re 2000 (64/Re), Colebrook from Re 4000, between them a cubic of ln f in ln Re that meets both in value
// and slope, so the loss rises strictly with flow. In that band f is uncertain and callers say so.
// Corrugated hose has a least friction factor instead: f = max(64/Re, factor), roughness not counted. An estimate.
// Valid: Re above 0, relative roughness 0 to 0.05 (the Moody chart); computed on to 0.5 as an estimate.
// Sources: Colebrook 1939; Moody 1944; the transition is our own. Keys: colebrook-1939, transition-cubic,
// corrugated-hose.
#pragma once

#include "core/units/measures.hpp"

namespace sumpwright::hydraulics
{

enum class FlowRegime { Still, Laminar, Transition, Turbulent };

constexpr double laminarLimit = 2000.0;   // Reynolds number
constexpr double turbulentLimit = 4000.0; // Reynolds number
constexpr double roughestCharted = 0.05;  // roughness / bore
constexpr double roughestComputed = 0.5;  // roughness / bore

using HeadPerFlow = decltype(units::Head() / units::Flow()); // m per m3/s

units::Area boreArea(units::Length bore);
units::Velocity meanVelocity(units::Flow flow, units::Length bore);
// From the size of the flow, whatever its direction.
double reynoldsNumber(units::Flow flow, units::Length bore, units::KinematicViscosity viscosity);
FlowRegime regimeOf(double reynolds);

// Darcy friction factor. Promises asked of the caller: reynolds > 0, relative roughness 0 to roughestComputed.
double frictionFactor(double reynolds, double relativeRoughness);
// Of corrugated hose whose factor is above 0.
double corrugatedFrictionFactor(double reynolds, double corrugatedFactor);

struct StraightPipe {
    units::Length bore;
    units::Length length;
    units::Length roughness;
    double corrugatedFactor = 0.0; // 0: a plain wall
};

struct LossWithSlope {
    units::Head loss;
    HeadPerFlow slope; // d loss / d flow, never negative
};

units::Head frictionLoss(const StraightPipe& pipe, units::Flow flow, units::KinematicViscosity viscosity);
LossWithSlope frictionLossWithSlope(const StraightPipe& pipe, units::Flow flow, units::KinematicViscosity viscosity);

} // namespace sumpwright::hydraulics

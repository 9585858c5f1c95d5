#include "core/hydraulics/fittings.hpp"
#include "core/hydraulics/friction.hpp"
#include "core/nature/water.hpp"
#include "core/worksheets/answer_draft.hpp"
#include "core/worksheets/common_inputs.hpp"
#include "core/worksheets/each.hpp"
#include "core/worksheets/regime_word.hpp"

namespace sumpwright::worksheets
{
namespace
{

using hydraulics::FlowRegime;

struct PipeNumbers {
    hydraulics::StraightPipe pipe;
    units::Flow flow;
    double sumK;
    units::KinematicViscosity viscosity;
    units::Velocity velocity;
    double reynolds;
    double relativeRoughness;
    double factor;
    units::Head friction;
    units::Head opening;
    units::Head fittings;
};

void showWorking(AnswerDraft& draft, const PipeNumbers& n)
{
    const units::Length bore = n.pipe.bore;
    draft.work("v = Q / (π/4 D²) = ", n.flow, " / (π/4 × (", bore, ")²) = ", n.velocity);
    draft.work("Re = v D / ν = ", n.velocity, " × ", bore, " / ", n.viscosity, " = ", n.reynolds);
    if (n.pipe.corrugatedFactor > 0.0)
        draft.work("f = max(64 / Re, f_corrugated) = max(64 / ", n.reynolds, ", ", n.pipe.corrugatedFactor,
                   ") = ", n.factor);
    else
        draft.work("f = ", n.factor, " (", frictionLaw(hydraulics::regimeOf(n.reynolds)),
                   ", ε/D = ", n.relativeRoughness, ")");
    draft.work("h_f = f L/D v²/(2 g) = ", n.factor, " × ", n.pipe.length, " / ", bore, " × (", n.velocity,
               ")² / (2 × 9.80665 m/s²) = ", n.friction);
    if (n.opening > units::Head())
        draft.work("h_k = ΣK v²/(2 g) + h_spring = ", n.sumK, " × (", n.velocity, ")² / (2 × 9.80665 m/s²) + ",
                   n.opening, " = ", n.fittings);
    else
        draft.work("h_k = ΣK v²/(2 g) = ", n.sumK, " × (", n.velocity, ")² / (2 × 9.80665 m/s²) = ", n.fittings);
    draft.work("h = h_f + h_k = ", n.friction, " + ", n.fittings, " = ", n.friction + n.fittings);
}

base::Outcome<Answer> compute(const Inputs& inputs)
{
    PipeNumbers n{};
    n.pipe = {inputs.get<units::Length>("bore"), inputs.get<units::Length>("length"),
              inputs.get<units::Length>("roughness"), inputs.ratio("corrugated_factor")};
    n.relativeRoughness = n.pipe.roughness / n.pipe.bore;
    if (n.relativeRoughness > hydraulics::roughestComputed)
        return base::Refusal{"worksheets.out-of-range", "roughness", "the roughness fills the bore",
                             "at most half the bore"};
    const auto water = nature::waterAt(inputs.get<units::Temperature>("temperature"));
    if (!water)
        return water.refusal();
    n.flow = inputs.get<units::Flow>("flow");
    n.sumK = inputs.ratio("sum_k");
    n.viscosity = water->kinematicViscosity;
    n.velocity = hydraulics::meanVelocity(n.flow, n.pipe.bore);
    n.reynolds = hydraulics::reynoldsNumber(n.flow, n.pipe.bore, n.viscosity);
    const bool corrugated = n.pipe.corrugatedFactor > 0.0;
    n.factor = corrugated ? hydraulics::corrugatedFrictionFactor(n.reynolds, n.pipe.corrugatedFactor)
                          : hydraulics::frictionFactor(n.reynolds, n.relativeRoughness);
    n.friction = hydraulics::frictionLoss(n.pipe, n.flow, n.viscosity);
    n.opening = inputs.get<units::Head>("opening_head");
    n.fittings = hydraulics::fittingLoss(n.sumK, n.velocity) + n.opening;

    const bool transition = !corrugated && hydraulics::regimeOf(n.reynolds) == FlowRegime::Transition;
    const bool rough = !corrugated && n.relativeRoughness > hydraulics::roughestCharted;
    const bool estimate = transition || rough || corrugated;
    AnswerDraft draft(inputs);
    draft.put("velocity", n.velocity);
    draft.put("reynolds", n.reynolds);
    draft.put("friction_factor", n.factor, estimate);
    draft.put("friction_loss", n.friction, estimate);
    draft.put("fitting_loss", n.fittings);
    draft.put("head_loss", n.friction + n.fittings, estimate);
    showWorking(draft, n);
    if (transition) {
        draft.note(transitionNote().id);
        draft.source("transition-cubic");
    }
    if (rough)
        draft.note(roughNote().id);
    if (corrugated) {
        draft.note(corrugatedNote().id);
        draft.source("corrugated-hose");
    }
    return draft.take();
}

} // namespace

Worksheet pipeFriction()
{
    Worksheet sheet;
    sheet.id = "pipe-friction";
    sheet.question = "How much head does a full pipe cost?";
    sheet.formula = "h = (f L/D + ΣK) v²/(2 g), v = Q / (π/4 D²), f by friction-factor";
    sheet.inputs = {flowInput(), boreInput(),        lengthInput(),          roughnessInput(), waterTemperatureInput(),
                    sumKInput(), openingHeadInput(), corrugatedFactorInput()};
    sheet.outputs = {{"velocity", "mean velocity", "m/s"},
                     {"reynolds", "Reynolds number", "1"},
                     {"friction_factor", "Darcy friction factor", "1"},
                     {"friction_loss", "head lost along the wall", "m"},
                     {"fitting_loss", "head lost in fittings", "m"},
                     {"head_loss", "sum of both", "m"}};
    sheet.sources = {"darcy-weisbach", "colebrook-1939", "tanaka-2001", "iapws-sr6-08"};
    sheet.notes = {transitionNote(), roughNote(), corrugatedNote()};
    sheet.compute = compute;
    return sheet;
}

} // namespace sumpwright::worksheets

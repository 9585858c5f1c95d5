#include "core/hydraulics/network.hpp"
#include "core/nature/water.hpp"
#include "core/worksheets/answer_draft.hpp"
#include "core/worksheets/common_inputs.hpp"
#include "core/worksheets/each.hpp"

namespace sumpwright::worksheets
{
namespace
{

base::Outcome<Answer> compute(const Inputs& inputs)
{
    const auto water = nature::waterAt(inputs.get<units::Temperature>("temperature"));
    if (!water)
        return water.refusal();
    const auto head = inputs.get<units::Head>("head");
    const auto opening = inputs.get<units::Head>("opening_head");
    const double corrugated = inputs.ratio("corrugated_factor");
    hydraulics::Network network;
    network.viscosity = water->kinematicViscosity;
    const auto upper = network.addFixedGrade(units::raisedBy(units::Elevation(), head));
    const auto lower = network.addFixedGrade(units::Elevation());
    network.addLink(upper, lower,
                    hydraulics::PipeLink{inputs.get<units::Length>("bore"), inputs.get<units::Length>("length"),
                                         inputs.get<units::Length>("roughness"), inputs.ratio("sum_k"),
                                         opening > units::Head(), opening, corrugated});
    const auto result = hydraulics::solve(network);
    if (result.notSolved) {
        base::Refusal refusal = *result.notSolved;
        refusal.place = "head";
        return refusal;
    }
    const hydraulics::LinkFlow& pipe = result.links.front();
    const bool transition = corrugated <= 0.0 && pipe.regime == hydraulics::FlowRegime::Transition;
    const bool estimate = transition || corrugated > 0.0;
    AnswerDraft draft(inputs);
    draft.put("flow", pipe.flow, estimate);
    draft.put("velocity", pipe.velocity, estimate);
    draft.put("reynolds", pipe.reynolds, estimate);
    draft.put("friction_loss", pipe.frictionLoss, estimate);
    draft.put("fitting_loss", pipe.fittingLoss, estimate);
    draft.work("h = (f L/D + ΣK) v²/(2 g)", opening > units::Head() ? " + h_spring" : "", ", solved for Q");
    draft.work("Q = ", pipe.flow, ": v = ", pipe.velocity, ", Re = ", pipe.reynolds);
    draft.work("h = h_f + h_k = ", pipe.frictionLoss, " + ", pipe.fittingLoss, " = ", head);
    if (corrugated > 0.0) {
        draft.note(corrugatedNote().id);
        draft.source("corrugated-hose");
    }
    if (transition) {
        draft.note(transitionNote().id);
        draft.source("transition-cubic");
    }
    return draft.take();
}

} // namespace

Worksheet pipeFlow()
{
    Worksheet sheet;
    sheet.id = "pipe-flow";
    sheet.question = "How much flows through a full pipe under a given head?";
    sheet.formula = "h = (f L/D + ΣK) v²/(2 g), solved for Q = v π/4 D²; f by friction-factor";
    sheet.inputs = {moreThan(quantityInput("head", "difference of the hydraulic grade between its ends",
                                           units::KindId::head, "0 m", "1000 m")),
                    boreInput(),
                    moreThan(lengthInput()),
                    roughnessInput(),
                    waterTemperatureInput(),
                    sumKInput(),
                    openingHeadInput(),
                    corrugatedFactorInput()};
    sheet.outputs = {{"flow", "flow through the pipe", "m3/s"},
                     {"velocity", "mean velocity", "m/s"},
                     {"reynolds", "Reynolds number", "1"},
                     {"friction_loss", "head lost along the wall", "m"},
                     {"fitting_loss", "head lost in fittings", "m"}};
    sheet.sources = {"darcy-weisbach", "colebrook-1939", "todini-pilati-1988", "tanaka-2001", "iapws-sr6-08"};
    sheet.notes = {transitionNote(), corrugatedNote()};
    sheet.compute = compute;
    return sheet;
}

} // namespace sumpwright::worksheets

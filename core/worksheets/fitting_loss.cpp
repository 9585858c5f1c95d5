#include "core/hydraulics/fittings.hpp"

#include "core/hydraulics/friction.hpp"
#include "core/hydraulics/valve_opening.hpp"
#include "core/nature/water.hpp"
#include "core/worksheets/answer_draft.hpp"
#include "core/worksheets/common_inputs.hpp"
#include "core/worksheets/each.hpp"

namespace sumpwright::worksheets
{
namespace
{

using hydraulics::LossMethod;

const Note outsideRange{"default-k-range", "The default K is meant for other bores: an estimate."};
const Note metalTable{"valve-table-metal",
                      "Partly closed: the table is for metal plug cocks and gates, plastic valves differ by 30 %."};
const Note springHeld{"spring-held", "The head that holds the spring open is part of the loss."};

base::Outcome<hydraulics::ValveLoss> throttling(const Inputs& inputs, hydraulics::FittingKind kind)
{
    if (!inputs.has("opening"))
        return hydraulics::ValveLoss{};
    const auto throttle = hydraulics::throttleOf(kind);
    if (!throttle)
        return base::Refusal{"worksheets.not-a-throttle", "opening",
                             inputs.word("fitting") + " cannot be partly closed",
                             "an opening only for ball-valve or gate-valve"};
    const auto loss = hydraulics::throttlingLoss(*throttle, inputs.ratio("opening"));
    if (loss.ok() && loss->closed)
        return base::Refusal{"worksheets.valve-closed", "opening", "so far closed the valve counts as shut: no flow",
                             "an opening above 0.111 for ball-valve, above 0.05 for gate-valve"};
    return loss;
}

void showCoefficient(AnswerDraft& draft, const catalogue::Fitting& fitting, LossMethod method, const Inputs& inputs,
                     double reynolds, double k)
{
    if (method == LossMethod::Hooper && fitting.hooper)
        draft.work("K = K1/Re + K∞ (1 + 1 in / D) = ", fitting.hooper->k1, " / ", reynolds, " + ",
                   fitting.hooper->kInfinity, " × (1 + 25.4 mm / ", inputs.shown("bore"), ") = ", k);
    else if (method == LossMethod::Darby && fitting.darby)
        draft.work("K = K1/Re + Ki (1 + Kd (1 in / DN)^0.3) = ", fitting.darby->k1, " / ", reynolds, " + ",
                   fitting.darby->ki, " × (1 + ", fitting.darby->kd, " × (25.4 mm / ", inputs.shown("nominal"),
                   ")^0.3) = ", k);
    else if (method == LossMethod::Crane && fitting.crane && !fitting.crane->plainK)
        draft.work("K = n f_T = ", fitting.crane->multiple, " × ", k / fitting.crane->multiple, " = ", k);
    else
        draft.work("K(", fitting.id, ") = ", k);
}

const char* sourceOf(LossMethod method)
{
    switch (method) {
    case LossMethod::Default:
        return "fitting-defaults";
    case LossMethod::Hooper:
        return "hooper-1981";
    case LossMethod::Darby:
        return "darby-2001";
    case LossMethod::Crane:
        return "crane-tp410";
    }
    return "fitting-defaults";
}

base::Outcome<Answer> compute(const Inputs& inputs)
{
    const auto fitting = inputs.tables().fitting(inputs.word("fitting"));
    const auto kind = hydraulics::fittingFromId(inputs.word("fitting"));
    const auto method = hydraulics::lossMethodFromId(inputs.word("method"));
    base::ensure(fitting.ok() && kind && method, "the table and the core know the same fittings and methods");
    const auto water = nature::waterAt(inputs.get<units::Temperature>("temperature"));
    if (!water)
        return water.refusal();
    const auto bore = inputs.get<units::Length>("bore");
    const auto flow = inputs.get<units::Flow>("flow");
    const double reynolds = hydraulics::reynoldsNumber(flow, bore, water->kinematicViscosity);
    const auto open =
        hydraulics::lossCoefficient(*kind, *method, {bore, inputs.get<units::Length>("nominal"), reynolds});
    if (!open)
        return open.refusal();
    const auto closing = throttling(inputs, *kind);
    if (!closing)
        return closing.refusal();
    const units::Velocity velocity = hydraulics::meanVelocity(flow, bore);
    const units::Head held = hydraulics::openingHead(*kind);
    const double k = *open + closing->added;
    const units::Head loss = hydraulics::fittingLoss(k, velocity) + held;

    const bool byDefault = *method == LossMethod::Default;
    const bool inRange = bore >= (*fitting)->defaultKFrom && bore <= (*fitting)->defaultKTo;
    const bool estimate = closing->added > 0.0 ||
                          (byDefault && (!inRange || (*fitting)->provenance.basis == catalogue::Basis::Inference));
    AnswerDraft draft(inputs);
    draft.put("k", k, estimate);
    draft.put("loss", loss, estimate);
    showCoefficient(draft, **fitting, *method, inputs, reynolds, *open);
    if (closing->added > 0.0) {
        draft.work("K = ", *open, " + ", closing->added, " = ", k, " at opening ", inputs.ratio("opening"));
        draft.note(metalTable.id);
        draft.source("weisbach-valves");
    }
    draft.work("v = Q / (π/4 D²) = ", flow, " / (π/4 × (", bore, ")²) = ", velocity);
    const std::string spring = held > units::Head() ? " + " + shown(held, inputs.style()) : std::string();
    draft.work("h = K v²/(2 g)", held > units::Head() ? " + h_spring" : "", " = ", k, " × (", velocity,
               ")² / (2 × 9.80665 m/s²)", spring, " = ", loss);
    if (held > units::Head())
        draft.note(springHeld.id);
    if (byDefault && !inRange)
        draft.note(outsideRange.id);
    draft.source(byDefault ? (*fitting)->provenance.source : sourceOf(*method));
    return draft.take();
}

std::vector<InputSpec> inputsOfFittingLoss()
{
    InputSpec fitting;
    fitting.name = "fitting";
    fitting.meaning = "the fitting";
    fitting.sort = InputSort::CatalogueId;
    fitting.choices = {"fittings"};
    InputSpec method;
    method.name = "method";
    method.meaning = "where K is taken from";
    method.sort = InputSort::Choice;
    method.choices = {"default", "hooper", "darby", "crane"};
    method.ifAbsent = "default";
    InputSpec nominal = boreInput();
    nominal.name = "nominal";
    nominal.meaning = "nominal size, read by the Darby method; the bore where it is not given";
    nominal.ifAbsent = "=bore";
    InputSpec opening;
    opening.name = "opening";
    opening.meaning = "how far a ball or gate valve is open: 1 open, 0 closed";
    opening.sort = InputSort::Ratio;
    opening.required = false;
    opening.least = "0";
    opening.most = "1";
    return {fitting, method, boreInput(), nominal, flowInput(), waterTemperatureInput(), opening};
}

} // namespace

Worksheet fittingLoss()
{
    Worksheet sheet;
    sheet.id = "fitting-loss";
    sheet.question = "How much head does a fitting cost?";
    sheet.formula = "h = K v²/(2 g); K by default, Hooper: K1/Re + K∞ (1 + 1 in/D), Darby: K1/Re + Ki (1 + Kd (1 "
                    "in/DN)^0.3), Crane: n f_T";
    sheet.inputs = inputsOfFittingLoss();
    sheet.outputs = {{"k", "loss coefficient on the velocity in the bore", "1"}, {"loss", "head lost", "m"}};
    sheet.sources = {"darcy-weisbach"};
    sheet.notes = {outsideRange, metalTable, springHeld};
    sheet.compute = compute;
    return sheet;
}

} // namespace sumpwright::worksheets

#include "core/hydraulics/fittings.hpp"

#include <cmath>

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
                             "an opening only for ball, gate and butterfly valves"};
    const auto loss = hydraulics::throttlingLoss(*throttle, inputs.ratio("opening"));
    if (loss.ok() && loss->closed)
        return base::Refusal{"worksheets.valve-closed", "opening", "so far closed the valve counts as shut: no flow",
                             "an opening above 0.111 for ball and butterfly valves, above 0.05 for gate-valve"};
    return loss;
}

void showCoefficient(AnswerDraft& draft, const catalogue::Fitting& fitting, LossMethod method, const Inputs& inputs,
                     double reynolds, double k)
{
    if (inputs.has("angle"))
        draft.work("K = lines through 0 at 0°, 4/9 of the elbow's K at 45° and all of it at 90°; ", fitting.id, " at ",
                   inputs.shown("angle"), ": K = ", k);
    else if (method == LossMethod::Hooper && fitting.hooper)
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

bool isBend(hydraulics::FittingKind kind)
{
    return kind == hydraulics::FittingKind::Elbow90 || kind == hydraulics::FittingKind::Elbow90Sweep ||
           kind == hydraulics::FittingKind::Elbow90Mitre;
}

std::optional<base::Refusal> fault(const Inputs& inputs, hydraulics::FittingKind kind, LossMethod method)
{
    const bool byFlow = method == LossMethod::Hooper || method == LossMethod::Darby;
    if (byFlow && !inputs.has("flow"))
        return base::Refusal{"worksheets.missing-input", "flow", "this method needs the flow", "a flow above 0"};
    const double count = inputs.ratio("count");
    if (count != std::floor(count))
        return base::Refusal{"worksheets.not-whole", "count", "the number of fittings is not whole",
                             "a whole number, 1 to 1000"};
    if (inputs.has("angle") && (!isBend(kind) || method != LossMethod::Default))
        return base::Refusal{"worksheets.not-a-bend", "angle",
                             "an angle changes only a 90 degree elbow's default coefficient",
                             "an angle only for elbow-90, elbow-90-sweep or elbow-90-mitre by method default"};
    return std::nullopt;
}

// K of one, fully open, at its angle.
base::Outcome<double> openCoefficient(const Inputs& inputs, hydraulics::FittingKind kind, LossMethod method,
                                      double reynolds)
{
    if (inputs.has("angle"))
        return hydraulics::bendCoefficient(inputs.get<units::Angle>("angle"), kind);
    return hydraulics::lossCoefficient(
        kind, method, {inputs.get<units::Length>("bore"), inputs.get<units::Length>("nominal"), reynolds});
}

void showHead(AnswerDraft& draft, const Inputs& inputs, double sumK, units::Velocity velocity, units::Head held,
              units::Head loss)
{
    draft.work("v = Q / (π/4 D²) = ", inputs.shown("flow"), " / (π/4 × (", inputs.shown("bore"), ")²) = ", velocity);
    const std::string spring = held > units::Head() ? " + " + shown(held, inputs.style()) : std::string();
    draft.work("h = n K v²/(2 g)", held > units::Head() ? " + h_spring" : "", " = ", sumK, " × (", velocity,
               ")² / (2 × 9.80665 m/s²)", spring, " = ", loss);
    if (held > units::Head())
        draft.note(springHeld.id);
}

void showLoss(AnswerDraft& draft, const Inputs& inputs, hydraulics::FittingKind kind, double sumK, bool estimate)
{
    if (!inputs.has("flow"))
        return;
    const auto bore = inputs.get<units::Length>("bore");
    const units::Velocity velocity = hydraulics::meanVelocity(inputs.get<units::Flow>("flow"), bore);
    const units::Head held = inputs.ratio("count") * hydraulics::openingHead(kind);
    const units::Head loss = hydraulics::fittingLoss(sumK, velocity) + held;
    draft.put("loss", loss, estimate);
    showHead(draft, inputs, sumK, velocity, held, loss);
}

double reynoldsOf(const Inputs& inputs, units::KinematicViscosity viscosity)
{
    return inputs.has("flow") ? hydraulics::reynoldsNumber(inputs.get<units::Flow>("flow"),
                                                           inputs.get<units::Length>("bore"), viscosity)
                              : 0.0;
}

base::Outcome<Answer> compute(const Inputs& inputs)
{
    const auto fitting = inputs.tables().fitting(inputs.word("fitting"));
    const auto kind = hydraulics::fittingFromId(inputs.word("fitting"));
    const auto method = hydraulics::lossMethodFromId(inputs.word("method"));
    base::ensure(fitting.ok() && kind && method, "the table and the core know the same fittings and methods");
    if (const auto refusal = fault(inputs, *kind, *method))
        return *refusal;
    const auto water = nature::waterAt(inputs.get<units::Temperature>("temperature"));
    if (!water)
        return water.refusal();
    const double reynolds = reynoldsOf(inputs, water->kinematicViscosity);
    const auto open = openCoefficient(inputs, *kind, *method, reynolds);
    if (!open)
        return open.refusal();
    const auto closing = throttling(inputs, *kind);
    if (!closing)
        return closing.refusal();
    const double k = *open + closing->added;
    const double sumK = k * inputs.ratio("count");

    const bool byDefault = *method == LossMethod::Default;
    const auto bore = inputs.get<units::Length>("bore");
    const bool inRange = bore >= (*fitting)->defaultKFrom && bore <= (*fitting)->defaultKTo;
    const bool estimate = closing->added > 0.0 || inputs.has("angle") ||
                          (byDefault && (!inRange || (*fitting)->provenance.basis == catalogue::Basis::Inference));
    AnswerDraft draft(inputs);
    draft.put("k", k, estimate);
    draft.put("sum_k", sumK, estimate);
    showCoefficient(draft, **fitting, *method, inputs, reynolds, *open);
    if (closing->added > 0.0) {
        draft.work("K = ", *open, " + ", closing->added, " = ", k, " at opening ", inputs.ratio("opening"));
        draft.note(metalTable.id);
        draft.source("weisbach-valves");
    }
    if (inputs.ratio("count") > 1.0)
        draft.work("n K = ", inputs.ratio("count"), " × ", k, " = ", sumK);
    showLoss(draft, inputs, *kind, sumK, estimate);
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
    opening.meaning = "how far a ball, gate or butterfly valve is open: 1 open, 0 closed";
    opening.sort = InputSort::Ratio;
    opening.required = false;
    opening.least = "0";
    opening.most = "1";
    InputSpec flow = optionally(flowInput());
    flow.meaning = "flow through the pipe; where it is not given only K is told";
    InputSpec count =
        quantityInput("count", "how many of them, one after the other", units::KindId::ratio, "1", "1000");
    count.sort = InputSort::Ratio;
    count.ifAbsent = "1";
    return {fitting,
            method,
            boreInput(),
            nominal,
            flow,
            waterTemperatureInput(),
            opening,
            optionally(quantityInput("angle", "the turn of a bend made with a 90 degree elbow, where it is another",
                                     units::KindId::angle, "0 deg", "180 deg")),
            count};
}

} // namespace

Worksheet fittingLoss()
{
    Worksheet sheet;
    sheet.id = "fitting-loss";
    sheet.question = "How much head does a fitting cost?";
    sheet.formula = "h = n K v²/(2 g); K by default (of a bend by its angle), Hooper: K1/Re + K∞ (1 + 1 in/D), Darby: "
                    "K1/Re + Ki (1 + Kd (1 "
                    "in/DN)^0.3), Crane: n f_T";
    sheet.inputs = inputsOfFittingLoss();
    sheet.outputs = {{"k", "loss coefficient of one on the velocity in the bore", "1"},
                     {"sum_k", "of all of them", "1"},
                     {"loss", "head lost in all of them, where the flow is given", "m"}};
    sheet.sources = {"darcy-weisbach"};
    sheet.notes = {outsideRange, metalTable, springHeld};
    sheet.compute = compute;
    return sheet;
}

} // namespace sumpwright::worksheets

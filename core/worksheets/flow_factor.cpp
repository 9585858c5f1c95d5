#include "core/hydraulics/fittings.hpp"
#include "core/hydraulics/friction.hpp"
#include "core/worksheets/answer_draft.hpp"
#include "core/worksheets/common_inputs.hpp"
#include "core/worksheets/each.hpp"

namespace sumpwright::worksheets
{
namespace
{

base::Outcome<Answer> compute(const Inputs& inputs)
{
    const auto factor = inputs.get<units::Flow>("flow_factor");
    const auto bore = inputs.get<units::Length>("bore");
    const units::Velocity rated = hydraulics::meanVelocity(factor, bore);
    const double k = hydraulics::coefficientOfFlowFactor(factor, bore);
    AnswerDraft draft(inputs);
    draft.put("k", k);
    draft.work("v at 1 bar = Kv / (π/4 D²) = ", factor, " / (π/4 × (", bore, ")²) = ", rated);
    draft.work("K = 2 × 1 bar / (ρ v²) = 200000 Pa / (999.1 kg/m³ × (", rated, ")²) = ", k);
    if (inputs.has("flow")) {
        const units::Velocity velocity = hydraulics::meanVelocity(inputs.get<units::Flow>("flow"), bore);
        const units::Head loss = hydraulics::fittingLoss(k, velocity);
        draft.put("loss", loss);
        draft.work("h = K v²/(2 g) = ", k, " × (", velocity, ")² / (2 × 9.80665 m/s²) = ", loss);
    }
    return draft.take();
}

} // namespace

Worksheet flowFactor()
{
    InputSpec factor = flowInput();
    factor.name = "flow_factor";
    factor.meaning = "Kv of the valve: the flow it passes fully open at 1 bar, \"6.3 m3/h\"";
    InputSpec flow = optionally(flowInput());
    flow.meaning = "flow through the valve; where it is not given only K is told";
    Worksheet sheet;
    sheet.id = "flow-factor";
    sheet.question = "What is a valve's Kv as a loss coefficient?";
    sheet.formula = "K = 2 × 1 bar / (ρ v²), v = Kv / (π/4 D²), water of 15 °C";
    sheet.inputs = {factor, boreInput(), flow};
    sheet.outputs = {{"k", "loss coefficient on the velocity in the bore", "1"},
                     {"loss", "head lost in the valve, where the flow is given", "m"}};
    sheet.sources = {"flow-factor"};
    sheet.compute = compute;
    return sheet;
}

} // namespace sumpwright::worksheets

#include "core/hydraulics/duty_point.hpp"

#include "core/worksheets/answer_draft.hpp"
#include "core/worksheets/common_inputs.hpp"
#include "core/worksheets/each.hpp"
#include "core/worksheets/pump_inputs.hpp"

namespace sumpwright::worksheets
{
namespace
{

using base::Outcome;

const Note noPower{"pump-power-unknown", "The points say nothing about power: no electrical power, no energy."};
const Note runOut{"pump-run-out",
                  "The duty point lies past the last point of the curve: an estimate, and hard on a pump."};

void showWorking(AnswerDraft& draft, const Inputs& inputs, const hydraulics::DutyPoint& duty)
{
    draft.work("pump head H_p(Q, n) = n² H_p1(Q/n), n = ", inputs.ratio("speed"));
    draft.work("system head H_s(Q) = H_static + h_f(Q) + ΣK v²/(2 g)");
    draft.work("H_p = H_s at Q = ", duty.flow, ": ", duty.head, " = ", inputs.shown("static_head"), " + ",
               duty.frictionLoss, " + ", duty.fittingLoss);
    draft.work("v = ", duty.velocity, ", Re = ", duty.reynolds);
    draft.work("P = ρ g Q H = ", duty.hydraulicPower);
    if (duty.electricalPower && duty.wireToWater && duty.energyPerYear) {
        draft.work("η = P / P_el = ", duty.hydraulicPower, " / ", *duty.electricalPower, " = ", *duty.wireToWater);
        draft.work("E = P_el × 8760 h = ", *duty.energyPerYear);
    }
}

Outcome<Answer> compute(const Inputs& inputs)
{
    const Outcome<hydraulics::PumpCurve> curve = pumpCurveOf(inputs);
    if (!curve)
        return curve.refusal();
    const auto water = nature::waterAt(inputs.get<units::Temperature>("temperature"));
    if (!water)
        return water.refusal();
    const hydraulics::PipeSystem system{inputs.get<units::Head>("static_head"),
                                        {inputs.get<units::Length>("bore"), inputs.get<units::Length>("length"),
                                         inputs.get<units::Length>("roughness"), inputs.ratio("corrugated_factor")},
                                        inputs.ratio("sum_k")};
    const auto duty = hydraulics::dutyPoint(*curve, inputs.ratio("speed"), system, *water);
    if (!duty)
        return duty.refusal();
    const bool corrugated = system.pipe.corrugatedFactor > 0.0;
    const bool transition = !corrugated && duty->regime == hydraulics::FlowRegime::Transition;
    const bool estimate = duty->runOut || transition || corrugated || isEstimated(inputs);
    AnswerDraft draft(inputs);
    draft.put("flow", duty->flow, estimate);
    draft.put("head", duty->head, estimate);
    draft.put("velocity", duty->velocity, estimate);
    draft.put("hydraulic_power", duty->hydraulicPower, estimate);
    if (duty->electricalPower)
        draft.put("electrical_power", *duty->electricalPower, estimate);
    if (duty->wireToWater)
        draft.put("wire_to_water", *duty->wireToWater, estimate);
    if (duty->energyPerYear)
        draft.put("energy_per_year", *duty->energyPerYear, estimate);
    showWorking(draft, inputs, *duty);
    if (!duty->electricalPower)
        draft.note(noPower.id);
    tellPump(draft, inputs);
    if (duty->runOut)
        draft.note(runOut.id);
    if (corrugated) {
        draft.note(corrugatedNote().id);
        draft.source("corrugated-hose");
    }
    if (transition) {
        draft.note(transitionNote().id);
        draft.source("transition-cubic");
    }
    return draft.take();
}

std::vector<InputSpec> inputsOfPumpDuty()
{
    InputSpec lift;
    lift.name = "static_head";
    lift.meaning = "height from the water the pump draws from to the outlet, up positive";
    lift.kind = units::KindId::head;
    lift.least = "-100 m";
    lift.most = "100 m";
    std::vector<InputSpec> inputs = pumpInputs();
    for (InputSpec& spec : std::vector<InputSpec>{lift, boreInput(), lengthInput(), roughnessInput(), sumKInput(),
                                                  waterTemperatureInput(), corrugatedFactorInput()})
        inputs.push_back(std::move(spec));
    return inputs;
}

} // namespace

Worksheet pumpDuty()
{
    Worksheet sheet;
    sheet.id = "pump-duty";
    sheet.question = "How much does this pump lift through this pipe?";
    sheet.formula = "H_pump(Q) = H_static + (f L/D + ΣK) v²/(2 g), solved for Q; the pump a monotone cubic through its "
                    "points";
    sheet.inputs = inputsOfPumpDuty();
    sheet.outputs = {{"flow", "flow at the duty point", "m3/s"},
                     {"head", "head of the pump there", "m"},
                     {"velocity", "mean velocity in the pipe", "m/s"},
                     {"hydraulic_power", "power in the water", "W"},
                     {"electrical_power", "power drawn, where the pump's is known", "W"},
                     {"wire_to_water", "hydraulic / electrical power", "1"},
                     {"energy_per_year", "electrical energy in 8760 hours", "kWh"}};
    sheet.sources = {"darcy-weisbach", "colebrook-1939", "fritsch-butland-1984", "affinity-laws",
                     "pump-energy",    "tanaka-2001",    "iapws-sr6-08"};
    sheet.notes = {inventedPumpNote(), twoNumbersNote(), noPower, runOut, transitionNote(), corrugatedNote()};
    sheet.compute = compute;
    return sheet;
}

} // namespace sumpwright::worksheets

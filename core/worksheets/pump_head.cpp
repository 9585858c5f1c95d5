#include "core/worksheets/answer_draft.hpp"
#include "core/worksheets/common_inputs.hpp"
#include "core/worksheets/each.hpp"
#include "core/worksheets/pump_inputs.hpp"

namespace sumpwright::worksheets
{
namespace
{

const Note runOut{"pump-run-out", "This flow lies past the last point of the curve: an estimate, and hard on a pump."};

base::Outcome<Answer> compute(const Inputs& inputs)
{
    const auto curve = pumpCurveOf(inputs);
    if (!curve)
        return curve.refusal();
    const auto flow = inputs.get<units::Flow>("flow");
    const double speed = inputs.ratio("speed");
    const bool past = curve->runsOut(flow, speed);
    const units::Head head = curve->headAt(flow, speed);
    AnswerDraft draft(inputs);
    draft.put("head", head, past || isEstimated(inputs));
    if (const auto power = curve->powerAt(flow, speed))
        draft.put("electrical_power", *power, past);
    draft.work("H(Q, n) = n² H_1(Q/n), H_1 a monotone cubic through the points, n = ", speed);
    draft.work("H(", flow, ") = ", head);
    tellPump(draft, inputs);
    if (past)
        draft.note(runOut.id);
    return draft.take();
}

} // namespace

Worksheet pumpHead()
{
    InputSpec flow = flowInput();
    flow.meaning = "flow through the pump";
    flow.leastExcluded = false;
    Worksheet sheet;
    sheet.id = "pump-head";
    sheet.question = "What head does a pump give at a flow?";
    sheet.formula = "H(Q, n) = n² H_1(Q/n); H_1 a monotone cubic through the pump's points";
    sheet.inputs = pumpInputs();
    sheet.inputs.push_back(flow);
    sheet.outputs = {{"head", "head of the pump there", "m"},
                     {"electrical_power", "power drawn, where the pump's is known", "W"}};
    sheet.sources = {"fritsch-butland-1984", "affinity-laws"};
    sheet.notes = {inventedPumpNote(), twoNumbersNote(), runOut};
    sheet.compute = compute;
    return sheet;
}

} // namespace sumpwright::worksheets

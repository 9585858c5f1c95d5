#include "core/hydraulics/flow_balance.hpp"

#include "core/worksheets/common_inputs.hpp"
#include "core/worksheets/each.hpp"
#include "core/worksheets/list_working.hpp"

namespace sumpwright::worksheets
{
namespace
{

base::Outcome<Answer> compute(const Inputs& inputs)
{
    if (!inputs.has("coming_in") && !inputs.has("going_out"))
        return base::Refusal{"worksheets.needs-one", "coming_in", "no flow is given", "flows that come in, or go out"};
    const auto in = inputs.list("coming_in");
    const auto out = inputs.list("going_out");
    const auto arrives = sumOf<units::Flow>(in);
    const auto leaves = sumOf<units::Flow>(out);
    const units::Flow balance = hydraulics::flowBalance(arrives, leaves);
    AnswerDraft draft(inputs);
    draft.put("comes_in", arrives);
    draft.put("taken_out", leaves);
    draft.put("balance", balance);
    workSum(draft, "Q_in", in, arrives);
    workSum(draft, "Q_out", out, leaves);
    draft.work("Q = ", arrives, " - ", leaves, " = ", balance);
    return draft.take();
}

InputSpec flowsInput(const char* name, const char* meaning)
{
    return optionally(listInput(name, meaning, units::KindId::flow, "0 L/h", "1 m3/s"));
}

} // namespace

Worksheet flowBalance()
{
    Worksheet sheet;
    sheet.id = "flow-balance";
    sheet.question = "How much water comes into a vessel, and what is left of it?";
    sheet.formula = "Q = ΣQ_in - ΣQ_out";
    sheet.inputs = {flowsInput("coming_in", "flow of each run that brings water"),
                    flowsInput("going_out", "flow of each run or pump that takes water away")};
    sheet.outputs = {{"comes_in", "all that comes in", "m3/s"},
                     {"taken_out", "all that is taken out", "m3/s"},
                     {"balance", "what is left of it, to leave by overflows", "m3/s"}};
    sheet.sources = {"plain-geometry"};
    sheet.compute = compute;
    return sheet;
}

} // namespace sumpwright::worksheets

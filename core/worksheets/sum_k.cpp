#include "core/hydraulics/fittings.hpp"
#include "core/worksheets/common_inputs.hpp"
#include "core/worksheets/each.hpp"
#include "core/worksheets/list_working.hpp"

namespace sumpwright::worksheets
{
namespace
{

const Note oneBore{"k-one-bore", "Every K must count the velocity in the same bore; restate the others first."};

base::Outcome<Answer> compute(const Inputs& inputs)
{
    const auto entries = inputs.list("coefficients");
    std::vector<double> coefficients;
    for (const ListEntry& entry : entries)
        coefficients.push_back(std::get<double>(entry.value));
    const double sum = hydraulics::sumOfCoefficients(coefficients);
    AnswerDraft draft(inputs);
    draft.put("sum_k", sum);
    workSum(draft, "ΣK", entries, sum);
    draft.note(oneBore.id);
    return draft.take();
}

} // namespace

Worksheet sumK()
{
    Worksheet sheet;
    sheet.id = "sum-k";
    sheet.question = "What do the fittings of a run come to?";
    sheet.formula = "ΣK = K1 + K2 + …, each as often as it is there";
    sheet.inputs = {
        listInput("coefficients", "loss coefficients, several of one as 2*0.4", units::KindId::ratio, "0", "1000000")};
    sheet.outputs = {{"sum_k", "sum of the loss coefficients", "1"}};
    sheet.sources = {"darcy-weisbach"};
    sheet.notes = {oneBore};
    sheet.compute = compute;
    return sheet;
}

} // namespace sumpwright::worksheets

#include "core/units/measures.hpp"
#include "core/worksheets/answer_draft.hpp"
#include "core/worksheets/common_inputs.hpp"
#include "core/worksheets/each.hpp"

namespace sumpwright::worksheets
{
namespace
{

base::Outcome<Answer> compute(const Inputs& inputs)
{
    const auto from = inputs.get<units::Elevation>("from");
    const auto to = inputs.get<units::Elevation>("to");
    const units::Head lift = units::liftBetween(from, to);
    AnswerDraft draft(inputs);
    draft.put("lift", lift);
    draft.work("H = z_to - z_from = ", to, " - ", from, " = ", lift);
    return draft.take();
}

} // namespace

Worksheet staticLift()
{
    Worksheet sheet;
    sheet.id = "static-lift";
    sheet.question = "How high must the water be lifted?";
    sheet.formula = "H = z_to - z_from";
    sheet.inputs = {levelInput("from", "level of the water the pump draws from"),
                    levelInput("to", "level of the mouth, or of the water over it")};
    sheet.outputs = {{"lift", "static lift, up positive", "m"}};
    sheet.sources = {"plain-geometry"};
    sheet.compute = compute;
    return sheet;
}

} // namespace sumpwright::worksheets

#include "core/hydraulics/pipe_content.hpp"

#include "core/hydraulics/friction.hpp"
#include "core/worksheets/answer_draft.hpp"
#include "core/worksheets/common_inputs.hpp"
#include "core/worksheets/each.hpp"

namespace sumpwright::worksheets
{
namespace
{

const Note boreFull{"bore-full", "This is the bore full of water: a gravity run seldom is, half of it is usual."};

base::Outcome<Answer> compute(const Inputs& inputs)
{
    const auto bore = inputs.get<units::Length>("bore");
    const auto length = inputs.get<units::Length>("length");
    const units::Area area = hydraulics::boreArea(bore);
    const units::Volume volume = hydraulics::pipeContent(bore, length);
    AnswerDraft draft(inputs);
    draft.put("bore_area", area);
    draft.put("volume", volume);
    draft.work("A = π/4 D² = π/4 × (", bore, ")² = ", area);
    draft.work("V = A L = ", area, " × ", length, " = ", volume);
    draft.note(boreFull.id);
    return draft.take();
}

} // namespace

Worksheet pipeContent()
{
    Worksheet sheet;
    sheet.id = "pipe-content";
    sheet.question = "How much water does a pipe hold?";
    sheet.formula = "V = π/4 D² L";
    sheet.inputs = {boreInput(), lengthInput()};
    sheet.outputs = {{"bore_area", "area of the bore", "m2"}, {"volume", "content of the full bore", "m3"}};
    sheet.sources = {"plain-geometry"};
    sheet.notes = {boreFull};
    sheet.compute = compute;
    return sheet;
}

} // namespace sumpwright::worksheets

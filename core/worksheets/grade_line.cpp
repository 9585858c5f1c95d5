#include "core/units/measures.hpp"
#include "core/worksheets/common_inputs.hpp"
#include "core/worksheets/each.hpp"
#include "core/worksheets/list_working.hpp"

namespace sumpwright::worksheets
{
namespace
{

const Note openPipe{"open-pipe", "The level at which water would stand in an open pipe there; no real surface."};

base::Outcome<Answer> compute(const Inputs& inputs)
{
    const auto start = inputs.get<units::Elevation>("start");
    const auto gained = inputs.get<units::Head>("head_gained");
    const auto losses = inputs.list("losses");
    const auto lost = sumOf<units::Head>(losses);
    const units::Elevation grade = units::raisedBy(start, gained - lost);
    AnswerDraft draft(inputs);
    draft.put("grade", grade);
    workSum(draft, "h", losses, lost);
    draft.work("z = ", start, " + ", gained, " - ", lost, " = ", grade);
    draft.note(openPipe.id);
    return draft.take();
}

} // namespace

Worksheet gradeLine()
{
    InputSpec gained = quantityInput("head_gained", "head of the pump on the way; 0 without one", units::KindId::head,
                                     "0 m", "1000 m");
    gained.ifAbsent = "0 m";
    Worksheet sheet;
    sheet.id = "grade-line";
    sheet.question = "How high would the water stand in an open pipe at this place?";
    sheet.formula = "z = z_start + H_pump - Σh_losses";
    sheet.inputs = {
        levelInput("start", "level of the water where the way begins"), gained,
        optionally(listInput("losses", "head lost in each run on the way", units::KindId::head, "0 m", "1000 m"))};
    sheet.outputs = {{"grade", "hydraulic grade there", "m"}};
    sheet.sources = {"darcy-weisbach"};
    sheet.notes = {openPipe};
    sheet.compute = compute;
    return sheet;
}

} // namespace sumpwright::worksheets

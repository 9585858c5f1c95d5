#include "core/worksheets/common_inputs.hpp"
#include "core/worksheets/each.hpp"
#include "core/worksheets/list_working.hpp"

namespace sumpwright::worksheets
{
namespace
{

const Note freeWater{"free-water", "Free water: what a medium's grains soak up does not count."};

base::Outcome<Answer> compute(const Inputs& inputs)
{
    if (!inputs.has("vessels") && !inputs.has("pipes"))
        return base::Refusal{"worksheets.needs-one", "vessels", "neither vessels nor pipes are given",
                             "the water of the vessels, of the pipes, or of both"};
    const auto vessels = inputs.list("vessels");
    const auto pipes = inputs.list("pipes");
    const auto inVessels = sumOf<units::Volume>(vessels);
    const auto inPipes = sumOf<units::Volume>(pipes);
    const auto spilled = inputs.get<units::Volume>("spilled");
    const units::Volume total = inVessels + inPipes + spilled;
    AnswerDraft draft(inputs);
    draft.put("in_vessels", inVessels);
    draft.put("in_pipes", inPipes);
    draft.put("total", total);
    workSum(draft, "V_vessels", vessels, inVessels);
    workSum(draft, "V_pipes", pipes, inPipes);
    draft.work("V = ", inVessels, " + ", inPipes, " + ", spilled, " = ", total);
    draft.note(freeWater.id);
    return draft.take();
}

} // namespace

Worksheet waterTotal()
{
    InputSpec spilled =
        quantityInput("spilled", "water lost over a rim, still counted", units::KindId::volume, "0 L", "1000000 m3");
    spilled.ifAbsent = "0 L";
    Worksheet sheet;
    sheet.id = "water-total";
    sheet.question = "How much water is in the system?";
    sheet.formula = "V = V_vessels + V_pipes + V_spilled";
    sheet.inputs = {optionally(volumesInput("vessels", "water in each vessel")),
                    optionally(volumesInput("pipes", "water in each pipe run")), spilled};
    sheet.outputs = {{"in_vessels", "water in the vessels", "m3"},
                     {"in_pipes", "water in the pipes", "m3"},
                     {"total", "all water", "m3"}};
    sheet.sources = {"plain-geometry"};
    sheet.notes = {freeWater};
    sheet.compute = compute;
    return sheet;
}

} // namespace sumpwright::worksheets

#include "core/water/sump_filling.hpp"
#include "core/worksheets/common_inputs.hpp"
#include "core/worksheets/each.hpp"
#include "core/worksheets/list_working.hpp"
#include "core/worksheets/vessel_inputs.hpp"

namespace sumpwright::worksheets
{
namespace
{

const Note sameWater{"same-water", "The same water in both states: what the beds take up, the sump gives."};

base::Outcome<Answer> compute(const Inputs& inputs)
{
    const auto running = inputs.get<units::Elevation>("running_level");
    const auto bottom = inputs.get<units::Elevation>("bottom");
    if (running < bottom)
        return base::Refusal{"worksheets.levels-not-rising", "running_level",
                             "the water while running stands below the sump's bottom", "a level at or above bottom"};
    const auto sump = vesselOf(inputs);
    if (!sump)
        return sump.refusal();
    const auto drained = inputs.list("drained");
    const auto flooded = inputs.list("flooded");
    const auto before = sumOf<units::Volume>(drained);
    const auto after = sumOf<units::Volume>(flooded);
    const units::Volume start = sump->waterAt(running - bottom);
    const units::Volume volume = start + before - after;
    if (volume < units::Volume())
        return base::Refusal{"worksheets.runs-dry", "flooded", "the sump runs dry before all of this is filled",
                             "less water in the vessels, or a higher running level"};
    const units::Elevation level = bottom + water::sumpDepth(*sump, volume);
    AnswerDraft draft(inputs);
    draft.put("start_volume", start);
    draft.put("volume", volume);
    draft.put("level", level);
    draft.put("depth", level - bottom);
    if (inputs.has("rim"))
        draft.put("free_board", inputs.get<units::Elevation>("rim") - level);
    showVolume(draft, inputs, running - bottom, start);
    workSum(draft, "V_drained", drained, before);
    workSum(draft, "V_flooded", flooded, after);
    draft.work("V = ", start, " + ", before, " - ", after, " = ", volume);
    draft.work("the sump then stands at ", level);
    draft.note(sameWater.id);
    return draft.take();
}

} // namespace

Worksheet sumpLevel()
{
    Worksheet sheet;
    sheet.id = "sump-level";
    sheet.question = "How far does the sump sink when the beds flood?";
    sheet.formula = "V = A (running level - bottom) + ΣV_drained - ΣV_flooded; level = bottom + V/A";
    sheet.inputs = vesselInputs();
    sheet.inputs.insert(sheet.inputs.begin(),
                        levelInput("running_level", "level of the sump while running, every bed drained"));
    sheet.inputs.push_back(optionally(levelInput("rim", "level of the rim, for the free-board")));
    sheet.inputs.push_back(volumesInput("drained", "water in each other vessel then"));
    sheet.inputs.push_back(volumesInput("flooded", "water in each other vessel with every bed flooded"));
    sheet.outputs = {{"start_volume", "water in the sump with every bed drained", "m3"},
                     {"volume", "water in the sump with every bed flooded", "m3"},
                     {"level", "level of the sump then", "m"},
                     {"depth", "water over its bottom then", "m"},
                     {"free_board", "rim over the water then, where rim is given", "m"}};
    sheet.sources = {"plain-geometry"};
    sheet.notes = {sameWater};
    sheet.compute = compute;
    return sheet;
}

} // namespace sumpwright::worksheets

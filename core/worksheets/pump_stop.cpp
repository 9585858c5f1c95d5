#include "core/water/sump_filling.hpp"
#include "core/worksheets/common_inputs.hpp"
#include "core/worksheets/each.hpp"
#include "core/worksheets/list_working.hpp"
#include "core/worksheets/vessel_inputs.hpp"

namespace sumpwright::worksheets
{
namespace
{

const Note noGuard{"check-valve-no-guard",
                   "A non-return valve alone is no guard: count what it would hold back as coming down."};
const Note halfFull{"gravity-half-full",
                    "What is on its way in gravity runs counts as half their bore: an estimate (EN 12056-2)."};
const Note spills{"sump-spills",
                  "The sump does not hold what comes down: water goes over its rim or its own overflow."};

std::optional<base::Refusal> levelsFault(units::Elevation running, units::Elevation bottom, units::Elevation spill)
{
    if (running < bottom)
        return base::Refusal{"worksheets.levels-not-rising", "running_level",
                             "the water while running stands below the sump's bottom", "a level at or above bottom"};
    if (spill <= bottom)
        return base::Refusal{"worksheets.levels-not-rising", "spill_level",
                             "the rim or overflow lies not above the sump's bottom", "a level above bottom"};
    return std::nullopt;
}

base::Outcome<Answer> compute(const Inputs& inputs)
{
    const auto running = inputs.get<units::Elevation>("running_level");
    const auto bottom = inputs.get<units::Elevation>("bottom");
    const auto spill = inputs.get<units::Elevation>("spill_level");
    if (const auto fault = levelsFault(running, bottom, spill))
        return *fault;
    const auto sump = vesselOf(inputs);
    if (!sump)
        return sump.refusal();
    const auto down = inputs.list("coming_down");
    const auto comesDown = sumOf<units::Volume>(down);
    const units::Volume start = sump->waterAt(running - bottom);
    const auto filling = water::fillSump(*sump, spill - bottom, start + comesDown);
    const bool over = filling.spilled > units::Volume();
    const units::Elevation level = over ? spill : bottom + filling.depth;
    AnswerDraft draft(inputs);
    draft.put("start_volume", start);
    draft.put("comes_down", comesDown);
    draft.put("level", level);
    draft.put("volume", filling.volume);
    draft.put("room_left", filling.roomLeft);
    draft.put("spilled", filling.spilled);
    showVolume(draft, inputs, running - bottom, start);
    workSum(draft, "V_down", down, comesDown);
    draft.work("wants to be in it: ", start, " + ", comesDown, " = ", start + comesDown, "; up to ", spill,
               " it holds ", sump->waterAt(spill - bottom));
    draft.work("room left = ", sump->waterAt(spill - bottom), " - ", start + comesDown, " = ", filling.roomLeft);
    draft.work("it then stands at ", level);
    draft.note(noGuard.id);
    draft.note(halfFull.id);
    if (over)
        draft.note(spills.id);
    return draft.take();
}

} // namespace

Worksheet pumpStop()
{
    Worksheet sheet;
    sheet.id = "pump-stop";
    sheet.question = "Does the sump hold what comes down when the pump stops?";
    sheet.formula =
        "V = A (running level - bottom) + ΣV_down; level = bottom + V/A, at most the spill level; room left "
        "= V up to the spill level - V";
    sheet.inputs = {levelInput("running_level", "highest level of the sump while running, every bed drained"),
                    levelInput("spill_level", "the sump's rim, or its own overflow where that is lower")};
    const auto vessel = vesselInputs();
    sheet.inputs.insert(sheet.inputs.begin() + 1, vessel.begin(), vessel.end());
    sheet.inputs.push_back(optionally(
        volumesInput("coming_down", "water over lips, in pipes above the sump, and siphoned back; each a volume")));
    sheet.outputs = {{"start_volume", "water in the sump when the pump stops", "m3"},
                     {"comes_down", "water that comes down", "m3", true},
                     {"level", "level of the sump then", "m", true},
                     {"volume", "water in the sump then", "m3", true},
                     {"room_left", "room up to the spill level; below 0 that much spills", "m3", true},
                     {"spilled", "water that spills", "m3", true}};
    sheet.sources = {"plain-geometry", "en-12056-2"};
    sheet.notes = {noGuard, halfFull, spills};
    sheet.compute = compute;
    return sheet;
}

} // namespace sumpwright::worksheets

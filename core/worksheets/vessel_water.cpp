#include <algorithm>

#include "core/hydraulics/overflow.hpp"
#include "core/worksheets/common_inputs.hpp"
#include "core/worksheets/each.hpp"
#include "core/worksheets/vessel_inputs.hpp"

namespace sumpwright::worksheets
{
namespace
{

const Note predicted{"overflow-predicted",
                     "The water over the lip is an estimate; for \"will it overflow\" ask overflow-level."};

struct Surface {
    units::Elevation level;
    std::optional<units::Length> overLip;
};

// Either the level itself, or the lip with the flow over it.
base::Outcome<Surface> surfaceOf(const Inputs& inputs)
{
    const bool byLip = inputs.has("lip");
    if (inputs.has("level") == byLip)
        return base::Refusal{byLip ? "worksheets.one-of" : "worksheets.needs-one", "level",
                             byLip ? "both level and lip are given" : "neither level nor lip is given",
                             "one of them: the level of the water, or the lip with flow and bore"};
    if (!byLip)
        return Surface{inputs.get<units::Elevation>("level"), {}};
    for (const char* name : {"flow", "bore"})
        if (!inputs.has(name))
            return base::Refusal{"worksheets.missing-input", name, "water over a lip needs this input",
                                 name == std::string_view("flow") ? "a flow above 0" : "a length of 10 to 300 mm"};
    const auto over = hydraulics::overflowLevel({inputs.get<units::Length>("bore")}, inputs.get<units::Flow>("flow"));
    if (!over)
        return over.refusal();
    return Surface{inputs.get<units::Elevation>("lip") + over->predicted, over->predicted};
}

base::Outcome<Answer> compute(const Inputs& inputs)
{
    const auto vessel = vesselOf(inputs);
    if (!vessel)
        return vessel.refusal();
    const auto surface = surfaceOf(inputs);
    if (!surface)
        return surface.refusal();
    const auto bottom = inputs.get<units::Elevation>("bottom");
    const auto rim = inputs.get<units::Elevation>("rim");
    if (rim <= bottom)
        return base::Refusal{"worksheets.levels-not-rising", "rim", "the rim lies not above the bottom",
                             "a level above bottom"};
    const units::Length depth = std::max(surface->level - bottom, units::Length());
    const units::Volume volume = vessel->waterAt(surface->level - bottom);
    const bool estimate = surface->overLip.has_value();
    AnswerDraft draft(inputs);
    if (surface->overLip)
        draft.put("over_lip", *surface->overLip, true);
    draft.put("level", surface->level, estimate);
    draft.put("depth", depth, estimate);
    draft.put("volume", volume, estimate);
    draft.put("free_board", rim - surface->level, estimate);
    if (surface->overLip) {
        draft.work("Q = (Q_w^-4 + Q_o^-4)^(-1/4) = ", inputs.shown("flow"), " with D = ", inputs.shown("bore"),
                   " at h = ", *surface->overLip);
        draft.work("level = lip + h = ", inputs.shown("lip"), " + ", *surface->overLip, " = ", surface->level);
        draft.note(predicted.id);
        draft.source("overflow-blend");
    }
    draft.work("depth = ", surface->level, " - ", bottom, " = ", depth);
    showVolume(draft, inputs, depth, volume);
    draft.work("free-board = ", rim, " - ", surface->level, " = ", rim - surface->level);
    return draft.take();
}

} // namespace

Worksheet vesselWater()
{
    InputSpec bore = boreInput();
    bore.meaning = "bore of the lip, with lip and flow";
    bore.least = "10 mm";
    bore.most = "300 mm";
    InputSpec flow = flowInput();
    flow.meaning = "flow over the lip, with lip and bore";
    Worksheet sheet;
    sheet.id = "vessel-water";
    sheet.question = "How much water stands in a vessel, and how far below its rim?";
    sheet.formula =
        "level = lip + h(Q, D) by overflow-level, or as given; V = A (level - bottom), of a medium only the "
        "pores; free-board = rim - level";
    sheet.inputs = vesselInputs();
    for (InputSpec spec : {levelInput("rim", "level of the rim"),
                           optionally(levelInput("level", "level of the water; or give lip, flow and bore")),
                           optionally(levelInput("lip", "level of the overflow's lip; or give level")),
                           optionally(flow), optionally(bore)})
        sheet.inputs.push_back(std::move(spec));
    sheet.outputs = {{"over_lip", "water over the lip", "m"},
                     {"level", "level of the water", "m"},
                     {"depth", "water over the bottom", "m"},
                     {"volume", "water in the vessel", "m3"},
                     {"free_board", "rim over the water; below 0 it stands over the rim", "m"}};
    sheet.sources = {"plain-geometry"};
    sheet.notes = {predicted};
    sheet.compute = compute;
    return sheet;
}

} // namespace sumpwright::worksheets

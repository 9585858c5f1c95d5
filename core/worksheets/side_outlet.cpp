#include "core/hydraulics/side_outlet.hpp"

#include "core/worksheets/answer_draft.hpp"
#include "core/worksheets/common_inputs.hpp"
#include "core/worksheets/each.hpp"

namespace sumpwright::worksheets
{
namespace
{

const Note freeBehind{"outlet-free-behind",
                      "The pipe behind must run freely and be able to carry the flow: check it on its own."};
const Note fullBore{"outlet-runs-full",
                    "The bore runs full: the level climbs fast with every litre more, and air is drawn in gulps."};

base::Outcome<Answer> compute(const Inputs& inputs)
{
    const auto flow = inputs.get<units::Flow>("flow");
    const auto bore = inputs.get<units::Length>("bore");
    const double entryK = inputs.ratio("entry_k");
    const hydraulics::SideOutletFlow out = hydraulics::sideOutletFlow(bore, flow, entryK);

    AnswerDraft draft(inputs);
    draft.put("critical_depth", out.criticalDepth);
    draft.put("velocity", out.velocity, out.drowned);
    draft.put("level_over_invert", out.levelOverInvert, out.drowned);
    draft.work("Q²/g = A³/T at y_c = ", out.criticalDepth, " with Q = ", flow, ", D = ", bore);
    if (out.drowned) {
        draft.work("y_c + (1 + K) v²/(2 g) > 1.2 D: the bore runs full, v = Q / (π/4 D²) = ", out.velocity);
        draft.work("H = D/2 + (1 + K) v²/(2 g), no less than 1.2 D = ", out.levelOverInvert);
        draft.note(fullBore.id);
    } else {
        draft.work("v = Q / A(y_c) = ", out.velocity);
        draft.work("H = y_c + (1 + K) v²/(2 g) = ", out.criticalDepth, " + (1 + ", entryK, ") × (", out.velocity,
                   ")² / (2 g) = ", out.levelOverInvert);
    }
    draft.note(freeBehind.id);
    return draft.take();
}

} // namespace

Worksheet sideOutlet()
{
    InputSpec bore = boreInput();
    bore.meaning = "inside diameter of the pipe through the wall";
    InputSpec flow = flowInput();
    flow.meaning = "flow out of the tank";
    InputSpec entry = quantityInput("entry_k", "loss coefficient of the entry", units::KindId::ratio, "0", "10");
    entry.sort = InputSort::Ratio;
    entry.ifAbsent = "0.5";

    Worksheet sheet;
    sheet.id = "side-outlet";
    sheet.question = "How high does the water stand over a pipe through the wall?";
    sheet.formula =
        "H = y_c + (1 + K) v²/(2 g), y_c from Q²/g = A³/T; above 1.2 D the bore runs full: H = D/2 + (1 + K) "
        "v²/(2 g), no less than 1.2 D";
    sheet.inputs = {flow, bore, entry};
    sheet.outputs = {{"critical_depth", "depth at the entry of the pipe", "m"},
                     {"velocity", "velocity there", "m/s"},
                     {"level_over_invert", "water in the tank over the pipe's invert", "m"}};
    sheet.sources = {"chow-1959", "entry-exit"};
    sheet.notes = {freeBehind, fullBore};
    sheet.compute = compute;
    return sheet;
}

} // namespace sumpwright::worksheets

#include "core/hydraulics/overflow.hpp"

#include "core/worksheets/answer_draft.hpp"
#include "core/worksheets/common_inputs.hpp"
#include "core/worksheets/each.hpp"

namespace sumpwright::worksheets
{
namespace
{

using hydraulics::OverflowRegime;

const Note deep{"overflow-too-deep",
                "The water stands more than two bores over the lip: outside the range of the formula."};
const Note ownCheck{"pipe-below", "The pipe below the lip must be able to carry the flow: check it on its own."};
const Note noisy{"overflow-noisy", "Above a Froude number of 0.3 the pipe gurgles, above 1 it runs full as a siphon."};

const Note predictedMore{"predicted-more-than-design",
                         "The predicted level is above that of the standard: plan for the higher one."};

std::string wordOf(OverflowRegime regime)
{
    switch (regime) {
    case OverflowRegime::Quiet:
        return "quiet";
    case OverflowRegime::Gurgling:
        return "gurgling";
    case OverflowRegime::Siphoning:
        return "siphoning";
    }
    return "quiet";
}

base::Outcome<Answer> compute(const Inputs& inputs)
{
    const auto flow = inputs.get<units::Flow>("flow");
    const auto bore = inputs.get<units::Length>("bore");
    const auto level = hydraulics::overflowLevel({bore, inputs.ratio("open_fraction")}, flow);
    if (!level)
        return level.refusal();
    const double froude = hydraulics::pipeFroudeNumber(flow, bore);
    const OverflowRegime regime = hydraulics::overflowRegimeOf(froude);

    AnswerDraft draft(inputs);
    draft.put("level_over_lip", level->predicted);
    draft.put("design_level", level->design, !level->inRange);
    draft.put("froude_number", froude);
    draft.put("regime", wordOf(regime));
    draft.work("weir: Q_w = 2/3 × 0.62 √(2 g) π D h^1.5; drowned lip: Q_o = 0.60 π/4 D² √(2 g h)");
    draft.work("Q = (Q_w^-4 + Q_o^-4)^(-1/4) = ", flow, " with D = ", bore, " at h = ", level->predicted);
    if (inputs.ratio("open_fraction") < 1.0)
        draft.work("both Q_w and Q_o, and the design flow, count only the open part ", inputs.ratio("open_fraction"));
    draft.work("design (EN 12056-3): Q = D h^1.5 / 7500 up to h = D/2, D² √h / 15000 above (L/s, mm), and no less than "
               "predicted: h = ",
               level->design);
    draft.work("J = Q / (π/4 D²) / √(g D) = ", froude, ": ", wordOf(regime));
    draft.note(ownCheck.id);
    if (!level->inRange)
        draft.note(deep.id);
    if (level->predicted > level->design)
        draft.note(predictedMore.id);
    if (regime != OverflowRegime::Quiet)
        draft.note(noisy.id);
    return draft.take();
}

InputSpec openInput()
{
    InputSpec open =
        quantityInput("open_fraction", "part of the lip a screen leaves open", units::KindId::ratio, "0", "1");
    open.sort = InputSort::Ratio;
    open.ifAbsent = "1";
    return moreThan(open);
}

} // namespace

Worksheet overflowLevel()
{
    InputSpec bore = boreInput();
    bore.meaning = "inside diameter of the upturned pipe at its lip";
    bore.least = "10 mm";
    bore.most = "300 mm";
    InputSpec flow = flowInput();
    flow.meaning = "flow over the lip";

    Worksheet sheet;
    sheet.id = "overflow-level";
    sheet.question = "How high does the water stand over an overflow?";
    sheet.formula =
        "Q = (Q_w^-4 + Q_o^-4)^(-1/4), Q_w = 2/3 × 0.62 √(2 g) π D h^1.5, Q_o = 0.60 π/4 D² √(2 g h); design "
        "level by EN 12056-3; J = v / √(g D)";
    sheet.inputs = {flow, bore, openInput()};
    sheet.outputs = {{"level_over_lip", "water over the lip, predicted", "m", true},
                     {"design_level", "water over the lip by EN 12056-3", "m"},
                     {"froude_number", "Froude number of the full bore", "1"},
                     {"regime", "quiet, gurgling or siphoning", "1"}};
    sheet.sources = {"overflow-blend", "en-12056-3", "hills-1983"};
    sheet.notes = {predictedMore, ownCheck, deep, noisy};
    sheet.compute = compute;
    return sheet;
}

} // namespace sumpwright::worksheets

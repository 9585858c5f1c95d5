#include "core/hydraulics/friction.hpp"
#include "core/worksheets/answer_draft.hpp"
#include "core/worksheets/common_inputs.hpp"
#include "core/worksheets/each.hpp"
#include "core/worksheets/regime_word.hpp"

namespace sumpwright::worksheets
{
namespace
{

using hydraulics::FlowRegime;

base::Outcome<Answer> compute(const Inputs& inputs)
{
    const double reynolds = inputs.ratio("reynolds");
    const double roughness = inputs.ratio("relative_roughness");
    const double factor = hydraulics::frictionFactor(reynolds, roughness);
    const FlowRegime regime = hydraulics::regimeOf(reynolds);
    const bool uncertain = regime == FlowRegime::Transition || roughness > hydraulics::roughestCharted;

    AnswerDraft draft(inputs);
    draft.put("friction_factor", factor, uncertain);
    draft.put("regime", regimeWord(regime));
    draft.work("Re = ", reynolds, ", ε/D = ", roughness, ": ", regimeWord(regime));
    draft.work("f = ", factor, " (", frictionLaw(regime), ")");
    if (regime == FlowRegime::Transition) {
        draft.note(transitionNote().id);
        draft.source("transition-cubic");
    }
    if (roughness > hydraulics::roughestCharted)
        draft.note(roughNote().id);
    return draft.take();
}

} // namespace

Worksheet frictionFactor()
{
    InputSpec reynolds;
    reynolds.name = "reynolds";
    reynolds.meaning = "Reynolds number, velocity x bore / kinematic viscosity";
    reynolds.sort = InputSort::Ratio;
    reynolds.least = "0.001";
    reynolds.most = "1e9";
    InputSpec roughness;
    roughness.name = "relative_roughness";
    roughness.meaning = "roughness of the wall / bore";
    roughness.sort = InputSort::Ratio;
    roughness.least = "0";
    roughness.most = "0.5";

    Worksheet sheet;
    sheet.id = "friction-factor";
    sheet.question = "What is the friction factor of a pipe?";
    sheet.formula = "Re ≤ 2000: f = 64/Re; Re ≥ 4000: 1/√f = -2 log10(ε/(3.7 D) + 2.51/(Re √f)); a cubic of ln f in "
                    "ln Re between";
    sheet.inputs = {reynolds, roughness};
    sheet.outputs = {{"friction_factor", "Darcy friction factor", "1"},
                     {"regime", "laminar, transition or turbulent", "1"}};
    sheet.sources = {"darcy-weisbach", "colebrook-1939"};
    sheet.notes = {transitionNote(), roughNote()};
    sheet.compute = compute;
    return sheet;
}

} // namespace sumpwright::worksheets

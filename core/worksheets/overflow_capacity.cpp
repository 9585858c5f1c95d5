#include "core/hydraulics/overflow.hpp"
#include "core/hydraulics/standpipe.hpp"

#include "core/worksheets/answer_draft.hpp"
#include "core/worksheets/common_inputs.hpp"
#include "core/worksheets/each.hpp"

namespace sumpwright::worksheets
{
namespace
{

const Note deep{"overflow-too-deep",
                "The water stands more than two bores over the lip: outside the range of the formula."};
const Note plugged{"screen-clogs",
                   "Leaves and slime close a screen: plan with the open part that is left of a dirty one."};
const Note pipeLess{
    "standpipe-less",
    "The pipe takes less as a film down its wall than comes over the lip: it gurgles and may run full."};
const Note smallPipe{"standpipe-small", "The standard lists vertical pipes from 50 mm: below that an estimate."};

base::Outcome<Answer> compute(const Inputs& inputs)
{
    const hydraulics::Lip lip{inputs.get<units::Length>("bore"), inputs.ratio("open_fraction")};
    const auto head = inputs.get<units::Length>("head");
    const bool tooDeep = head > hydraulics::deepestOverBore * lip.bore;
    const units::Flow flow = hydraulics::overflowFlow(lip, head);
    const units::Flow design = hydraulics::overflowDesignCapacity(lip, head);
    const units::Flow film = hydraulics::standpipeCapacity(lip.bore);

    AnswerDraft draft(inputs);
    draft.put("weir_flow", hydraulics::weirFlow(lip, head), tooDeep);
    draft.put("orifice_flow", hydraulics::drownedFlow(lip, head), tooDeep);
    draft.put("flow", flow, tooDeep);
    draft.put("design_capacity", design, tooDeep);
    draft.put("standpipe_capacity", film, lip.bore < hydraulics::smallestListedStandpipe);
    draft.work("weir: Q_w = 2/3 × 0.62 √(2 g) π D φ h^1.5 = ", hydraulics::weirFlow(lip, head), " with D = ", lip.bore,
               ", φ = ", lip.openFraction, ", h = ", head);
    draft.work("drowned lip: Q_o = 0.60 π/4 D² φ √(2 g h) = ", hydraulics::drownedFlow(lip, head));
    draft.work("Q = (Q_w^-4 + Q_o^-4)^(-1/4) = ", flow);
    draft.work("design (EN 12056-3): Q = φ D h^1.5 / 7500 up to h = D/2, φ D² √h / 15000 above (L/s, mm) = ", design);
    draft.work("vertical pipe below, vented, a third filled (EN 12056-3): Q = 2.5e-4 kb^-0.167 D^2.667 f^1.667 (L/s, "
               "mm; kb = 0.25, f = 0.33) = ",
               film);
    if (tooDeep)
        draft.note(deep.id);
    if (lip.openFraction < 1.0)
        draft.note(plugged.id);
    if (film < flow)
        draft.note(pipeLess.id);
    if (lip.bore < hydraulics::smallestListedStandpipe)
        draft.note(smallPipe.id);
    return draft.take();
}

std::vector<InputSpec> inputsOfOverflowCapacity()
{
    InputSpec bore = boreInput();
    bore.meaning = "inside diameter of the upturned pipe at its lip";
    bore.least = "10 mm";
    bore.most = "300 mm";
    InputSpec open =
        quantityInput("open_fraction", "part of the lip a screen leaves open", units::KindId::ratio, "0", "1");
    open.sort = InputSort::Ratio;
    open.ifAbsent = "1";
    return {bore, quantityInput("head", "height of the water over the lip", units::KindId::length, "0 mm", "3 m"),
            moreThan(open)};
}

} // namespace

Worksheet overflowCapacity()
{
    Worksheet sheet;
    sheet.id = "overflow-capacity";
    sheet.question = "How much does an overflow carry?";
    sheet.formula = "Q = (Q_w^-4 + Q_o^-4)^(-1/4), Q_w = 2/3 × 0.62 √(2 g) π D φ h^1.5, Q_o = 0.60 π/4 D² φ √(2 g h); "
                    "design capacity by EN 12056-3";
    sheet.inputs = inputsOfOverflowCapacity();
    sheet.outputs = {{"weir_flow", "flow over the free lip", "m3/s", true},
                     {"orifice_flow", "flow into the drowned lip", "m3/s", true},
                     {"flow", "flow over the lip, predicted", "m3/s", true},
                     {"design_capacity", "capacity of the lip by EN 12056-3", "m3/s"},
                     {"standpipe_capacity", "what the vertical pipe below takes without running full", "m3/s"}};
    sheet.sources = {"overflow-blend", "en-12056-3"};
    sheet.notes = {deep, plugged, pipeLess, smallPipe};
    sheet.compute = compute;
    return sheet;
}

} // namespace sumpwright::worksheets

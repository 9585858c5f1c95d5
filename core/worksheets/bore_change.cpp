#include <algorithm>

#include "core/hydraulics/fittings.hpp"
#include "core/worksheets/answer_draft.hpp"
#include "core/worksheets/common_inputs.hpp"
#include "core/worksheets/each.hpp"

namespace sumpwright::worksheets
{
namespace
{

const Note sudden{"change-is-sudden", "Counted as a sudden change; a reducer with a long cone costs less."};

base::Outcome<Answer> compute(const Inputs& inputs)
{
    const auto upstream = inputs.get<units::Length>("upstream_bore");
    const auto downstream = inputs.get<units::Length>("downstream_bore");
    const units::Length smaller = std::min(upstream, downstream);
    const double k = hydraulics::boreChangeCoefficient(upstream, downstream);
    const double onUpstream = hydraulics::restated(k, smaller, upstream);
    const double onDownstream = hydraulics::restated(k, smaller, downstream);
    AnswerDraft draft(inputs);
    draft.put("k_smaller", k);
    draft.put("k_upstream", onUpstream);
    draft.put("k_downstream", onDownstream);
    if (upstream < downstream)
        draft.work("K = (1 - β²)² with β = ", upstream, " / ", downstream, " = ", upstream / downstream, ": ", k);
    else
        draft.work("K = 0.0696 (1 - β⁵) λ² + (λ - 1)², λ = 1 + 0.622 (1 - 0.215 β² - 0.785 β⁵), β = ", downstream,
                   " / ", upstream, " = ", downstream / upstream, ": ", k);
    draft.work("on the velocity upstream K (D_up/D_small)⁴ = ", onUpstream, "; downstream ", onDownstream);
    draft.note(sudden.id);
    return draft.take();
}

InputSpec bore(const char* name, const char* meaning)
{
    InputSpec spec = boreInput();
    spec.name = name;
    spec.meaning = meaning;
    return spec;
}

} // namespace

Worksheet boreChange()
{
    Worksheet sheet;
    sheet.id = "bore-change";
    sheet.question = "How much does a change of bore cost?";
    sheet.formula = "wider: K = (1 - β²)²; narrower: K = 0.0696 (1 - β⁵) λ² + (λ - 1)²; on the velocity in the smaller "
                    "bore, β = D_small/D_large";
    sheet.inputs = {bore("upstream_bore", "bore the water comes from"), bore("downstream_bore", "bore it goes into")};
    sheet.outputs = {{"k_smaller", "loss coefficient on the velocity in the smaller bore", "1"},
                     {"k_upstream", "the same loss on the velocity upstream", "1"},
                     {"k_downstream", "the same loss on the velocity downstream", "1"}};
    sheet.sources = {"entry-exit"};
    sheet.notes = {sudden};
    sheet.compute = compute;
    return sheet;
}

} // namespace sumpwright::worksheets

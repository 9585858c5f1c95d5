#include "core/floor/load_total.hpp"
#include "core/floor/masses.hpp"
#include "core/worksheets/answer_draft.hpp"
#include "core/worksheets/common_inputs.hpp"
#include "core/worksheets/each.hpp"

namespace sumpwright::worksheets
{
namespace
{

const Note noProof{"live-load-no-proof",
                   "A comparison, no proof and no verdict: a licensed engineer and local codes decide on a floor."};

base::Outcome<Answer> compute(const Inputs& inputs)
{
    const auto pressure = inputs.get<units::GroundPressure>("pressure");
    const auto liveLoad = inputs.get<units::GroundPressure>("live_load");
    std::optional<units::GroundPressure> mean;
    if (inputs.has("mean_pressure"))
        mean = inputs.get<units::GroundPressure>("mean_pressure");
    const auto ratios = floor::compareWithLiveLoad(pressure, mean, liveLoad);
    AnswerDraft draft(inputs);
    draft.put("ratio", ratios.worst);
    if (ratios.mean)
        draft.put("mean_ratio", *ratios.mean);
    draft.put("water_depth", ratios.waterDepth);
    draft.work("p / q = ", pressure, " / ", liveLoad, " = ", ratios.worst);
    if (ratios.mean)
        draft.work("p_mean / q = ", *mean, " / ", liveLoad, " = ", *ratios.mean);
    draft.work("water that weighs as much: h = q / (ρ g) = ", liveLoad, " / (", floor::loadWaterDensity,
               " × 9.80665 m/s²) = ", ratios.waterDepth);
    draft.note(noProof.id);
    return draft.take();
}

InputSpec pressureInput(const char* name, const char* meaning)
{
    return quantityInput(name, meaning, units::KindId::groundPressure, "0 kPa", "100000 kPa");
}

} // namespace

Worksheet liveLoad()
{
    Worksheet sheet;
    sheet.id = "live-load";
    sheet.question = "How does a pressure compare with what a code lets a floor carry?";
    sheet.formula = "p / q; h = q / (ρ g)";
    sheet.inputs = {pressureInput("pressure", "pressure under the worst footprint"),
                    moreThan(pressureInput("live_load", "uniform live load of the floor's ordinary use, by the code")),
                    optionally(pressureInput("mean_pressure", "mean pressure over the floor"))};
    sheet.outputs = {{"ratio", "worst footprint over live load", "1"},
                     {"mean_ratio", "mean over the floor over live load", "1"},
                     {"water_depth", "depth of water that alone weighs as much as the live load", "m"}};
    sheet.sources = {"cgpm-1901", "en-1991-1-1-live"};
    sheet.notes = {noProof};
    sheet.compute = compute;
    return sheet;
}

} // namespace sumpwright::worksheets

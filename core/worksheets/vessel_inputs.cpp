#include "core/worksheets/vessel_inputs.hpp"

#include "core/worksheets/common_inputs.hpp"

namespace sumpwright::worksheets
{

std::vector<InputSpec> vesselInputs()
{
    InputSpec medium = moreThan(optionally(quantityInput(
        "medium_depth", "depth of the medium over the bottom, with porosity", units::KindId::length, "0 m", "10 m")));
    InputSpec porosity = moreThan(optionally(
        quantityInput("porosity", "share of the medium's volume that water can take", units::KindId::ratio, "0", "1")));
    porosity.sort = InputSort::Ratio;
    return {levelInput("bottom", "level of the inside bottom"), areaInput("area", "inside plan area"), medium,
            porosity};
}

base::Outcome<water::UprightVessel> vesselOf(const Inputs& inputs)
{
    if (inputs.has("medium_depth") != inputs.has("porosity")) {
        const bool depth = inputs.has("medium_depth");
        return base::Refusal{"worksheets.missing-input", depth ? "porosity" : "medium_depth",
                             "a medium needs its depth and its porosity",
                             depth ? "a plain number above 0, at most 1" : "a length above 0"};
    }
    std::vector<water::PorousLayer> layers;
    if (inputs.has("medium_depth"))
        layers.push_back({inputs.get<units::Length>("medium_depth"), inputs.ratio("porosity")});
    return water::UprightVessel::make(inputs.get<units::Area>("area"), std::move(layers));
}

void showVolume(AnswerDraft& draft, const Inputs& inputs, units::Length depth, units::Volume volume)
{
    const auto area = inputs.get<units::Area>("area");
    if (!inputs.has("medium_depth")) {
        draft.work("V = A h = ", area, " × ", depth, " = ", volume);
        return;
    }
    const auto medium = inputs.get<units::Length>("medium_depth");
    draft.work("V = A (n h_medium + h_above) at h = ", depth, ", medium ", medium,
               " with n = ", inputs.ratio("porosity"), ", A = ", area, ": ", volume);
}

} // namespace sumpwright::worksheets

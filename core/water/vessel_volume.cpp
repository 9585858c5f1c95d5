#include "core/water/vessel_volume.hpp"

#include <algorithm>
#include <string>
#include <utility>

namespace sumpwright::water
{

units::Area roundArea(units::Length diameter) { return units::pi / 4.0 * diameter * diameter; }

units::Area rectangleArea(units::Length length, units::Length width) { return length * width; }

UprightVessel::UprightVessel(units::Area plan, std::vector<PorousLayer> layers)
    : m_plan(plan), m_layers(std::move(layers))
{
}

base::Outcome<UprightVessel> UprightVessel::make(units::Area plan, std::vector<PorousLayer> layers)
{
    if (!(plan > units::Area() && plan < units::squareMetres(1e9)))
        return base::Refusal{"water.not-positive", "area", "the vessel has no plan area", "an area above 0"};
    units::Length below;
    for (std::size_t i = 0; i < layers.size(); ++i) {
        const std::string place = "layer " + std::to_string(i + 1);
        if (!(layers[i].porosity > 0.0 && layers[i].porosity <= 1.0))
            return base::Refusal{"water.porosity-out-of-range", place, "the porosity is no part of 1",
                                 "above 0, at most 1"};
        if (!(layers[i].top > below && layers[i].top < units::metres(1e6)))
            return base::Refusal{"water.layers-not-rising", place, "the layer has no thickness",
                                 "a top above the layer below it"};
        below = layers[i].top;
    }
    return UprightVessel(plan, std::move(layers));
}

units::Volume UprightVessel::waterAt(units::Length depth) const
{
    units::Volume water;
    units::Length bottom;
    for (const PorousLayer& layer : m_layers) {
        const units::Length top = std::min(layer.top, depth);
        if (top <= bottom)
            return water;
        water += m_plan * (top - bottom) * layer.porosity;
        bottom = top;
    }
    return depth > bottom ? water + m_plan * (depth - bottom) : water;
}

units::Length UprightVessel::depthOf(units::Volume water) const
{
    units::Volume left = std::max(water, units::Volume());
    units::Length bottom;
    for (const PorousLayer& layer : m_layers) {
        const units::Area pores = m_plan * layer.porosity;
        const units::Volume held = pores * (layer.top - bottom);
        if (left <= held)
            return bottom + left / pores;
        left -= held;
        bottom = layer.top;
    }
    return bottom + left / m_plan;
}

units::Area UprightVessel::wetAreaAt(units::Length depth) const
{
    for (const PorousLayer& layer : m_layers)
        if (depth < layer.top)
            return m_plan * layer.porosity;
    return m_plan;
}

units::Volume UprightVessel::grainsBelow(units::Length depth) const
{
    return depth > units::Length() ? m_plan * depth - waterAt(depth) : units::Volume();
}

} // namespace sumpwright::water

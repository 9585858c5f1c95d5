// Water in a vessel with upright walls, by depth, and back: medium up to a depth leaves only its pores to the water.
// Depth is measured from the vessel's own floor, up positive; below 0 counts as empty. No rim: the caller compares
// depth with wall height. Porosity above 0, at most 1.
#pragma once

#include <vector>

#include "core/base/outcome.hpp"
#include "core/units/measures.hpp"

namespace sumpwright::water
{

units::Area roundArea(units::Length diameter);
units::Area rectangleArea(units::Length length, units::Length width);

// Reaches from the top of the layer below (or the floor) up to `top`; above the last layer is free water.
struct PorousLayer {
    units::Length top;
    double porosity = 1.0;
};

class UprightVessel
{
public:
    // Refusals: "water.not-positive" (place "area"), "water.porosity-out-of-range" and "water.layers-not-rising"
    // (place "layer 1").
    static base::Outcome<UprightVessel> make(units::Area plan, std::vector<PorousLayer> layers = {});

    units::Volume waterAt(units::Length depth) const;
    units::Length depthOf(units::Volume water) const; // below 0 counts as empty
    // Free water surface plus pores at a depth: d volume / d depth (just above that depth).
    units::Area wetAreaAt(units::Length depth) const;
    // Volume the medium's grains take up below a depth.
    units::Volume grainsBelow(units::Length depth) const;

    units::Area plan() const { return m_plan; }
    const std::vector<PorousLayer>& layers() const { return m_layers; }

private:
    UprightVessel(units::Area plan, std::vector<PorousLayer> layers);

    units::Area m_plan;
    std::vector<PorousLayer> m_layers;
};

} // namespace sumpwright::water

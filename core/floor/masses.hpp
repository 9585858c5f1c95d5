// Masses of what stands on the floor: water, wet growing medium, empty vessels. kg, N (down positive), Pa on the
// floor. The load is the whole weight: buoyancy inside a vessel is internal and never subtracted; fish and feed
// displace their own mass of water and add nothing. Valid for vessels at rest. Sources: en-1991-1-1, floor-mass-model.
#pragma once

#include "core/units/measures.hpp"

namespace sumpwright::floor
{

// The density of water used for loads: 0.2 % above the truth at 20 degC, on the safe side.
constexpr units::Density loadWaterDensity = units::kilogramsPerCubicMetre(1000.0);

// A medium as it lies in a bed. Ratios: water absorbed per dry mass, volume between the grains and water held
// between them after draining per volume of bed; retained never exceeds porosity.
struct MediumFilling {
    units::Density dry;
    double absorption = 0.0;
    double porosity = 0.0;
    double retained = 0.0;
};

units::Mass waterMass(units::Volume volume, units::Density water = loadWaterDensity);

// Wet but drained: dry grains, water in them, water held between them.
units::Density drainedDensity(const MediumFilling& filling, units::Density water = loadWaterDensity);
// All space between the grains full of water.
units::Density floodedDensity(const MediumFilling& filling, units::Density water = loadWaterDensity);

// A bed of wet medium over a plan area, flooded from its floor to floodDepth and drained above; water standing over
// the medium counts as water.
units::Mass bedMass(units::Area plan, units::Length mediumDepth, units::Length floodDepth, const MediumFilling& filling,
                    units::Density water = loadWaterDensity);

// Estimate of an empty moulded or lined vessel: 4 % of the water it holds at its rim.
units::Mass estimatedTare(units::Volume atRim, units::Density water = loadWaterDensity);

// Mean pressure under a vessel standing flat on its footprint. The footprint must be greater than zero.
units::GroundPressure pressureUnder(units::Mass mass, units::Area footprint);

} // namespace sumpwright::floor

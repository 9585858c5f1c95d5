#include "core/floor/masses.hpp"

#include <algorithm>

#include "core/base/ensure.hpp"

namespace sumpwright::floor
{
namespace
{

constexpr double tareShare = 0.04; // of the water mass, from memory: 2-4 % is usual

void ensureSound(const MediumFilling& filling)
{
    base::ensure(filling.absorption >= 0.0, "absorption is not negative");
    base::ensure(filling.porosity >= 0.0 && filling.porosity <= 1.0, "porosity lies between 0 and 1");
    base::ensure(filling.retained >= 0.0 && filling.retained <= filling.porosity, "retained water fits the pores");
}

} // namespace

units::Mass waterMass(units::Volume volume, units::Density water) { return volume * water; }

units::Density drainedDensity(const MediumFilling& filling, units::Density water)
{
    ensureSound(filling);
    return filling.dry * (1.0 + filling.absorption) + filling.retained * water;
}

units::Density floodedDensity(const MediumFilling& filling, units::Density water)
{
    ensureSound(filling);
    return filling.dry * (1.0 + filling.absorption) + filling.porosity * water;
}

units::Mass bedMass(units::Area plan, units::Length mediumDepth, units::Length floodDepth, const MediumFilling& filling,
                    units::Density water)
{
    const units::Length none = units::metres(0.0);
    const units::Length flooded = std::clamp(floodDepth, none, mediumDepth);
    const units::Length drained = mediumDepth - flooded;
    const units::Length standing = std::max(floodDepth - mediumDepth, none);
    const units::Mass wet = plan * flooded * floodedDensity(filling, water);
    const units::Mass moist = plan * drained * drainedDensity(filling, water);
    return wet + moist + plan * standing * water;
}

units::Mass estimatedTare(units::Volume atRim, units::Density water) { return tareShare * waterMass(atRim, water); }

units::GroundPressure pressureUnder(units::Mass mass, units::Area footprint)
{
    base::ensure(footprint > units::squareMetres(0.0), "a footprint has an area");
    return units::spreadOver(units::weightOf(mass), footprint);
}

} // namespace sumpwright::floor

#include "core/hydraulics/energy.hpp"

#include <algorithm>

#include "core/base/ensure.hpp"

namespace sumpwright::hydraulics
{

units::Power hydraulicPower(units::Flow flow, units::Head head, units::Density density)
{
    const double watts = units::inPascals(units::pressureOf(head, density)) * units::inCubicMetresPerSecond(flow);
    return units::watts(std::max(watts, 0.0));
}

units::Power electricalPower(units::Power hydraulic, double wireToWater)
{
    base::ensure(wireToWater > 0.0 && wireToWater <= 1.0, "wire-to-water is above 0 and at most 1");
    return units::watts(units::inWatts(hydraulic) / wireToWater);
}

double wireToWater(units::Power hydraulic, units::Power electrical)
{
    return units::inWatts(electrical) > 0.0 ? units::inWatts(hydraulic) / units::inWatts(electrical) : 0.0;
}

units::Energy energyPerYear(units::Power electrical, units::Time runPerYear) { return electrical * runPerYear; }

units::Money costPerYear(units::Energy perYear, units::EnergyPrice price) { return perYear * price; }

} // namespace sumpwright::hydraulics

#include "core/floor/load_total.hpp"

#include "core/base/ensure.hpp"
#include "core/floor/masses.hpp"

namespace sumpwright::floor
{

LoadTotal totalLoad(const std::vector<StandingMass>& masses, units::Area floorArea)
{
    LoadTotal total;
    for (std::size_t i = 0; i < masses.size(); ++i) {
        total.mass += masses[i].mass;
        const units::GroundPressure pressure = pressureUnder(masses[i].mass, masses[i].footprint);
        if (i == 0 || pressure > total.worst) {
            total.worst = pressure;
            total.worstAt = i;
        }
    }
    total.weight = units::weightOf(total.mass);
    if (floorArea > units::Area())
        total.meanOverFloor = units::spreadOver(total.weight, floorArea);
    return total;
}

LiveLoadRatios compareWithLiveLoad(units::GroundPressure worst, const std::optional<units::GroundPressure>& mean,
                                   units::GroundPressure liveLoad)
{
    base::ensure(liveLoad > units::GroundPressure(), "a live load is above zero");
    LiveLoadRatios ratios;
    ratios.worst = worst / liveLoad;
    if (mean)
        ratios.mean = *mean / liveLoad;
    const units::GroundPressure perMetre =
        units::spreadOver(units::weightOf(waterMass(units::cubicMetres(1.0))), units::squareMetres(1.0));
    ratios.waterDepth = units::metres(liveLoad / perMetre);
    return ratios;
}

} // namespace sumpwright::floor

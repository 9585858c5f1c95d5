#include "core/assessment/site.hpp"

#include "core/nature/air.hpp"
#include "core/nature/water.hpp"

namespace sumpwright::assessment
{
namespace
{

Stage<units::Pressure> airPressureOf(const std::optional<units::Length>& altitude)
{
    if (!altitude)
        return Stage<units::Pressure>::notComputed({"altitude-missing", "altitude missing", {}});
    const auto pressure = nature::airPressureAt(*altitude);
    if (!pressure)
        return Stage<units::Pressure>::notComputed({"altitude-out-of-range", base::oneLine(pressure.refusal()), {}});
    return *pressure;
}

} // namespace

SiteResult siteResultOf(units::Temperature water, const std::optional<units::Length>& altitude)
{
    SiteResult site;
    site.water = water;
    site.airPressure = airPressureOf(altitude);
    const auto properties = nature::waterAt(water);
    if (properties) {
        site.density = properties->density;
        site.viscosity = properties->kinematicViscosity;
        site.vapourPressure = properties->vapourPressure;
        return site;
    }
    const Reason reason{"water-temperature-out-of-range", base::oneLine(properties.refusal()), {}};
    site.density = Stage<units::Density>::notComputed(reason);
    site.viscosity = Stage<units::KinematicViscosity>::notComputed(reason);
    site.vapourPressure = Stage<units::Pressure>::notComputed(reason);
    return site;
}

} // namespace sumpwright::assessment

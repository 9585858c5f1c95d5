#include "core/water/emptying.hpp"

#include <cmath>

#include "core/base/ensure.hpp"

namespace sumpwright::water
{
namespace
{

// m3/s through the hole at 1 m of water.
double outflowAtOneMetre(const Emptying& emptying)
{
    base::ensure(emptying.area > units::Area() && emptying.hole > units::Area() && emptying.coefficient > 0.0,
                 "a vessel that empties has an area and a hole");
    return emptying.coefficient * units::inSquareMetres(emptying.hole) * std::sqrt(2.0 * units::standardGravity);
}

double rootOf(units::Length level) { return std::sqrt(std::fmax(units::inMetres(level), 0.0)); }

} // namespace

units::Flow Emptying::flowAt(units::Length level) const
{
    return units::cubicMetresPerSecond(outflowAtOneMetre(*this) * rootOf(level));
}

units::Length Emptying::restingLevel() const
{
    const double root = units::inCubicMetresPerSecond(inflow) / outflowAtOneMetre(*this);
    return units::metres(root * root);
}

std::optional<units::Time> Emptying::timeFor(units::Length from, units::Length to) const
{
    const double c = outflowAtOneMetre(*this);
    const double q = units::inCubicMetresPerSecond(inflow);
    base::ensure(q >= 0.0, "what comes in is no less than nothing");
    const double high = rootOf(from);
    const double low = rootOf(to);
    if (!(high > low))
        return units::Time();
    if (q > 0.0 && !(c * low > q))
        return std::nullopt;
    const double byInflow = q > 0.0 ? q * std::log((c * high - q) / (c * low - q)) : 0.0;
    return units::seconds(2.0 * units::inSquareMetres(area) / (c * c) * (c * (high - low) + byInflow));
}

} // namespace sumpwright::water

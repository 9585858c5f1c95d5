#include "ui/charts/axis_ticks.hpp"

#include <algorithm>
#include <cmath>

namespace sumpwright::ui::charts
{

AxisTicks ticksFor(double least, double most, int wanted)
{
    least = std::min(least, 0.0);
    if (!std::isfinite(least) || !std::isfinite(most) || most - least <= 0.0)
        return {};
    const double rough = (most - least) / std::max(wanted, 1);
    const double power = std::pow(10.0, std::floor(std::log10(rough)));
    const double lead = rough / power;
    const double step = power * (lead <= 1.0 ? 1.0 : lead <= 2.0 ? 2.0 : lead <= 5.0 ? 5.0 : 10.0);
    AxisTicks ticks;
    ticks.step = step;
    ticks.least = std::floor(least / step + 1e-9) * step;
    ticks.most = std::ceil(most / step - 1e-9) * step;
    ticks.decimals = std::max(0, -static_cast<int>(std::floor(std::log10(step) + 1e-9)));
    return ticks;
}

} // namespace sumpwright::ui::charts

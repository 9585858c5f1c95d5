#include "ui/charts/value_axis.hpp"

namespace sumpwright::ui::charts
{

void setTicks(QValueAxis& axis, const AxisTicks& ticks)
{
    const bool coarser = ticks.step > axis.tickInterval();
    if (coarser)
        axis.setTickInterval(ticks.step);
    axis.setRange(ticks.least, ticks.most);
    if (!coarser)
        axis.setTickInterval(ticks.step);
    axis.setLabelFormat(QStringLiteral("%.%1f").arg(ticks.decimals));
}

} // namespace sumpwright::ui::charts

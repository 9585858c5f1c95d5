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
    const QString format = QStringLiteral("%.%1f").arg(ticks.decimals);
    if (axis.labelFormat() != format) // setting it lays the chart out anew, whether it differs or not
        axis.setLabelFormat(format);
}

} // namespace sumpwright::ui::charts

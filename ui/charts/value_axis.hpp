// setTicks: range, interval and number format of a value axis, in an order that never lays out the new range with the
// old interval: Qt would make every one of those ticks, hundreds of thousands where a plan of tonnes follows an empty
// one.
#pragma once

#include <QValueAxis>

#include "ui/charts/axis_ticks.hpp"

namespace sumpwright::ui::charts
{

void setTicks(QValueAxis& axis, const AxisTicks& ticks);

} // namespace sumpwright::ui::charts

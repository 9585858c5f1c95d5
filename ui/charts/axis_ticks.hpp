// Axis ticks at 1, 2 or 5 times a power of ten: from zero (or a round number below it) to a round number above.
#pragma once

namespace sumpwright::ui::charts
{

struct AxisTicks {
    double least = 0.0;
    double most = 1.0;
    double step = 0.5;
    int decimals = 1; // that the tick labels need
};

// Covers [least, most] with about `wanted` steps. A range without extent, or not finite, gives 0 ... 1.
AxisTicks ticksFor(double least, double most, int wanted = 4);

} // namespace sumpwright::ui::charts

#include <gtest/gtest.h>

#include <algorithm>

#include "ui/charts/value_axis.hpp"

namespace sumpwright::ui::charts
{
namespace
{

// The most ticks the axis would ever have had to lay out on the way from one range to the other.
double mostTicksOnTheWay(const AxisTicks& from, const AxisTicks& to)
{
    QValueAxis axis;
    setTicks(axis, from);
    double most = 0.0;
    const auto count = [&] { most = std::max(most, (axis.max() - axis.min()) / axis.tickInterval()); };
    QObject::connect(&axis, &QValueAxis::rangeChanged, count);
    QObject::connect(&axis, &QValueAxis::tickIntervalChanged, count);
    setTicks(axis, to);
    return most;
}

TEST(ChartAxis, NeverLaysOutALargeRangeWithASmallInterval)
{
    const AxisTicks small = ticksFor(0.0, 1.0), large = ticksFor(0.0, 250'000.0);
    EXPECT_LE(mostTicksOnTheWay(small, large), 10.0);
    EXPECT_LE(mostTicksOnTheWay(large, small), 10.0);
}

} // namespace
} // namespace sumpwright::ui::charts

#include "core/hydraulics/shared_level.hpp"

#include <algorithm>
#include <cmath>

#include "core/base/ensure.hpp"

namespace sumpwright::hydraulics
{
namespace
{

constexpr double smallest = 1e-15; // of the bracket: as near as numbers come

// Where a rising function passes zero, from a bracket with low below 0 and high from 0 up: false position with the
// weight of a side halved when it stays twice (Illinois), and halves of the bracket where that is slow.
template <class Function> double crossing(Function&& rises, double low, double high, double atLow, double atHigh)
{
    const double size = std::max(std::fabs(low), std::fabs(high));
    int side = 0;
    for (int step = 0; step < 200 && high - low > smallest * size; ++step) {
        const double slanted = low - atLow * (high - low) / (atHigh - atLow);
        const bool usable = step % 3 != 2 && slanted > low && slanted < high;
        const double middle = usable ? slanted : 0.5 * (low + high);
        if (middle <= low || middle >= high)
            break;
        const double value = rises(middle);
        if (value == 0.0)
            return middle;
        if (value < 0.0) {
            low = middle;
            atLow = value;
            atHigh = side == -1 ? 0.5 * atHigh : atHigh;
            side = -1;
        } else {
            high = middle;
            atHigh = value;
            atLow = side == 1 ? 0.5 * atLow : atLow;
            side = 1;
        }
    }
    return low;
}

} // namespace

units::Flow risesThrough(const std::function<units::Flow(units::Flow)>& function, units::Flow low, units::Flow high)
{
    const auto value = [&](double at) {
        return units::inCubicMetresPerSecond(function(units::cubicMetresPerSecond(at)));
    };
    const double a = units::inCubicMetresPerSecond(low), b = units::inCubicMetresPerSecond(high);
    const double atLow = value(a), atHigh = value(b);
    if (atLow >= 0.0 || atHigh < 0.0)
        return atLow >= 0.0 ? low : high;
    return units::cubicMetresPerSecond(crossing(value, a, b, atLow, atHigh));
}

units::Flow takenAt(std::size_t way, units::Elevation level, units::Flow most, const LevelNeeded& needed)
{
    const double wanted = units::inMetres(level), end = units::inCubicMetresPerSecond(most);
    const auto over = [&](double flow) {
        return units::inMetres(needed(way, units::cubicMetresPerSecond(flow))) - wanted;
    };
    const double atNone = over(0.0);
    if (atNone >= 0.0 || end <= 0.0)
        return {};
    const double atMost = over(end);
    return units::cubicMetresPerSecond(atMost <= 0.0 ? end : crossing(over, 0.0, end, atNone, atMost));
}

SharedLevel shareOut(std::size_t ways, units::Flow total, const LevelNeeded& needed)
{
    base::ensure(ways > 0, "water has a way out");
    SharedLevel shared{needed(0, total), std::vector<units::Flow>(ways)};
    std::size_t alone = 0; // the way that would take all at the lowest level
    for (std::size_t way = 1; way < ways; ++way)
        if (const units::Elevation level = needed(way, total); level < shared.level) {
            shared.level = level;
            alone = way;
        }
    units::Elevation lowest = shared.level;
    bool others = false;
    for (std::size_t way = 0; way < ways; ++way) {
        const units::Elevation begins = needed(way, {});
        lowest = std::min(lowest, begins);
        others = others || (way != alone && begins < shared.level);
    }
    if (!others) {
        shared.flows[alone] = total;
        return shared;
    }
    const double all = units::inCubicMetresPerSecond(total);
    const auto surplus = [&](double level) {
        double sum = -all;
        for (std::size_t way = 0; way < ways; ++way)
            sum += units::inCubicMetresPerSecond(takenAt(way, units::elevationMetres(level), total, needed));
        return sum;
    };
    const double low = units::inMetres(lowest), high = units::inMetres(shared.level);
    shared.level = units::elevationMetres(crossing(surplus, low, high, -all, surplus(high)));
    // Where a way takes any of several flows at one level, the flows jump there: each takes its part of the jump.
    const units::Elevation above = shared.level + units::metres(1e-12);
    units::Flow rest = total, jump;
    std::vector<units::Flow> jumps(ways);
    std::size_t largest = 0;
    for (std::size_t way = 0; way < ways; ++way) {
        shared.flows[way] = takenAt(way, shared.level, total, needed);
        jumps[way] = takenAt(way, above, total, needed) - shared.flows[way];
        rest -= shared.flows[way];
        jump += jumps[way];
    }
    const double part = jump > units::Flow() ? std::clamp(static_cast<double>(rest / jump), 0.0, 1.0) : 0.0;
    for (std::size_t way = 0; way < ways; ++way) {
        shared.flows[way] += part * jumps[way];
        rest -= part * jumps[way];
        largest = shared.flows[way] > shared.flows[largest] ? way : largest;
    }
    shared.flows[largest] += rest; // rounding
    return shared;
}

} // namespace sumpwright::hydraulics

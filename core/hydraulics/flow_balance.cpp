#include "core/hydraulics/flow_balance.hpp"

#include <cmath>

namespace sumpwright::hydraulics
{

units::Flow flowBalance(units::Flow in, units::Flow out)
{
    const units::Flow net = in - out;
    const double rounding = 1e-12 * units::inCubicMetresPerSecond(in);
    return std::abs(units::inCubicMetresPerSecond(net)) <= std::abs(rounding) ? units::Flow() : net;
}

} // namespace sumpwright::hydraulics

#include "core/hydraulics/submergence.hpp"

#include <algorithm>

#include "core/hydraulics/overflow.hpp"

namespace sumpwright::hydraulics
{

units::Length submergenceNeeded(units::Length inlet, units::Flow flow)
{
    return (1.0 + 2.3 * pipeFroudeNumber(std::max(flow, units::Flow()), inlet)) * inlet;
}

} // namespace sumpwright::hydraulics

// openFlowOf: a gravity run's water told as a result, from the levels that hydraulics found along it.
#pragma once

#include <optional>

#include "core/assessment/open_flow.hpp"
#include "core/assessment/pipework.hpp"

namespace sumpwright::assessment
{

// `forward`: the water runs as drawn; flow from 0 up.
OpenFlow openFlowOf(const DrawnRun& run, bool forward, units::Flow flow, const hydraulics::GravityWater& water,
                    std::optional<units::Elevation> tail);

} // namespace sumpwright::assessment

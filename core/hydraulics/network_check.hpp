// Whether a network can be solved at all: every number finite and in its range, every link between two nodes it has.
// Refusals as named in network.hpp.
#pragma once

#include <optional>

#include "core/base/outcome.hpp"
#include "core/hydraulics/network.hpp"

namespace sumpwright::hydraulics
{

std::optional<base::Refusal> faultOf(const Network& network);

} // namespace sumpwright::hydraulics

// What is left of the flows that come into a vessel when those that go out are taken off: 0 where the two differ by
// rounding only. Positive: more comes in. Continuity; key: plain-geometry.
#pragma once

#include "core/units/measures.hpp"

namespace sumpwright::hydraulics
{

units::Flow flowBalance(units::Flow in, units::Flow out);

} // namespace sumpwright::hydraulics

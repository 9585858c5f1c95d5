// What a pipe holds when its bore is full. Never negative; valid for lengths and bores from 0 up. Plain geometry.
// Key: plain-geometry.
#pragma once

#include "core/units/measures.hpp"

namespace sumpwright::hydraulics
{

units::Volume pipeContent(units::Length bore, units::Length length);

} // namespace sumpwright::hydraulics

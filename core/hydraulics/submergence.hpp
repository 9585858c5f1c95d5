// How deep a pump's inlet must lie under water so that no swirl draws air down to it: S = D (1 + 2.3 F) with the
// inlet's diameter D and its Froude number F = V / sqrt(g D). S is the height of the water over the inlet, up positive;
// flow from 0 up, below 0 counts as 0. Valid: bell or pipe inlets in still water; of a strainer it is an estimate. Bore
// above 0: a promise of the caller. Source: ANSI/HI 9.8, intake design, from memory. Key: hi-9-8.
#pragma once

#include "core/units/measures.hpp"

namespace sumpwright::hydraulics
{

units::Length submergenceNeeded(units::Length inlet, units::Flow flow);

} // namespace sumpwright::hydraulics

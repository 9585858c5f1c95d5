// A round pipe running partly full: its wetted section, and the depth at which it can just take a flow (critical
// depth). Depths and levels are heights over the invert, up positive; flows from 0 up, a flow below 0 counts as 0.
// Valid: any bore above 0 (a promise of the caller), level pipe, free surface. Critical depth holds flow^2/g = A^3/T to
// 1e-12 of the depth. Source: definition of critical flow, Chow 1959. Keys: chow-1959, plain-geometry.
#pragma once

#include "core/units/measures.hpp"

namespace sumpwright::hydraulics
{

struct WaterSection {
    units::Area area;
    units::Length surfaceWidth;
    units::Length wettedPerimeter;
};

// The depth is taken as no less than 0 and no more than the bore.
WaterSection sectionAt(units::Length bore, units::Length depth);

// 0 for no flow, always below the bore.
units::Length criticalDepth(units::Length bore, units::Flow flow);

// Level of the still water upstream: critical depth and (1 + entryK) velocity heads, entryK from 0 up.
units::Length criticalLevel(units::Length bore, units::Flow flow, double entryK);

} // namespace sumpwright::hydraulics

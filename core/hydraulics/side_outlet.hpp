// Water leaving a tank through a short level pipe in its wall: how high it stands over the pipe's invert, and the
// inverse. The entry runs as a channel at critical depth until the water stands 1.2 bores over the invert; from there
// the bore runs full and the level waits at 1.2 bores until the head of the full bore asks for more. So the level is
// continuous and never falls as the flow rises. Levels over the invert, up positive; a flow below 0 counts as 0.
// Valid: bore above 0 (a promise of the caller), free discharge, a pipe below that can carry the flow (own check);
// the limit of 1.2 bores is common practice for culverts with a free entry. Sources: critical flow, Chow 1959; entry
// loss 0.5 of a sharp flush entry. Keys: chow-1959, entry-exit.
#pragma once

#include "core/units/measures.hpp"

namespace sumpwright::hydraulics
{

constexpr double freeEntryLimit = 1.2; // level over the invert / bore up to which the entry has a free surface
constexpr double flushEntryK = 0.5;

struct SideOutletFlow {
    units::Length criticalDepth;
    units::Velocity velocity; // at critical depth; on the full bore where it is drowned
    units::Length levelOverInvert;
    bool drowned = false; // the bore runs full
};

SideOutletFlow sideOutletFlow(units::Length bore, units::Flow flow, double entryK = flushEntryK);

// The greatest flow whose level is no higher; jumps at 1.2 bores, where the full bore takes over. 0 below the invert.
units::Flow sideOutletCapacity(units::Length bore, units::Length levelOverInvert, double entryK = flushEntryK);

} // namespace sumpwright::hydraulics

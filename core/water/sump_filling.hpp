// Where the water of a sump stands when more comes down, or when some is taken: the same water in every state.
// Depths over the sump's own floor, up positive. Water is conserved; key: plain-geometry.
#pragma once

#include "core/units/measures.hpp"
#include "core/water/vessel_volume.hpp"

namespace sumpwright::water
{

struct SumpFilling {
    units::Volume volume;   // what it holds then
    units::Length depth;    // at most the spill depth
    units::Volume roomLeft; // up to the spill depth; negative: that much spills
    units::Volume spilled;  // 0 or more
};

// `water`: all that wants to be in it. Above the spill depth nothing stays.
SumpFilling fillSump(const UprightVessel& sump, units::Length spillDepth, units::Volume water);

// The depth that some water gives; below its floor, as if the walls went on, when more was taken than there is.
units::Length sumpDepth(const UprightVessel& sump, units::Volume water);

} // namespace sumpwright::water

#include "core/water/sump_filling.hpp"

#include <algorithm>

namespace sumpwright::water
{

SumpFilling fillSump(const UprightVessel& sump, units::Length spillDepth, units::Volume water)
{
    SumpFilling filling;
    filling.roomLeft = sump.waterAt(spillDepth) - water;
    filling.spilled = std::max(-filling.roomLeft, units::Volume());
    filling.volume = water - filling.spilled;
    filling.depth = filling.spilled > units::Volume() ? spillDepth : sump.depthOf(filling.volume);
    return filling;
}

units::Length sumpDepth(const UprightVessel& sump, units::Volume water)
{
    return water < units::Volume() ? water / sump.plan() : sump.depthOf(water);
}

} // namespace sumpwright::water

// The least fall that keeps a gravity run clean and moving. Common practice, no source.
#pragma once

#include "core/units/measures.hpp"

namespace sumpwright::findings
{

inline constexpr double leastFall = 0.01;                              // 1 in 100
inline constexpr units::Length enoughFall = units::millimetres(100.0); // a short drop needs no slope

} // namespace sumpwright::findings

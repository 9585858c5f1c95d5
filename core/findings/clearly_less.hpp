// Less by more than a drawing tells apart: half a millimetre. What rounding leaves of an equal length is no less.
#pragma once

#include "core/units/measures.hpp"

namespace sumpwright::findings
{

inline bool clearlyLess(units::Length length, units::Length limit) { return length < limit - units::millimetres(0.5); }

} // namespace sumpwright::findings

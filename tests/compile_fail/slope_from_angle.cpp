// A slope is a fall over a run, not an angle.
#include "core/units/measures.hpp"

using namespace sumpwright::units;

#ifdef TWIN
const Slope fall = slopeOf(metres(0.02), metres(1.0));
#else
const Slope fall = degrees(1.0); // must not compile
#endif

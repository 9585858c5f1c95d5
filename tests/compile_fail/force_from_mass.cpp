// A mass weighs only by standard gravity.
#include "core/units/measures.hpp"

using namespace sumpwright::units;

#ifdef TWIN
const Force weight = weightOf(kilograms(3.0));
#else
const Force weight = kilograms(3.0); // must not compile
#endif

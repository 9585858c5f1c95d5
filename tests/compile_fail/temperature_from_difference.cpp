// A temperature is a point on its scale, a difference is a distance on it.
#include "core/units/measures.hpp"

using namespace sumpwright::units;

#ifdef TWIN
const Temperature water = celsius(20.0) + kelvinDifference(5.0);
#else
const Temperature water = kelvinDifference(5.0); // must not compile
#endif

// What stands on the floor is no pressure in the water.
#include "core/units/measures.hpp"

using namespace sumpwright::units;

#ifdef TWIN
const GroundPressure bearing = groundPascals(5000.0);
#else
const GroundPressure bearing = pascals(5000.0); // must not compile
#endif

// A flow is a velocity times an area.
#include "core/units/measures.hpp"

using namespace sumpwright::units;

#ifdef TWIN
const Flow flow = metresPerSecond(1.0) * squareMetres(0.01);
#else
const Flow flow = metresPerSecond(1.0); // must not compile
#endif

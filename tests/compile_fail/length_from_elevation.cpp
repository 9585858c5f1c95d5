// A level becomes a length only above a named datum.
#include "core/units/measures.hpp"

using namespace sumpwright::units;

#ifdef TWIN
const Length height = aboveDatum(elevationMetres(1.0));
#else
const Length height = elevationMetres(1.0); // must not compile
#endif

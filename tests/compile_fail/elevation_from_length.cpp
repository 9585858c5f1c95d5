// A length becomes a level only by naming the datum.
#include "core/units/measures.hpp"

using namespace sumpwright::units;

#ifdef TWIN
const Elevation level = elevationAt(metres(1.0));
#else
const Elevation level = metres(1.0); // must not compile
#endif

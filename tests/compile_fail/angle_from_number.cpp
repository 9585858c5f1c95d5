// An angle is no number: degrees or radians?
#include "core/units/measures.hpp"

using namespace sumpwright::units;

#ifdef TWIN
const Angle turn = degrees(30.0);
#else
const Angle turn = 30.0; // must not compile
#endif

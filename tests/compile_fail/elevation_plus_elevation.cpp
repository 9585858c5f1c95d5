// Two levels do not add up; their difference is a length.
#include "core/units/measures.hpp"

using namespace sumpwright::units;

#ifdef TWIN
const Length rise = elevationMetres(1.0) - elevationMetres(0.4);
#else
const auto sum = elevationMetres(1.0) + elevationMetres(0.4); // must not compile
#endif

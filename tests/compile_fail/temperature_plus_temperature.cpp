// Two temperatures do not add up.
#include "core/units/measures.hpp"

using namespace sumpwright::units;

#ifdef TWIN
const TemperatureDifference step = celsius(25.0) - celsius(20.0);
#else
const auto sum = celsius(25.0) + celsius(20.0); // must not compile
#endif

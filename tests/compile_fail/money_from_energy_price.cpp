// A price of energy becomes money only with an energy.
#include "core/units/measures.hpp"

using namespace sumpwright::units;

#ifdef TWIN
const Money bill = perKilowattHour(0.31) * kilowattHours(100.0);
#else
const Money bill = perKilowattHour(0.31); // must not compile
#endif

// A head is an energy per weight of water; it becomes a pressure only with a density.
#include "core/units/measures.hpp"

using namespace sumpwright::units;

#ifdef TWIN
const Pressure sum = pressureOf(metresHead(1.0), kilogramsPerCubicMetre(998.0)) + pascals(1.0);
#else
const auto sum = metresHead(1.0) + pascals(1.0); // must not compile
#endif

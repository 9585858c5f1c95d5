// Ammonia counted as nitrogen and as NH3 do not add up.
#include "core/units/measures.hpp"

using namespace sumpwright::units;

#ifdef TWIN
const auto sum = fromSi<AmmoniaConcentration>(1e-3) + fromSi<AmmoniaConcentration>(1e-3);
#else
const auto sum = fromSi<AmmoniaNitrogenConcentration>(1e-3) + fromSi<AmmoniaConcentration>(1e-3); // must not compile
#endif

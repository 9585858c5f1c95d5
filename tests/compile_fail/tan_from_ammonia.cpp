// Total ammonia nitrogen counts nitrogen; ammonia counts NH3, 17/14 of it.
#include "core/units/measures.hpp"

using namespace sumpwright::units;

#ifdef TWIN
const TanConcentration measured = fromSi<TanConcentration>(1e-3);
#else
const TanConcentration measured = fromSi<AmmoniaConcentration>(1e-3); // must not compile
#endif

// A moment is written in newton metres but is no energy.
#include "core/units/measures.hpp"

using namespace sumpwright::units;

#ifdef TWIN
const Energy work = joules(5.0);
#else
const Moment moment = joules(5.0); // must not compile
#endif

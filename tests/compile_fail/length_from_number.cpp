// A number has no unit; the maker names it.
#include "core/units/measures.hpp"

using namespace sumpwright::units;

#ifdef TWIN
const Length width = metres(1.0);
#else
const Length width = 1.0; // must not compile
#endif

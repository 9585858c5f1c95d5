// A length leaves its kind only through a reader that names the unit.
#include "core/units/measures.hpp"

using namespace sumpwright::units;

#ifdef TWIN
const double width = inMetres(metres(1.0));
#else
const double width = metres(1.0); // must not compile
#endif

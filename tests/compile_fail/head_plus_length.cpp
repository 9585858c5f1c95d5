// A head is no distance, though both are written in metres.
#include "core/units/measures.hpp"

using namespace sumpwright::units;

#ifdef TWIN
const Head sum = metresHead(1.0) + metresHead(2.0);
#else
const auto sum = metresHead(1.0) + metres(2.0); // must not compile
#endif

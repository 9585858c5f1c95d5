// Nitrite and nitrate are different things, both counted as nitrogen.
#include "core/units/measures.hpp"

using namespace sumpwright::units;

#ifdef TWIN
const NitrateNitrogenConcentration nitrate = fromSi<NitrateNitrogenConcentration>(1e-3);
#else
const NitrateNitrogenConcentration nitrate = fromSi<NitriteNitrogenConcentration>(1e-3); // must not compile
#endif

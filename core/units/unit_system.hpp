// UnitSystem: which family of units a person reads. Files and results are always SI inside.
#pragma once

namespace sumpwright::units
{

enum class UnitSystem { metric, us };

} // namespace sumpwright::units

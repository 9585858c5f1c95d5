// A new port in a draft, with the tag free in its vessel.
#pragma once

#include "core/plan/edits/draft.hpp"

namespace sumpwright::plan
{

base::Id makePort(Draft& draft, base::Id vessel, PortKind kind, Point offset, units::Elevation level);

} // namespace sumpwright::plan

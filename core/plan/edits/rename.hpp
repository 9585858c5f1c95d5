// The tag of a vessel, pump, run, tee, fixture, valve or port. Unique in the plan; a port's in its vessel.
#pragma once

#include <string>

#include "core/plan/edits/edit.hpp"

namespace sumpwright::plan
{

Edit renameTag(base::Id subject, std::string tag);

} // namespace sumpwright::plan

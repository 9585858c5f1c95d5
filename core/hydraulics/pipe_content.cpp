#include "core/hydraulics/pipe_content.hpp"

#include "core/hydraulics/friction.hpp"

namespace sumpwright::hydraulics
{

units::Volume pipeContent(units::Length bore, units::Length length) { return boreArea(bore) * length; }

} // namespace sumpwright::hydraulics

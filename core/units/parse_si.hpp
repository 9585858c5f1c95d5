// The one door behind parse<Kind>(): text of a kind to its value in SI units. Internal to core/units.
#pragma once

#include <string_view>

#include "core/units/parse.hpp"

namespace sumpwright::units::detail
{

base::Outcome<double> parseSi(KindId kind, std::string_view text, const NumberStyle& style, const Reading& reading);

} // namespace sumpwright::units::detail

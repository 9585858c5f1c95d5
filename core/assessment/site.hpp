// Water and air at the site, from its design temperature and altitude.
#pragma once

#include <optional>

#include "core/assessment/site_result.hpp"
#include "core/units/measures.hpp"

namespace sumpwright::assessment
{

SiteResult siteResultOf(units::Temperature water, const std::optional<units::Length>& altitude);

} // namespace sumpwright::assessment

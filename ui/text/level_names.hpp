// Level names: what a level of the plan is called in elevation and section: "rim of fish tank T1".
#pragma once

#include <QString>

#include "core/plan/level_ref.hpp"

namespace sumpwright::ui::text
{

// "rim", "running level", "overflow L1", "vent of inlet I1", "vertex 3"
QString levelName(const plan::Plan& plan, const plan::LevelRef& level);
// "rim of fish tank T1"
QString levelOfWhat(const plan::Plan& plan, const plan::LevelRef& level);

} // namespace sumpwright::ui::text

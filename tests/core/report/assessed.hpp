// A whole assessment of a drawn plan, findings included.
#pragma once

#include "core/assessment/stages.hpp"
#include "core/findings/rules.hpp"
#include "tests/support/sound_plan.hpp"

namespace sumpwright::test
{

inline assessment::Assessment assessed(const DrawnPlan& drawn)
{
    auto result = assessment::Stages(catalogue::Catalogue::builtIn()).assess(drawn.plan);
    result.findings = std::make_shared<const assessment::Findings>(findings::findingsOf(result));
    return result;
}

} // namespace sumpwright::test

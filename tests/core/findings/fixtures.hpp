// For every rule a plan that raises it: the sound plan with one thing spoilt.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "core/assessment/finding.hpp"
#include "tests/support/sound_plan.hpp"

namespace sumpwright::test
{

struct RuleFixture {
    std::string id;
    assessment::Severity severity;
    std::function<void(SoundPlan&)> spoil;
};

std::vector<RuleFixture> pumpFixtures();   // pumps, runs, valves, outlets
std::vector<RuleFixture> waterFixtures();  // site, sump, levels, overflows, gravity runs
std::vector<RuleFixture> layoutFixtures(); // places, floor, electricity, catalogue

std::vector<RuleFixture> spaceFixtures(); // runs in each other's and other things' way, supports, air

} // namespace sumpwright::test

// An invented plan for the canvas tests: a tank, a sump, six grow beds, a pump with a header, drains, a small shed.
#pragma once

#include "core/plan/edits/edit.hpp"
#include "core/plan/plan.hpp"

namespace sumpwright::test
{

plan::Point at(double x, double y); // metres
// Applies, or fails the test with the refusal.
plan::Plan applied(const plan::Plan& plan, const plan::Edit& edit);
plan::Plan samplePlan();
// Rows of tanks and beds with their runs, for speed: about `beds` beds.
plan::Plan largePlan(int beds);
base::Id idOf(const plan::Plan& plan, const std::string& tag);

} // namespace sumpwright::test

#include "core/findings/each_rule.hpp"
#include "core/space/passages.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    const plan::Floor& floor = *situation.plan().floor;
    for (const space::PipeBody& body : situation.bodies())
        if (const auto beyond = space::aboveCeiling(body, floor)) {
            findings.push_back(findingOf(rule, Severity::warning, {body.run}));
            findings.back().value = *floor.clearHeight + beyond->by;
            findings.back().limit = *floor.clearHeight;
        }
}

} // namespace

// The top of the pipe over the floor, against the floor's clear height.
const Rule runAboveCeiling{"run.above-ceiling", "lead-under-ceiling", "common-practice", tell};

} // namespace sumpwright::findings

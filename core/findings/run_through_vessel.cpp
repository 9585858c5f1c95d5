#include "core/findings/each_rule.hpp"
#include "core/space/passages.hpp"
#include "core/space/prism.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const space::PipeBody& body : situation.bodies()) {
        const space::Box box = space::boxOf(body);
        for (const Outline& vessel : situation.outlines()) {
            if (!space::meet(box, vessel, body.radius))
                continue;
            const auto passage = space::passageThrough(body, vessel);
            if (!passage)
                continue;
            findings.push_back(findingOf(rule, Severity::warning, {body.run, vessel.id}));
            findings.back().value = passage->at.level;
            findings.back().limit = vessel.top;
        }
    }
}

} // namespace

// Through the wall, the bottom or the body of a vessel, other than once for each of its ends that meets the vessel.
const Rule runThroughVessel{"run.through-vessel", "lead-round-vessel", "common-practice", tell};

} // namespace sumpwright::findings

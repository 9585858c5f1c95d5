#include "core/assessment/rows.hpp"
#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const auto& run : situation.plan().runs) {
        const auto* pipe = assessment::rowOf(situation.catalogue().pipes(), run->pipeId);
        if (!pipe || !pipe->gravityOnly || run->service != plan::Service::pressure)
            continue;
        findings.push_back(findingOf(rule, Severity::error, {run->id}));
        findings.back().subject = pipe->name;
    }
}

} // namespace

// Drainage pipe and its fittings hold no pressure.
const Rule runGravityPipe{"run.gravity-pipe", "pressure-pipe", "common-practice", tell};

} // namespace sumpwright::findings

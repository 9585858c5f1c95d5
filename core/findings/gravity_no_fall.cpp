#include "core/findings/each_rule.hpp"
#include "core/findings/least_fall.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const auto& run : situation.plan().runs) {
        if (run->service != plan::Service::gravity || run->vertices.size() < 2)
            continue;
        const units::Length fall = run->vertices.front().level - run->vertices.back().level;
        const units::Length size = fall < units::Length() ? -fall : fall;
        const units::Length length = plan::lengthOf(*run);
        if (length <= units::Length() || size >= leastFall * length || size >= enoughFall)
            continue;
        findings.push_back(findingOf(rule, Severity::warning, {run->id}));
        findings.back().value = units::slopeOf(size, length);
        findings.back().limit = units::metresPerMetre(leastFall);
    }
}

} // namespace

const Rule gravityNoFall{"gravity.no-fall", "give-fall", "common-practice", tell};

} // namespace sumpwright::findings

#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const assessment::SumpResult& sump : situation.results().sumps->sumps) {
        if (!sump.pumpStop)
            continue;
        for (const assessment::Contribution& part : sump.pumpStop->contributions) {
            if (part.kind != assessment::ComesDown::siphonBack)
                continue;
            findings.push_back(findingOf(rule, Severity::warning, {part.element, part.port}));
            findings.back().value = part.volume;
        }
    }
}

} // namespace

// When the pump stops a submerged inlet empties its vessel backwards; a non-return valve alone is no guard.
const Rule siphonBack{"inlet.siphon-back", "raise-or-vent-inlet", "common-practice", tell};

} // namespace sumpwright::findings

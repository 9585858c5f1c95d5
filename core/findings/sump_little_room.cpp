#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

constexpr double reserve = 0.10; // of the sump, to stay free after the pump has stopped

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const assessment::SumpResult& sump : situation.results().sumps->sumps) {
        if (!sump.pumpStop || sump.pumpStop->spilled > units::Volume())
            continue;
        const units::Volume full = sump.pumpStop->volume + sump.pumpStop->roomLeft;
        if (sump.pumpStop->roomLeft >= reserve * full)
            continue;
        findings.push_back(findingOf(rule, Severity::warning, {sump.id}));
        findings.back().value = sump.pumpStop->roomLeft;
        findings.back().limit = reserve * full;
    }
}

} // namespace

const Rule sumpLittleRoom{"sump.little-room", "larger-sump", "common-practice", tell};

} // namespace sumpwright::findings

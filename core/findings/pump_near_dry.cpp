#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

constexpr units::Length usualDryRun = units::millimetres(50.0); // small submersibles with their inlet at the bottom

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const assessment::SumpResult& sump : situation.results().sumps->sumps) {
        if (!sump.cover)
            continue;
        for (const assessment::PumpCover& cover : *sump.cover) {
            if (cover.needed || cover.depth >= usualDryRun)
                continue;
            findings.push_back(findingOf(rule, Severity::warning, {cover.pump, sump.id}));
            findings.back().value = cover.depth;
            findings.back().limit = usualDryRun;
        }
    }
}

} // namespace

// Nobody said how much water the pump needs, and there is less than most small pumps do.
const Rule pumpNearDry{"pump.near-dry", "enter-least-depth", "common-practice", tell};

} // namespace sumpwright::findings

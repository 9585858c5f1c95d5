#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const assessment::SumpResult& sump : situation.results().sumps->sumps) {
        if (!sump.cover)
            continue;
        for (const assessment::PumpCover& cover : *sump.cover) {
            if (!cover.needed || cover.depth >= *cover.needed)
                continue;
            findings.push_back(findingOf(rule, Severity::error, {cover.pump, sump.id}));
            findings.back().value = cover.depth;
            findings.back().limit = *cover.needed;
        }
    }
}

} // namespace

// With every bed at its flood level the water over the sump floor is less than the pump asks for: it draws air.
const Rule pumpUncovered{"pump.uncovered", "raise-sump-level", "common-practice", tell};

} // namespace sumpwright::findings

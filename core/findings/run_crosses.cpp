#include "core/findings/each_rule.hpp"
#include "core/space/pipe_crossing.hpp"

namespace sumpwright::findings
{
namespace
{

const units::Length clearance = units::millimetres(5.0);
const units::Length rounding = units::millimetres(0.5);

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const space::PipeCrossing& crossing : space::crossingsOf(situation.bodies(), clearance)) {
        const bool bites = crossing.between < crossing.needed - rounding;
        findings.push_back(
            findingOf(rule, bites ? Severity::warning : Severity::note, {crossing.first, crossing.second}));
        findings.back().value = crossing.between;
        findings.back().limit = crossing.needed + clearance;
    }
}

} // namespace

// Centre lines nearer than both outside radii and 5 mm; for each run the worst place only.
const Rule runCrosses{"run.crosses", "lead-apart", "common-practice", tell};

} // namespace sumpwright::findings

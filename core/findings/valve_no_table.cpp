#include "core/assessment/rows.hpp"
#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const auto& run : situation.plan().runs)
        for (const plan::Valve& valve : run->valves) {
            const auto* row = assessment::rowOf(situation.catalogue().fittings(), valve.fittingId);
            if (!row || !row->openings.empty() || row->valve == catalogue::ValveKind::Check || valve.lossCoefficient ||
                valve.opening <= 0.0 || valve.opening >= 1.0)
                continue;
            findings.push_back(findingOf(rule, Severity::warning, {run->id, valve.id}));
            findings.back().value = valve.opening;
            findings.back().subject = row->name;
        }
}

} // namespace

// A partly closed valve without a table of openings counts as open.
const Rule valveNoTable{"valve.no-table", "enter-loss", "common-practice", tell};

} // namespace sumpwright::findings

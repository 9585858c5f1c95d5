#include "core/assessment/rows.hpp"
#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const assessment::RunResult& run : situation.results().flow->runs)
        for (const assessment::FittingLoss& loss : run.fittings)
            if (loss.basis == assessment::LossBasis::none) {
                findings.push_back(findingOf(rule, Severity::warning, {run.id}));
                findings.back().subject = loss.fittingId;
            }
    for (const auto& vessel : situation.plan().vessels)
        if (vessel->medium && !assessment::rowOf(situation.catalogue().media(), vessel->medium->mediumId)) {
            findings.push_back(findingOf(rule, Severity::error, {vessel->id}));
            findings.back().subject = vessel->medium->mediumId;
        }
}

} // namespace

// A fitting without a row costs no head; a bed without one has no volume.
const Rule catalogueUnknownRow{"catalogue.unknown-row", "choose-row", "common-practice", tell};

} // namespace sumpwright::findings

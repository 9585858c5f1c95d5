#include "core/assessment/rows.hpp"
#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const auto& pump : situation.plan().pumps) {
        const auto* row = assessment::rowOf(situation.catalogue().pumps(), pump->modelId);
        if (!row || row->provenance.basis != catalogue::Basis::Inference)
            continue;
        findings.push_back(findingOf(rule, Severity::note, {pump->id}));
        findings.back().subject = row->name;
    }
}

} // namespace

// A typical pump, not one of a maker.
const Rule catalogueInvented{"catalogue.invented", "enter-own-curve", "pump-invented", tell};

} // namespace sumpwright::findings

#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const auto& vessel : situation.plan().vessels) {
        if (!vessel->stand || vessel->stand->kind == plan::StandKind::flat)
            continue;
        findings.push_back(findingOf(rule, Severity::note, {vessel->id}));
        const auto* load = assessment::find(situation.results().floor->vessels, vessel->id);
        if (load && load->in(assessment::LoadCase::toRim) && load->in(assessment::LoadCase::toRim)->perLeg)
            findings.back().value = *load->in(assessment::LoadCase::toRim)->perLeg;
    }
}

} // namespace

// Legs and piers do not share a load evenly; a stand must not lean or sink.
const Rule raisedTank{"floor.legs", "engineer-for-legs", "common-practice", tell};

} // namespace sumpwright::findings

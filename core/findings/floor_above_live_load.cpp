#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    const auto& comparison = situation.results().floor->comparison;
    if (!comparison || comparison->worstFootprintRatio <= 1.0)
        return;
    const auto& total = situation.results().floor->in(assessment::LoadCase::toRim);
    findings.push_back(findingOf(rule, Severity::warning, {total->worstVessel}));
    findings.back().value = total->worstFootprint;
    findings.back().limit = comparison->liveLoad;
    findings.back().subject = comparison->use + " (" + comparison->code + ")";
    findings.back().source = comparison->source;
}

} // namespace

// Heavier than what the code lets an ordinary floor of the chosen use carry. Less than that proves nothing.
const Rule aboveLiveLoad{"floor.above-live-load", "ask-engineer", "asce-7", tell};

} // namespace sumpwright::findings

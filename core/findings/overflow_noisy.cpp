#include "core/findings/each_rule.hpp"
#include "core/hydraulics/overflow.hpp"

namespace sumpwright::findings
{
namespace
{

// A lip without a bell siphon: there a full pipe is meant.
bool startsAtPlainLip(const Situation& situation, base::Id id)
{
    const plan::Run& run = *situation.plan().runs.find(id);
    for (const plan::RunEnd* end : {&run.from, &run.to}) {
        const auto* at = std::get_if<plan::PortEnd>(end);
        const plan::Vessel* vessel = at ? situation.plan().vessels.find(at->vessel) : nullptr;
        const plan::Port* port = vessel ? plan::findPort(*vessel, at->port) : nullptr;
        if (port && port->kind == plan::PortKind::lip)
            return !port->drainLevel;
    }
    return false;
}

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const assessment::RunResult& run : situation.results().flow->runs) {
        const auto flow = situation.largestFlow(run.id);
        if (run.service != plan::Service::gravity || run.bore <= units::Length() || !flow ||
            !startsAtPlainLip(situation, run.id))
            continue;
        const double froude = hydraulics::pipeFroudeNumber(*flow, run.bore);
        if (froude <= hydraulics::quietFroude)
            continue;
        const bool siphons = froude > hydraulics::siphoningFroude;
        findings.push_back(findingOf(rule, siphons ? Severity::warning : Severity::note, {run.id}));
        findings.back().value = froude;
        findings.back().limit = hydraulics::quietFroude;
    }
}

} // namespace

// Above Froude 0.3 an overflow pipe gurgles and surges; above 1 it runs full.
const Rule overflowNoisy{"overflow.noisy", "larger-overflow", "hills-1983", tell};

} // namespace sumpwright::findings

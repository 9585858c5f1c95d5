#include <algorithm>

#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

bool isShut(const assessment::RunResult& run)
{
    return std::any_of(run.fittings.begin(), run.fittings.end(),
                       [](const assessment::FittingLoss& loss) { return loss.shut; });
}

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    if (!situation.anyPumpRuns())
        return;
    for (const auto& run : situation.plan().runs) {
        const auto* at = std::get_if<plan::PortEnd>(&run->to);
        const auto* result = assessment::find(situation.results().flow->runs, run->id);
        if (run->service != plan::Service::pressure || !at || isShut(*result))
            continue;
        const auto& flow = result->flow[RunningState::least];
        if (!flow || flow->flow > units::Flow())
            continue;
        const plan::Vessel* vessel = situation.plan().vessels.find(at->vessel);
        const plan::Port* port = vessel ? plan::findPort(*vessel, at->port) : nullptr;
        if (!port)
            continue;
        findings.push_back(findingOf(rule, Severity::error, {at->vessel, run->id}));
        findings.back().value = port->level;
    }
}

} // namespace

// The mouth lies above the reach of the pump.
const Rule outletWithoutFlow{"outlet.no-flow", "within-reach", "common-practice", tell};

} // namespace sumpwright::findings

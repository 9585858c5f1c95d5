#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

bool isOpen(const Situation& situation, const plan::RunEnd& end)
{
    const plan::Plan& plan = situation.plan();
    if (const auto* at = std::get_if<plan::PortEnd>(&end)) {
        const plan::Vessel* vessel = plan.vessels.find(at->vessel);
        return !vessel || !plan::findPort(*vessel, at->port);
    }
    if (const auto* pump = std::get_if<plan::PumpEnd>(&end))
        return !plan.pumps.find(pump->pump);
    if (const auto* tee = std::get_if<plan::TeeEnd>(&end))
        return !plan.tees.find(tee->tee);
    return true;
}

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const auto& run : situation.plan().runs) {
        if (!isOpen(situation, run->from) && !isOpen(situation, run->to))
            continue;
        const bool pressure = run->service == plan::Service::pressure;
        findings.push_back(findingOf(rule, pressure ? Severity::error : Severity::warning, {run->id}));
    }
}

} // namespace

// Computed as if the open end were capped.
const Rule runOpenEnd{"run.open-end", "connect-run", "common-practice", tell};

} // namespace sumpwright::findings

#include <algorithm>

#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const auto& vessel : situation.plan().vessels) {
        const plan::Port* lip = plan::mainLip(*vessel);
        const auto outflow = situation.largestOutflow(vessel->id);
        if (vessel->kind == plan::VesselKind::sump || !lip || !outflow || *outflow <= units::Flow())
            continue;
        const bool led = std::any_of(vessel->ports.begin(), vessel->ports.end(), [&](const plan::Port& port) {
            return port.kind != plan::PortKind::inlet && !situation.meetingsAt(port.id).empty();
        });
        if (led)
            continue;
        findings.push_back(findingOf(rule, Severity::error, {vessel->id, lip->id}));
        findings.back().value = *outflow;
    }
}

} // namespace

// What runs over its lip is led nowhere, and the circuit loses it.
const Rule vesselLipToNowhere{"vessel.lip-to-nowhere", "connect-lip", "common-practice", tell};

} // namespace sumpwright::findings

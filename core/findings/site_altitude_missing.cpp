#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    const auto& pressure = situation.results().site->airPressure;
    if (!pressure)
        findings.push_back(findingOf(rule, Severity::note, {}));
}

} // namespace

// Air pressure, and later oxygen, cannot be computed.
const Rule altitudeMissing{"site.altitude-missing", "enter-altitude", "iso-2533", tell};

} // namespace sumpwright::findings

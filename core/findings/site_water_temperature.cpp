#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    const assessment::SiteResult& site = *situation.results().site;
    if (site.viscosity)
        return;
    findings.push_back(findingOf(rule, Severity::error, {}));
    findings.back().value = site.water;
}

} // namespace

const Rule waterTemperature{"site.water-temperature", "enter-temperature", "iapws-sr6-08", tell};

} // namespace sumpwright::findings

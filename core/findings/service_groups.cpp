#include "core/findings/service_groups.hpp"

#include <algorithm>

namespace sumpwright::findings
{

void tellService(const Situation& situation, const Rule& rule, bool (*wanting)(const assessment::Service&),
                 std::vector<Finding>& findings)
{
    for (const plan::ElementKind kind : {plan::ElementKind::vessel, plan::ElementKind::pump, plan::ElementKind::run}) {
        std::vector<base::Id> elements;
        units::Volume most;
        for (const assessment::Service& service : situation.results().service->elements)
            if (wanting(service) && plan::kindOf(situation.plan(), service.id) == kind) {
                elements.push_back(service.id);
                most = std::max(most, service.comesOut);
            }
        if (elements.empty())
            continue;
        findings.push_back(findingOf(rule, Severity::note, std::move(elements)));
        findings.back().value = most;
    }
}

} // namespace sumpwright::findings

#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const auto& vessel : situation.plan().vessels) {
        std::vector<base::Id> elements{vessel->id};
        for (const plan::Port& port : vessel->ports)
            if (port.kind == plan::PortKind::inlet)
                for (const Meeting& meeting : situation.meetingsAt(port.id))
                    if (meeting.run->service == plan::Service::pressure)
                        elements.push_back(meeting.run->id);
        if (elements.size() > 2)
            findings.push_back(findingOf(rule, Severity::note, std::move(elements)));
    }
}

} // namespace

const Rule vesselFedTwice{"vessel.fed-twice", "check-inlets", "common-practice", tell};

} // namespace sumpwright::findings

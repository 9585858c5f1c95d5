#include <set>
#include <string>
#include <utility>

#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

bool hasRuleOfItsOwn(const std::string& reason)
{
    static const std::set<std::string> others{"sump-level-missing",
                                              "sump-level-outside",
                                              "sump-runs-dry",
                                              "several-sumps",
                                              "level-unknown",
                                              "no-way-out",
                                              "water-temperature-out-of-range"};
    return others.count(reason) > 0;
}

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    std::set<std::pair<std::string, base::Id>> told;
    const auto add = [&](const auto& stage, base::Id vessel) {
        if (stage || hasRuleOfItsOwn(stage.reason().id))
            return;
        const base::Id element = stage.reason().element.valid() ? stage.reason().element : vessel;
        if (!told.insert({stage.reason().text, element}).second)
            return;
        const bool unsolved = stage.status() == assessment::Status::notSolved;
        findings.push_back(findingOf(rule, unsolved ? Severity::error : Severity::warning, {element}));
        findings.back().subject = stage.reason().text;
    };
    for (const assessment::VesselResult& vessel : situation.results().water->vessels) {
        add(vessel.water[assessment::WaterState::runningMost], vessel.id);
        add(vessel.inflow[RunningState::most], vessel.id);
        add(vessel.water[assessment::WaterState::runningLeast], vessel.id);
    }
}

} // namespace

// Every reason for which a level or an inflow is missing and that no other rule tells.
const Rule waterNotSolved{"water.not-solved", "see-reason", "common-practice", tell};

} // namespace sumpwright::findings

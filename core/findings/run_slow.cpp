#include <optional>
#include <set>

#include "core/findings/each_rule.hpp"
#include "core/hydraulics/sloping_drain.hpp"

namespace sumpwright::findings
{
namespace
{

bool carriesWaste(plan::VesselKind kind)
{
    return kind == plan::VesselKind::fishTank || kind == plan::VesselKind::settler;
}

bool beginsAtFish(const Situation& situation, const plan::RunEnd& end)
{
    const auto* at = std::get_if<plan::PortEnd>(&end);
    const plan::Vessel* vessel = at ? situation.plan().vessels.find(at->vessel) : nullptr;
    const plan::Port* port = vessel ? plan::findPort(*vessel, at->port) : nullptr;
    return port && port->kind != plan::PortKind::inlet && carriesWaste(vessel->kind);
}

base::Id teeOf(const plan::RunEnd& end)
{
    const auto* tee = std::get_if<plan::TeeEnd>(&end);
    return tee ? tee->tee : base::Id{};
}

// Gravity runs that lead away from a fish tank or settler, and those beyond the tees they lead to.
std::set<base::Id> wasteRuns(const Situation& situation)
{
    std::set<base::Id> found, tees;
    for (std::size_t before = 1; before != found.size() + tees.size();) {
        before = found.size() + tees.size();
        for (const auto& run : situation.plan().runs) {
            if (run->service != plan::Service::gravity)
                continue;
            const bool fed = beginsAtFish(situation, run->from) || beginsAtFish(situation, run->to) ||
                             (tees.count(teeOf(run->from)) > 0 && situation.largestFlow(run->id));
            if (!fed)
                continue;
            found.insert(run->id);
            for (const plan::RunEnd* end : {&run->from, &run->to})
                if (teeOf(*end).valid())
                    tees.insert(teeOf(*end));
        }
    }
    return found;
}

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    const std::set<base::Id> waste = wasteRuns(situation);
    for (const assessment::RunResult& run : situation.results().flow->runs) {
        std::optional<units::Velocity> slowest;
        bool drowned = false;
        for (const auto& flow : run.flow.values) {
            if (!flow || !flow->open || !flow->open->slowest || flow->meanOfTide)
                continue;
            slowest = slowest ? std::min(*slowest, *flow->open->slowest) : *flow->open->slowest;
            drowned = drowned || flow->open->backedUp;
        }
        if (!slowest || *slowest >= hydraulics::settlingVelocity || waste.count(run.id) == 0)
            continue;
        findings.push_back(findingOf(rule, drowned ? Severity::note : Severity::warning, {run.id}));
        findings.back().value = *slowest;
        findings.back().limit = hydraulics::settlingVelocity;
    }
}

} // namespace

// Fish solids settle in it; a note where that is for the water standing at its end.
const Rule runSlow{"run.slow", "steeper-or-smaller", "drain-defaults", tell};

} // namespace sumpwright::findings

#include <optional>

#include "core/findings/each_rule.hpp"
#include "core/hydraulics/overflow.hpp"
#include "core/hydraulics/side_outlet.hpp"

namespace sumpwright::findings
{
namespace
{

constexpr units::Length told = units::millimetres(5.0);

struct Held {
    base::Id run;
    units::Length by;
};

// By how much the run behind the lowest outlet raises the water over what the outlet itself would need.
std::optional<Held> heldIn(const Situation& situation, const plan::Vessel& vessel, RunningState state)
{
    const auto as =
        state == RunningState::least ? assessment::WaterState::runningLeast : assessment::WaterState::runningMost;
    const auto* result = assessment::find(situation.results().water->vessels, vessel.id);
    if (!result || !result->water[as] || result->water[as]->heldBy == assessment::HeldBy::drainLevel)
        return std::nullopt;
    for (const plan::Port& port : vessel.ports) {
        if (port.kind == plan::PortKind::inlet)
            continue;
        for (const Meeting& meeting : situation.meetingsAt(port.id)) {
            const auto* run = assessment::find(situation.results().flow->runs, meeting.run->id);
            if (!run || !run->flow[state] || !run->flow[state]->open || run->bore <= units::Length())
                continue;
            const units::Flow flow = run->flow[state]->flow;
            const units::Flow size = flow < units::Flow() ? -flow : flow;
            const units::Length bore = port.bore.value_or(run->bore);
            const double open = port.openFraction.value_or(1.0);
            units::Elevation own = port.level;
            if (port.kind == plan::PortKind::sideOutlet)
                own = port.level - 0.5 * bore + hydraulics::sideOutletFlow(bore, size / open).levelOverInvert;
            else if (const auto over = hydraulics::overflowLevel({bore, open}, size))
                own = port.level + over->predicted;
            const units::Elevation needed = run->flow[state]->open->levelNeeded;
            if (size > units::Flow() && needed > own + told && needed <= result->water[as]->level + told)
                return Held{run->id, needed - own};
        }
    }
    return std::nullopt;
}

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const auto& vessel : situation.plan().vessels) {
        if (vessel->kind == plan::VesselKind::sump)
            continue;
        std::optional<Held> most;
        for (const RunningState state : assessment::allRunningStates)
            if (const auto held = heldIn(situation, *vessel, state); held && (!most || held->by > most->by))
                most = held;
        if (!most)
            continue;
        findings.push_back(findingOf(rule, Severity::warning, {vessel->id, most->run}));
        findings.back().value = most->by;
    }
}

} // namespace

// The pipe behind the overflow cannot take the water as fast as the overflow could.
const Rule vesselHeldByRun{"vessel.held-by-run", "larger-drain", "open-channel", tell};

} // namespace sumpwright::findings

#include <algorithm>

#include "core/findings/each_rule.hpp"
#include "core/hydraulics/air_clearing.hpp"
#include "core/hydraulics/friction.hpp"
#include "core/space/high_points.hpp"

namespace sumpwright::findings
{
namespace
{

// A mouth in the air lets the air out behind a high point; what that costs is told by run.low-pressure.
bool endsInAir(const Situation& situation, const plan::RunEnd& end)
{
    const auto* port = std::get_if<plan::PortEnd>(&end);
    const plan::Vessel* vessel = port ? situation.plan().vessels.find(port->vessel) : nullptr;
    const plan::Port* mouth = vessel ? plan::findPort(*vessel, port->port) : nullptr;
    if (!mouth)
        return false;
    const auto* water = assessment::find(situation.results().water->vessels, vessel->id);
    const auto* level = water ? &water->water[assessment::WaterState::runningLeast] : nullptr;
    return !level || !*level || (*level)->level <= mouth->level;
}

bool runsForward(const assessment::RunResult& result)
{
    for (const auto& flow : result.flow.values)
        if (flow && flow->flow != units::Flow())
            return flow->flow > units::Flow();
    return true;
}

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const space::PipeBody& body : situation.bodies()) {
        const plan::Run& run = *situation.plan().runs.find(body.run);
        const auto* result = assessment::find(situation.results().flow->runs, run.id);
        if (!result || result->bore <= units::Length())
            continue;
        const bool forward = runsForward(*result);
        const auto flow = situation.largestFlow(run.id);
        for (const space::HighPoint& point : space::highPointsOf(body, forward)) {
            const units::Velocity needed = hydraulics::airClearingVelocity(result->bore, point.steepest);
            const units::Velocity has = flow ? hydraulics::meanVelocity(*flow, result->bore) : units::Velocity();
            if (has >= needed || (point.fallsToEnd && endsInAir(situation, forward ? run.to : run.from)))
                continue;
            findings.push_back(findingOf(rule, Severity::warning, {run.id}));
            if (flow)
                findings.back().value = has;
            findings.back().limit = needed;
            findings.back().beside = point.top.level;
            findings.back().subject = std::to_string(point.vertex + 1);
        }
    }
}

} // namespace

// A pipe that rises and falls again keeps air at its highest point until the water is quick enough to carry it out.
const Rule runHighPoint{"run.high-point", "vent-or-lead-level", "wisner-1975", tell};

} // namespace sumpwright::findings

// Two rules: a fish tank with one way out, and a second way out that is too small.
#include <algorithm>
#include <optional>

#include "core/findings/each_rule.hpp"
#include "core/hydraulics/overflow.hpp"

namespace sumpwright::findings
{
namespace
{

// What the running pumps would bring if all of it went to this vessel, with no loss but the lift.
units::Flow atLowestHead(const Situation& situation, const plan::Vessel& vessel, units::Elevation mouth)
{
    const assessment::Assessment& results = situation.results();
    const auto* own = assessment::find(results.water->vessels, vessel.id);
    units::Flow sum;
    for (const assessment::PumpResult& pump : results.pumps->pumps) {
        const plan::Pump* drawn = situation.plan().pumps.find(pump.id);
        const auto* source = drawn ? assessment::find(results.water->vessels, drawn->vessel) : nullptr;
        if (!own || !source || !drawn->running || source->circuit != own->circuit || pump.pumpCurve.empty() ||
            !source->water[assessment::WaterState::runningMost])
            continue;
        const units::Head lift = units::liftBetween(source->water[assessment::WaterState::runningMost]->level, mouth);
        for (const assessment::CurveSample& sample : pump.pumpCurve)
            if (sample.head >= lift && (&sample == &pump.pumpCurve.front() || sample.flow > units::Flow()))
                sum = std::max(sum, sample.flow);
    }
    return sum;
}

units::Flow mostThatCanCome(const Situation& situation, const plan::Vessel& vessel)
{
    units::Flow most = situation.largestOutflow(vessel.id).value_or(units::Flow());
    std::optional<units::Elevation> mouth;
    for (const plan::Port& port : vessel.ports)
        for (const Meeting& meeting : situation.meetingsAt(port.id))
            if (port.kind == plan::PortKind::inlet && meeting.run->service == plan::Service::pressure)
                mouth = mouth ? std::min(*mouth, port.level) : port.level;
    return mouth ? std::max(most, atLowestHead(situation, vessel, *mouth)) : most;
}

units::Length boreOf(const Situation& situation, const plan::Port& lip)
{
    if (lip.bore)
        return *lip.bore;
    for (const Meeting& meeting : situation.meetingsAt(lip.id))
        if (const auto* run = assessment::find(situation.results().flow->runs, meeting.run->id))
            return run->bore;
    return {};
}

struct Second {
    const plan::Port* lip = nullptr; // the lowest but one; null: none
    units::Flow capacity;            // by EN 12056-3 of all lips but the lowest, water up to the rim
};

Second secondOf(const Situation& situation, const plan::Vessel& vessel, const plan::Port& first)
{
    Second second;
    for (const plan::Port& port : vessel.ports) {
        if (port.kind != plan::PortKind::lip || port.id == first.id)
            continue;
        if (!second.lip || port.level < second.lip->level)
            second.lip = &port;
        const units::Length bore = boreOf(situation, port), room = plan::rimLevel(vessel) - port.level;
        if (bore > units::Length() && room > units::Length())
            second.capacity += hydraulics::overflowDesignCapacity({bore, port.openFraction.value_or(1.0)}, room);
    }
    return second;
}

template <class Tell> void eachTank(const Situation& situation, Tell&& tellOf)
{
    for (const auto& vessel : situation.plan().vessels) {
        const plan::Port* first = plan::mainLip(*vessel);
        if (vessel->kind != plan::VesselKind::fishTank || !first)
            continue;
        if (const units::Flow flow = mostThatCanCome(situation, *vessel); flow > units::Flow())
            tellOf(*vessel, secondOf(situation, *vessel, *first), flow);
    }
}

void tellMissing(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    eachTank(situation, [&](const plan::Vessel& vessel, const Second& second, units::Flow flow) {
        if (second.lip)
            return;
        findings.push_back(findingOf(rule, Severity::note, {vessel.id}));
        findings.back().value = flow;
    });
}

void tellTooSmall(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    eachTank(situation, [&](const plan::Vessel& vessel, const Second& second, units::Flow flow) {
        if (!second.lip || second.capacity >= flow)
            return;
        findings.push_back(findingOf(rule, Severity::warning, {vessel.id, second.lip->id}));
        findings.back().value = flow;
        findings.back().limit = second.capacity;
    });
}

} // namespace

const Rule emergencyMissing{"overflow.emergency-missing", "second-overflow", "common-practice", tellMissing};
const Rule emergencyTooSmall{"overflow.emergency-too-small", "larger-emergency", "en-12056-3", tellTooSmall};

} // namespace sumpwright::findings

#include "core/findings/situation.hpp"

#include <algorithm>

namespace sumpwright::findings
{
namespace
{

base::Id metBy(const plan::RunEnd& end)
{
    if (const auto* port = std::get_if<plan::PortEnd>(&end))
        return port->port;
    if (const auto* pump = std::get_if<plan::PumpEnd>(&end))
        return pump->pump;
    if (const auto* tee = std::get_if<plan::TeeEnd>(&end))
        return tee->tee;
    return {};
}

} // namespace

Situation::Situation(const Assessment& assessment)
    : m_assessment(assessment), m_bodies(space::bodiesOf(assessment.plan, *assessment.catalogue))
{
    for (const auto& run : plan().runs) {
        if (const base::Id met = metBy(run->from); met.valid())
            m_meetings[met].push_back({run.get(), true});
        if (const base::Id met = metBy(run->to); met.valid())
            m_meetings[met].push_back({run.get(), false});
    }
    for (const auto& vessel : plan().vessels)
        m_outlines.push_back(footprintOf(*vessel));
}

const std::vector<Meeting>& Situation::meetingsAt(base::Id portPumpOrTee) const
{
    static const std::vector<Meeting> nobody;
    const auto found = m_meetings.find(portPumpOrTee);
    return found == m_meetings.end() ? nobody : found->second;
}

bool Situation::anyPumpRuns() const
{
    return std::any_of(plan().pumps.begin(), plan().pumps.end(), [](const auto& pump) { return pump->running; });
}

std::optional<units::Flow> Situation::largestOutflow(base::Id vessel) const
{
    std::optional<units::Flow> largest;
    if (const auto* result = assessment::find(results().water->vessels, vessel))
        for (const RunningState state : assessment::allRunningStates)
            if (const auto outflow = result->leftOver(state); outflow && (!largest || *outflow > *largest))
                largest = *outflow;
    return largest;
}

std::optional<units::Flow> Situation::largestFlow(base::Id run) const
{
    std::optional<units::Flow> largest;
    if (const auto* result = assessment::find(results().flow->runs, run))
        for (const auto& flow : result->flow.values)
            if (flow) {
                const units::Flow size = flow->flow < units::Flow() ? -flow->flow : flow->flow;
                largest = largest ? std::max(*largest, size) : size;
            }
    return largest;
}

} // namespace sumpwright::findings

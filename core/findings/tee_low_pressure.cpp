#include <algorithm>

#include "core/findings/each_rule.hpp"
#include "core/hydraulics/network.hpp"

namespace sumpwright::findings
{
namespace
{

bool flowsThrough(const Situation& situation, base::Id tee)
{
    const std::vector<Meeting>& meetings = situation.meetingsAt(tee);
    return std::any_of(meetings.begin(), meetings.end(), [&situation](const Meeting& meeting) {
        const auto flow = situation.largestFlow(meeting.run->id);
        return flow && *flow > units::Flow();
    });
}

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    for (const assessment::TeeResult& result : situation.results().flow->tees) {
        const plan::Tee* tee = situation.plan().tees.find(result.id);
        const auto& grade = result.grade[RunningState::least];
        if (!tee || !grade || !situation.anyPumpRuns())
            continue;
        const units::Head over = units::liftBetween(tee->level, *grade);
        if (over >= hydraulics::lowestPressureHead || !flowsThrough(situation, result.id))
            continue;
        findings.push_back(findingOf(rule, Severity::warning, {result.id}));
        findings.back().value = over;
        findings.back().limit = hydraulics::lowestPressureHead;
    }
}

} // namespace

// Less than the air outside: a leak there draws air in, and a high point gathers it.
const Rule teeLowPressure{"tee.low-pressure", "lower-pipe", "todini-pilati-1988", tell};

} // namespace sumpwright::findings

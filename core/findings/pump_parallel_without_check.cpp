#include <algorithm>
#include <set>

#include "core/findings/each_rule.hpp"

namespace sumpwright::findings
{
namespace
{

bool guarded(const Situation& situation, base::Id run)
{
    const auto* result = assessment::find(situation.results().flow->runs, run);
    return result && std::any_of(result->fittings.begin(), result->fittings.end(),
                                 [](const assessment::FittingLoss& loss) { return loss.oneWay; });
}

// Does this run's other end reach, by runs and tees, another pump?
bool joinsAnother(const Situation& situation, const plan::Run& first, base::Id pump)
{
    std::vector<const plan::Run*> front{&first};
    std::set<const plan::Run*> seen{&first};
    while (!front.empty()) {
        const plan::Run& run = *front.back();
        front.pop_back();
        for (const plan::RunEnd* end : {&run.from, &run.to}) {
            const auto* other = std::get_if<plan::PumpEnd>(end);
            if (other && other->pump != pump)
                return true;
            const auto* tee = std::get_if<plan::TeeEnd>(end);
            for (const Meeting& meeting : situation.meetingsAt(tee ? tee->tee : base::Id{}))
                if (seen.insert(meeting.run).second)
                    front.push_back(meeting.run);
        }
    }
    return false;
}

void tell(const Situation& situation, const Rule& rule, std::vector<Finding>& findings)
{
    std::vector<base::Id> unguarded;
    for (const auto& pump : situation.plan().pumps)
        for (const Meeting& meeting : situation.meetingsAt(pump->id))
            if (joinsAnother(situation, *meeting.run, pump->id) && !guarded(situation, meeting.run->id))
                unguarded.push_back(pump->id);
    if (unguarded.size() > 1)
        findings.push_back(findingOf(rule, Severity::warning, unguarded));
}

} // namespace

// Two pumps on one main: what one lifts runs back through the other as soon as that one stops.
const Rule pumpParallelWithoutCheck{"pump.parallel-without-check", "add-non-return", "common-practice", tell};

} // namespace sumpwright::findings

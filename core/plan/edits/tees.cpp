#include "core/plan/edits/tees.hpp"

#include <cmath>
#include <map>

#include "core/plan/edits/run_shape.hpp"
#include "core/plan/edits/tee_pieces.hpp"

namespace sumpwright::plan
{

namespace
{

// The vertex next to the tee, seen from it.
const Vertex& nextFrom(const Run& run, RunSide side)
{
    return side == RunSide::from ? run.vertices[1] : run.vertices[run.vertices.size() - 2];
}

// Cosine of the angle between two legs leaving the tee: -1 straight on.
double straightness(const Draft& draft, const Tee& tee, const Meeting& a, const Meeting& b)
{
    const Vertex& p = nextFrom(draft.the<Run>(a.run), a.side);
    const Vertex& q = nextFrom(draft.the<Run>(b.run), b.side);
    const double pv[] = {units::inMetres(p.at.x - tee.at.x), units::inMetres(p.at.y - tee.at.y),
                         units::inMetres(p.level - tee.level)};
    const double qv[] = {units::inMetres(q.at.x - tee.at.x), units::inMetres(q.at.y - tee.at.y),
                         units::inMetres(q.level - tee.level)};
    const double lengths = std::hypot(pv[0], pv[1], pv[2]) * std::hypot(qv[0], qv[1], qv[2]);
    return lengths > 0.0 ? (pv[0] * qv[0] + pv[1] * qv[1] + pv[2] * qv[2]) / lengths : 1.0;
}

std::map<base::Id, int> endsAtTees(const Plan& plan)
{
    std::map<base::Id, int> counts;
    for (const auto& run : plan.runs)
        for (const RunEnd* end : {&run->from, &run->to})
            if (const auto* tee = std::get_if<TeeEnd>(end))
                ++counts[tee->tee];
    return counts;
}

void mendTee(Draft& draft, base::Id tee)
{
    const std::vector<Meeting> meetings = meetingsAt(draft.plan, tee);
    if (meetings.size() == 2 && canJoin(draft, meetings[0], meetings[1]))
        return joinRuns(draft, tee, meetings[0], meetings[1]);
    if (meetings.size() == 2 && meetings[0].run != meetings[1].run)
        return; // two pipes of different size meet here
    for (const Meeting& meeting : meetings)
        openEnd(draft, meeting);
    draft.erase<Tee>(tee);
}

} // namespace

bool canJoin(const Draft& draft, const Meeting& a, const Meeting& b)
{
    const Run& one = draft.the<Run>(a.run);
    const Run& other = draft.the<Run>(b.run);
    const bool twoPumps = std::holds_alternative<PumpEnd>(endOf(one, otherSide(a.side))) &&
                          std::holds_alternative<PumpEnd>(endOf(other, otherSide(b.side)));
    return a.run != b.run && one.pipeId == other.pipeId && one.service == other.service && !twoPumps;
}

void openEnd(Draft& draft, const Meeting& meeting)
{
    draft.change<Run>(meeting.run, [&](Run& run) { endOf(run, meeting.side) = OpenEnd{}; });
}

void joinRuns(Draft& draft, base::Id tee, const Meeting& a, const Meeting& b)
{
    Run joined = joinedRun(draft.the<Tee>(tee), draft.the<Run>(a.run), a.side, draft.the<Run>(b.run), b.side);
    draft.erase<Run>(a.run == joined.id ? b.run : a.run);
    draft.put(std::move(joined));
    draft.erase<Tee>(tee);
}

void dissolveTee(Draft& draft, base::Id id)
{
    const Tee tee = draft.the<Tee>(id);
    const std::vector<Meeting> meetings = meetingsAt(draft.plan, id);
    std::optional<std::pair<Meeting, Meeting>> best;
    double least = 2.0;
    for (std::size_t i = 0; i < meetings.size(); ++i)
        for (std::size_t j = i + 1; j < meetings.size(); ++j) {
            if (!canJoin(draft, meetings[i], meetings[j]))
                continue;
            const double cosine = straightness(draft, tee, meetings[i], meetings[j]);
            if (cosine < least - 1e-9) {
                least = cosine;
                best = {meetings[i], meetings[j]};
            }
        }
    for (const Meeting& meeting : meetings)
        if (!best || (meeting != best->first && meeting != best->second))
            openEnd(draft, meeting);
    if (best)
        joinRuns(draft, id, best->first, best->second);
    else
        draft.erase<Tee>(id);
}

void mendTees(Draft& draft)
{
    if (draft.plan.tees.empty() || draft.plan.runs.sameElements(draft.before.runs))
        return;
    std::map<base::Id, int> was = endsAtTees(draft.before);
    std::map<base::Id, int> now = endsAtTees(draft.plan);
    std::vector<base::Id> lessened;
    for (const auto& tee : draft.plan.tees)
        if (now[tee->id] < 2 || (now[tee->id] == 2 && was[tee->id] > 2))
            lessened.push_back(tee->id);
    for (const base::Id tee : lessened)
        mendTee(draft, tee);
}

} // namespace sumpwright::plan

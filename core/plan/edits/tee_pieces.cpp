#include "core/plan/edits/tee_pieces.hpp"

#include <algorithm>
#include <cmath>

#include "core/plan/edits/run_shape.hpp"
#include "core/plan/edits/tees.hpp"
#include "core/plan/limits.hpp"
#include "core/plan/tidy.hpp"

namespace sumpwright::plan
{

namespace
{

constexpr double sameLength = 1e-6; // m; of two halves the first keeps the name

bool straightThrough(const Vertex& before, const Vertex& at, const Vertex& after)
{
    const double detour = reaches({before, at, after}).back() - reaches({before, after}).back();
    return detour < 1e-8;
}

std::size_t legAt(const std::vector<double>& reach, double at)
{
    std::size_t leg = 1;
    while (leg + 1 < reach.size() && reach[leg] < at)
        ++leg;
    return leg;
}

// Inner vertex whose place a tee at this distance takes; 0 when none.
std::size_t vertexTaken(const std::vector<double>& reach, double at)
{
    for (std::size_t i = 1; i + 1 < reach.size(); ++i)
        if (std::abs(reach[i] - at) <= units::inMetres(limits::sameVertex))
            return i;
    return 0;
}

void cut(const Run& run, const std::vector<double>& reach, double at, Tee& tee, Run& first, Run& second)
{
    const auto& vertices = run.vertices;
    const std::size_t taken = vertexTaken(reach, at);
    const std::size_t next = taken ? taken + 1 : legAt(reach, at);
    Vertex meeting = taken ? vertices[taken] : placeAlong(run, at / reach.back());
    if (!taken) {
        meeting.at = tidy(meeting.at);
        meeting.level = tidy(meeting.level);
    }
    const auto split = vertices.begin() + static_cast<std::ptrdiff_t>(next);
    first.vertices.assign(vertices.begin(), taken ? split - 1 : split);
    first.vertices.push_back(meeting); // keeps the bend chosen at a vertex, for the day the tee goes
    meeting.bendFittingId.clear();
    meeting.lossCoefficient.reset();
    second.vertices = {meeting};
    second.vertices.insert(second.vertices.end(), split, vertices.end());
    tee.at = meeting.at;
    tee.level = meeting.level;
    tee.onVertex = taken != 0;
}

void shareValves(const Run& run, double length, Run& first, Run& second)
{
    const double firstLength = reaches(first.vertices).back();
    const double secondLength = reaches(second.vertices).back();
    first.valves.clear();
    second.valves.clear();
    for (Valve valve : run.valves) {
        const double at = valve.station * length;
        const bool early = at <= firstLength;
        const double share = early ? at / firstLength : (at - firstLength) / secondLength;
        valve.station = std::clamp(tidyRatio(share), 0.0, 1.0);
        (early ? first : second).valves.push_back(valve);
    }
}

std::optional<Split> takenEndTee(const Run& run, double at, double length)
{
    const double least = units::inMetres(limits::leastPiece);
    if (at >= least && length - at >= least)
        return std::nullopt;
    const bool early = at < length - at;
    if (const auto* tee = std::get_if<TeeEnd>(early ? &run.from : &run.to))
        return Split{tee->tee, run.id, run.id, units::metres(early ? 0.0 : length)};
    refuse("plan.too-close-to-end", run.tag, "the place is less than 10 mm from the run's end",
           "a place farther along, or connect to the end itself");
}

} // namespace

Split splitRun(Draft& draft, base::Id id, double station)
{
    const Run run = draft.the<Run>(id);
    if (!(station >= 0.0 && station <= 1.0))
        refuse("plan.out-of-range", run.tag + ", station", "the place is not on the run", "0 to 1");
    const std::vector<double> reach = reaches(run.vertices);
    const double length = reach.back();
    if (const auto taken = takenEndTee(run, station * length, length))
        return *taken;
    Tee tee;
    tee.id = draft.newId();
    tee.tag = draft.newTag("J");
    Run first = run;
    Run second = run;
    cut(run, reach, station * length, tee, first, second);
    first.to = TeeEnd{tee.id, std::nullopt};
    second.from = TeeEnd{tee.id, std::nullopt};
    shareValves(run, length, first, second);
    const double firstLength = reaches(first.vertices).back();
    const bool secondKeeps = reaches(second.vertices).back() > firstLength + sameLength;
    Run& made = secondKeeps ? first : second;
    made.id = draft.newId();
    made.tag = draft.newTag("R");
    made.extraFittings.clear();
    made.extra.clear();
    const Split split{tee.id, first.id, second.id, units::metres(firstLength)};
    draft.put(std::move(tee));
    draft.put(std::move(first));
    draft.put(std::move(second));
    return split;
}

Run joinedRun(const Tee& tee, const Run& a, RunSide aSide, const Run& b, RunSide bSide)
{
    const bool aLeads = aSide == bSide ? a.id < b.id : aSide == RunSide::to;
    const Run& lead = aLeads ? a : b;
    const Run& other = aLeads ? b : a;
    const bool otherLonger = units::inMetres(lengthOf(other)) > units::inMetres(lengthOf(lead)) + sameLength;
    const Run& keeper = otherLonger ? other : lead;
    const Run& added = otherLonger ? lead : other;
    const RunSide keeperSide = &keeper == &a ? aSide : bSide;
    const RunSide addedSide = &added == &a ? aSide : bSide;

    Run first = keeperSide == RunSide::to ? keeper : added;
    Run second = keeperSide == RunSide::to ? added : keeper;
    if (keeperSide == RunSide::to && addedSide == RunSide::to) {
        const bool addedPumps = std::holds_alternative<PumpEnd>(added.from);
        first = addedPumps ? added : keeper;
        second = reversed(addedPumps ? keeper : added);
    } else if (keeperSide == RunSide::from && addedSide == RunSide::from) {
        first = reversed(added);
    }
    const bool keepVertex = tee.onVertex || !straightThrough(first.vertices[first.vertices.size() - 2],
                                                             first.vertices.back(), second.vertices[1]);
    const double firstLength = units::inMetres(lengthOf(first));
    const double secondLength = units::inMetres(lengthOf(second));

    Run joined = keeper;
    joined.from = first.from;
    joined.to = second.to;
    joined.vertices = first.vertices;
    if (!keepVertex)
        joined.vertices.pop_back();
    joined.vertices.insert(joined.vertices.end(), second.vertices.begin() + 1, second.vertices.end());
    const double length = units::inMetres(lengthOf(joined));
    for (Valve& valve : first.valves)
        valve.station = tidyRatio(valve.station * firstLength / length);
    for (Valve& valve : second.valves)
        valve.station = std::min(1.0, tidyRatio((firstLength + valve.station * secondLength) / length));
    joined.valves = first.valves;
    joined.valves.insert(joined.valves.end(), second.valves.begin(), second.valves.end());
    joined.extraFittings.insert(joined.extraFittings.end(), added.extraFittings.begin(), added.extraFittings.end());
    return joined;
}

} // namespace sumpwright::plan
